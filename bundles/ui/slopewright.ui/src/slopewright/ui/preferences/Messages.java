package slopewright.ui.preferences;

import slopewright.ui.Texts;

/** What the pages of the preferences say. */
final class Messages {

    private static final Texts TEXTS = Texts.beside(Messages.class);

    private Messages() {
    }

    /** Returns a text by its name, with the values that it takes. */
    static String get(String key, Object... values) {
        return TEXTS.get(key, values);
    }
}
