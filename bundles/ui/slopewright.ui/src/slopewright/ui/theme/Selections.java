package slopewright.ui.theme;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.Widget;

/**
 * Paints the selected rows of trees and tables so that their text is read: in the colour of all text on a pale blue, in the dark on a deep
 * one, where white on the blue of many desktops has a contrast of less than 4; what is selected in a text that can be copied is white on a
 * deep blue.
 */
public final class Selections {
    private static final Color GROUND = new Color(0xbf, 0xdb, 0xf9);
    private static final Color GROUND_IN_THE_DARK = new Color(0x15, 0x3a, 0x66);
    private static final Color GROUND_IN_A_TEXT = new Color(0x1a, 0x5f, 0xb4);
    private static final Color IN_A_TEXT = new Color(0xff, 0xff, 0xff);
    private static final String PAINTED = "slopewright.ui.theme.selections";

    private Selections() {
    }

    /** Paints those of every tree, table and text of a display, from the moment at which it gets its size. */
    public static void follow(Display display) {
        display.addFilter(SWT.Resize, event -> {
            if (event.widget.getData(PAINTED) == null) {
                event.widget.setData(PAINTED, Boolean.TRUE);
                paint(event.widget);
            }
        });
    }

    private static void paint(Widget widget) {
        if (widget instanceof Tree || widget instanceof Table) {
            widget.addListener(SWT.EraseItem, Selections::erase);
        } else if (widget instanceof StyledText text) {
            text.setSelectionBackground(GROUND_IN_A_TEXT);
            text.setSelectionForeground(IN_A_TEXT);
        }
    }

    private static void erase(Event event) {
        if ((event.detail & SWT.SELECTED) != 0) {
            event.gc.setBackground(ScreenTheme.isDark() ? GROUND_IN_THE_DARK : GROUND);
            event.gc.fillRectangle(event.x, event.y, event.width, event.height);
            event.detail &= ~(SWT.SELECTED | SWT.HOT);
        }
    }
}
