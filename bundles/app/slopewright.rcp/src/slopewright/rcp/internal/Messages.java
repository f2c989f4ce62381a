package slopewright.rcp.internal;

import slopewright.ui.Texts;

/** What the shell of the window says: menus, welcome page, wizard and dialogs. */
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
