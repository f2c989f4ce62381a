package slopewright.headless.internal;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One of some parts of a long work, for several machines: parts one after the other are the whole.
 *
 * @param number which one, counted from 1
 * @param parts  how many there are
 */
record WorkPart(int number, int parts) {

    private static final Pattern WORD = Pattern.compile("(\\d{1,6})/(\\d{1,6})");

    /**
     * Reads a part of the form I/N.
     *
     * @param word the word, null for the whole
     */
    static WorkPart of(String word) {
        if (word == null) {
            return new WorkPart(1, 1);
        }
        Matcher found = WORD.matcher(word);
        if (found.matches()) {
            WorkPart part = new WorkPart(Integer.parseInt(found.group(1)), Integer.parseInt(found.group(2)));
            if (part.number >= 1 && part.number <= part.parts) {
                return part;
            }
        }
        throw new UsageException("--part takes I/N, such as 3/8, not '" + word + "'");
    }

    /** Returns its part of a list. */
    <T> List<T> of(List<T> whole) {
        long size = whole.size();
        return whole.subList((int) (size * (number - 1) / parts), (int) (size * number / parts));
    }
}
