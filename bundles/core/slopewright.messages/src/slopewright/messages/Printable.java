package slopewright.messages;

/**
 * Text as it may stand on paper, in a table, on a map or a terminal. What a project or a survey holds is of somebody else: a control
 * character could steer a terminal, a line break forge a line, and a mark of direction (Unicode Bidirectional Algorithm, 2.1 to 2.6) turn
 * round what stands beside it, a verdict among others. Letters of every script stay, right to left by themselves.
 */
public final class Printable {

    private static final char DELETE = '\u007f';

    private Printable() {
    }

    /** Returns a text in one line: each run of what steers is one space. */
    public static String of(String text) {
        int at = 0;
        while (at < text.length() && text.charAt(at) >= ' ' && text.charAt(at) < DELETE) {
            at++;
        }
        if (at == text.length()) {
            return text;
        }
        StringBuilder plain = new StringBuilder(text.length());
        boolean before = false;
        for (int i = 0; i < text.length(); i++) {
            boolean steers = isSteering(text.charAt(i));
            if (!steers) {
                plain.append(text.charAt(i));
            } else if (!before) {
                plain.append(' ');
            }
            before = steers;
        }
        return plain.toString();
    }

    /** Returns whether a character steers and prints nothing: controls, ends of lines, marks of direction. */
    public static boolean isSteering(int letter) {
        return Character.isISOControl(letter) || letter == 0x2028 || letter == 0x2029 || letter == 0x200E || letter == 0x200F
                || letter == 0x061C || letter >= 0x202A && letter <= 0x202E || letter >= 0x2066 && letter <= 0x2069;
    }
}
