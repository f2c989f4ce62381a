package slopewright.report.internal.pdf;

import com.openhtmltopdf.extend.FSTextBreaker;

/** Breaks lines between words, and inside long names after a hyphen or slash, but never inside a number. */
final class WordBreaker implements FSTextBreaker {

    private String text = "";
    private int at;

    @Override
    public void setText(String newText) {
        text = newText;
        at = 0;
    }

    /** Returns the next place where a line may end, or -1 at the end. */
    @Override
    public int next() {
        if (at >= text.length()) {
            return -1;
        }
        do {
            at++;
        } while (at < text.length() && !isBreak());
        return at;
    }

    private boolean isBreak() {
        char before = text.charAt(at - 1);
        char after = text.charAt(at);
        if (Character.isWhitespace(after)) {
            return false;
        }
        return Character.isWhitespace(before) && before != '\u00a0' || (before == '-' || before == '/' || before == '_') && at > 1
                && Character.isLetter(after) && Character.isLetterOrDigit(text.charAt(at - 2));
    }
}
