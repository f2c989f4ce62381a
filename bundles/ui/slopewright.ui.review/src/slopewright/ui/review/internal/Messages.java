package slopewright.ui.review.internal;

import java.util.MissingResourceException;

import slopewright.ui.Texts;

/** What the review views say; the texts of a view begin with its name. */
public final class Messages {

    private static final Texts TEXTS = Texts.beside(Messages.class);

    private Messages() {
    }

    /**
     * Returns a text.
     *
     * @param key    its name
     * @param values what it takes
     */
    public static String get(String key, Object... values) {
        return TEXTS.get(key, values);
    }

    /** Returns whether there is a text of that name. */
    public static boolean has(String key) {
        try {
            TEXTS.get(key);
            return true;
        } catch (MissingResourceException e) {
            return false;
        }
    }
}
