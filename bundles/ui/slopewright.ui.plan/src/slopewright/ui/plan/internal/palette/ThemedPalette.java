package slopewright.ui.plan.internal.palette;

import org.eclipse.draw2d.ColorConstants;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.LightweightSystem;
import org.eclipse.draw2d.StackLayout;
import org.eclipse.gef.ui.palette.PaletteViewer;
import org.eclipse.gef.ui.palette.PaletteViewerPreferences;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import slopewright.ui.theme.ScreenTheme;

/**
 * The entries of the palette, in the light and in the dark. Its figures take the colours that the desktop had when the program started;
 * where the window is not as light or dark as those, everything is painted through {@link TurnedGraphics}.
 */
final class ThemedPalette extends PaletteViewer {

    private final TurnedColours turned = new TurnedColours();

    /** Makes it in a composite; drawers stay open until the user closes them, and what has no room is scrolled to. */
    ThemedPalette(Composite parent) {
        getPaletteViewerPreferences().setAutoCollapseSetting(PaletteViewerPreferences.COLLAPSE_NEVER);
        enableVerticalScrollbar(true);
        Control control = createControl(parent);
        getFigureCanvas().setVerticalScrollBarVisibility(FigureCanvas.AUTOMATIC);
        Runnable repaint = control::redraw;
        ScreenTheme.addListener(repaint);
        control.addDisposeListener(event -> {
            ScreenTheme.removeListener(repaint);
            turned.dispose();
        });
    }

    @Override
    protected LightweightSystem createLightweightSystem() {
        return new LightweightSystem() {
            @Override
            protected RootFigure createRootFigure() {
                RootFigure figure = new RootFigure() {
                    @Override
                    public void paint(Graphics graphics) {
                        if (ScreenTheme.isDark() == TurnedColours.isDark(ColorConstants.listBackground.getRGB())) {
                            super.paint(graphics);
                        } else {
                            paintTurned(graphics);
                        }
                    }

                    private void paintTurned(Graphics graphics) {
                        TurnedGraphics over = new TurnedGraphics(graphics, turned, getForegroundColor(), getBackgroundColor());
                        super.paint(over);
                        over.dispose();
                    }
                };
                figure.addNotify();
                figure.setOpaque(true);
                figure.setLayoutManager(new StackLayout());
                return figure;
            }
        };
    }
}
