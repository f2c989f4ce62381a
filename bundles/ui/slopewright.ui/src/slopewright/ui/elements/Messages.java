package slopewright.ui.elements;

import slopewright.ui.Texts;

/** What the tables of elements say. */
final class Messages {

    private static final Texts TEXTS = Texts.beside(Messages.class);

    private Messages() {
    }

    static String get(String key, Object... values) {
        return TEXTS.get(key, values);
    }
}
