package slopewright.ui.properties;

import slopewright.ui.Texts;

/** What the property sheet and the words of outcomes say. */
final class PropertyTexts {

    private static final Texts TEXTS = Texts.beside(PropertyTexts.class);

    private PropertyTexts() {
    }

    static String get(String key, Object... values) {
        return TEXTS.get(key, values);
    }
}
