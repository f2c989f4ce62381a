package slopewright.ui.plan.internal.palette;

import java.util.function.Supplier;

import org.eclipse.gef.palette.PaletteListener;
import org.eclipse.gef.ui.palette.PaletteViewer;
import org.eclipse.swt.widgets.Control;

/** Hands the focus on from the palette to the plan as soon as a tool was chosen, so that the keys go on there. */
public final class PaletteFocus {

    private PaletteFocus() {
    }

    /**
     * Watches a palette.
     *
     * @param palette the palette
     * @param plan    gives what takes the focus
     */
    public static void install(PaletteViewer palette, Supplier<Control> plan) {
        PaletteListener chosen = (viewer, tool) -> {
            Control control = palette.getControl();
            if (tool != null && control != null && control.isFocusControl()) {
                control.getDisplay().asyncExec(() -> {
                    if (!control.isDisposed() && control.isFocusControl()) {
                        plan.get().setFocus();
                    }
                });
            }
        };
        palette.addPaletteListener(chosen);
    }
}
