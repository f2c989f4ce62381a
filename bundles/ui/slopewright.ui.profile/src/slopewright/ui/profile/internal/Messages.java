package slopewright.ui.profile.internal;

import slopewright.ui.Texts;

/** What the views of the approach say; texts of the section begin with {@code section.}, those of the pilot's view with {@code pilot.}. */
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
}
