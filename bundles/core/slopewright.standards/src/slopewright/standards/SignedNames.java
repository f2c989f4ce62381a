package slopewright.standards;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Names with which people sign. Two people are told apart by their letters alone, so that points, blanks, accents and capitals make no
 * second person, in any order of the words, and without what is put in brackets.
 */
public final class SignedNames {
    private static final int LEAST_LETTERS = 2;
    private static final Pattern ACCENT_OR_BRACKET = Pattern.compile("\\p{M}|\\([^)]*\\)");
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}]+");

    private SignedNames() {
    }

    /** Returns whether a text names anybody: it has two letters, which the shortest of family names have and a keystroke has not. */
    public static boolean isName(String text) {
        return words(text).stream().mapToInt(String::length).sum() >= LEAST_LETTERS;
    }

    /** Returns whether two texts, which may be null, name one person; where one names nobody, they do not. */
    public static boolean isSame(String one, String other) {
        List<String> first = words(one);
        List<String> second = words(other);
        return !first.isEmpty() && (String.join("", first).equals(String.join("", second))
                || first.stream().sorted().toList().equals(second.stream().sorted().toList()));
    }

    private static List<String> words(String name) {
        String plain = ACCENT_OR_BRACKET.matcher(Normalizer.normalize(name == null ? "" : name, Normalizer.Form.NFKD)).replaceAll("");
        return BETWEEN_WORDS.splitAsStream(plain.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT)).filter(word -> !word.isEmpty())
                .toList();
    }
}
