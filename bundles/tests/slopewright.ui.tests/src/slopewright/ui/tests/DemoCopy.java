package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import org.eclipse.swt.widgets.Display;

/** Copies of the demonstration projects for tests that change them, and waiting for what happens in the background. */
final class DemoCopy {

    private static final long PATIENCE_MS = 20_000;

    private DemoCopy() {
    }

    /** Copies a demonstration project into a folder. */
    static Path of(String name, Path folder) throws IOException {
        Path demo = Path.of(System.getProperty("slopewright.root"), "demo-data", name, name + ".slopewright");
        return Files.copy(demo, folder.resolve(demo.getFileName()));
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
