package slopewright.ui.theme;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Widget;

/** Paints what is selected in a text that can be copied so that it is read: white on a deep blue. */
public final class Selections {
    private static final Color GROUND = new Color(0x1a, 0x5f, 0xb4);
    private static final Color INK = new Color(0xff, 0xff, 0xff);
    private static final String PAINTED = "slopewright.ui.theme.selections";

    private Selections() {
    }

    /** Paints that of every text of a display, from the moment at which it gets its size. */
    public static void follow(Display display) {
        display.addFilter(SWT.Resize, event -> {
            if (event.widget.getData(PAINTED) == null) {
                event.widget.setData(PAINTED, Boolean.TRUE);
                paint(event.widget);
            }
        });
    }

    private static void paint(Widget widget) {
        if (widget instanceof StyledText text) {
            text.setSelectionBackground(GROUND);
            text.setSelectionForeground(INK);
        }
    }
}
