package slopewright.ui.document;

import slopewright.ui.Texts;

/** What is said of files, of unsaved work and of other windows. */
final class Messages {

    private static final Texts TEXTS = Texts.beside(Messages.class);

    private Messages() {
    }

    /** Returns a text by its name, with the values that it takes. */
    static String get(String key, Object... values) {
        return TEXTS.get(key, values);
    }
}
