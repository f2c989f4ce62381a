package slopewright.ui.plan.internal.palette;

import org.eclipse.draw2d.PositionConstants;
import org.eclipse.gef.ui.palette.FlyoutPaletteComposite;
import org.eclipse.gef.ui.palette.FlyoutPaletteComposite.FlyoutPreferences;

/** The palette stands open at the left of the plan until the user moves or closes it. */
public final class PinnedPalette implements FlyoutPreferences {

    private static final int WIDTH_PX = 150;

    private int dock = PositionConstants.WEST;
    private int state = FlyoutPaletteComposite.STATE_PINNED_OPEN;
    private int width = WIDTH_PX;

    @Override
    public int getDockLocation() {
        return dock;
    }

    @Override
    public int getPaletteState() {
        return state;
    }

    @Override
    public int getPaletteWidth() {
        return width;
    }

    @Override
    public void setDockLocation(int location) {
        dock = location;
    }

    @Override
    public void setPaletteState(int newState) {
        state = newState;
    }

    @Override
    public void setPaletteWidth(int newWidth) {
        width = newWidth;
    }
}
