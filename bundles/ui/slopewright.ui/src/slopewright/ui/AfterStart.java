package slopewright.ui;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/**
 * What may wait until the window was painted with its plan. While the window starts such work is kept, in its order; at any other time it
 * is carried out at once. Used on the thread of the user interface.
 */
public final class AfterStart {

    /** Where the display keeps what waits; nothing where no window is starting. */
    private static final String KEY = AfterStart.class.getName();

    private AfterStart() {
    }

    /** Begins to keep work back. */
    public static void begin(Display display) {
        display.setData(KEY, new ArrayList<>());
    }

    /** Carries out now, or once the window was painted. */
    public static void run(Display display, Runnable work) {
        if (display.getData(KEY) instanceof List<?> waiting) {
            add(waiting, work);
        } else {
            work.run();
        }
    }

    @SuppressWarnings("unchecked")
    private static void add(List<?> waiting, Runnable work) {
        ((List<Runnable>) waiting).add(work);
    }

    /**
     * Paints a window, carries out all that was kept and keeps no more. A work that fails is logged and keeps none of the others.
     *
     * @param display the display of the window
     * @param window  the window
     */
    public static void end(Display display, Shell window) {
        Object waiting = display.getData(KEY);
        display.setData(KEY, null);
        window.update();
        if (waiting instanceof List<?> works) {
            works.forEach(work -> carryOut((Runnable) work));
        }
    }

    private static void carryOut(Runnable work) {
        try {
            work.run();
        } catch (RuntimeException e) {
            ILog.get().error("What had waited for the window failed", e);
        }
    }
}
