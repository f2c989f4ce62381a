package slopewright.ui.theme;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * Whether the window is light or dark. What paints its own colours asks {@link #isDark()} when it paints and repaints when told. Used on
 * the user interface thread.
 */
public final class ScreenTheme {

    private static final List<Runnable> LISTENERS = new CopyOnWriteArrayList<>();
    private static boolean dark;

    private ScreenTheme() {
    }

    /** Returns whether the window is dark. */
    public static boolean isDark() {
        return dark;
    }

    /**
     * Says that the window has become light or dark; listeners are told where that is new.
     *
     * @param isDark whether it is dark now
     */
    public static void setDark(boolean isDark) {
        if (dark != isDark) {
            dark = isDark;
            LISTENERS.forEach(Runnable::run);
        }
    }

    /** Adds what is run after each change. */
    public static void addListener(Runnable listener) {
        LISTENERS.add(listener);
    }

    /** Removes a listener. */
    public static void removeListener(Runnable listener) {
        LISTENERS.remove(listener);
    }
}
