package slopewright.ui.diagram.internal;

import slopewright.ui.Texts;

/** What diagrams say, in the language of the platform. */
public final class Messages {

    private static final Texts TEXTS = Texts.beside(Messages.class);

    private Messages() {
    }

    /**
     * Returns a text.
     *
     * @param key    its name in the catalogue
     * @param values what it takes
     * @throws java.util.MissingResourceException where the catalogue has no such text
     */
    public static String get(String key, Object... values) {
        return TEXTS.get(key, values);
    }
}
