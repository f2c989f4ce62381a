package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.BooleanSupplier;

import org.eclipse.swt.widgets.Display;

/** Waiting for what happens in the background. */
final class Patience {

    private static final long PATIENCE_MS = 20_000;

    private Patience() {
    }

    /** Lets the user interface work until a condition holds. */
    static void await(String what, BooleanSupplier condition) {
        Display display = Display.getCurrent();
        long end = System.currentTimeMillis() + PATIENCE_MS;
        while (!condition.getAsBoolean() && System.currentTimeMillis() < end) {
            if (!display.readAndDispatch()) {
                display.timerExec(20, display::wake);
                display.sleep();
            }
        }
        assertTrue(condition.getAsBoolean(), what);
    }

    /** Lets the user interface work for a while. */
    static void pause(int milliseconds) {
        long end = System.currentTimeMillis() + milliseconds;
        await("time passes", () -> System.currentTimeMillis() >= end);
    }
}
