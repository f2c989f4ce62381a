package slopewright.ui.plan.internal;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;

/** Whether the grid is shown and whether things snap while they are dragged: the same for all plans, and kept for the next start. */
public final class PlanSettings {

    private static final String NODE = "slopewright.ui.plan";
    private static final String GRID = "grid";
    private static final String SNAP = "snap";

    private final IEclipsePreferences stored = InstanceScope.INSTANCE.getNode(NODE);
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    /** Returns whether the grid is shown. */
    public boolean isGrid() {
        return stored.getBoolean(GRID, false);
    }

    /** Shows or hides the grid. */
    public void setGrid(boolean shown) {
        stored.putBoolean(GRID, shown);
        listeners.forEach(Runnable::run);
    }

    /** Returns whether things snap while they are dragged. */
    public boolean isSnap() {
        return stored.getBoolean(SNAP, true);
    }

    /** Lets things snap or not. */
    public void setSnap(boolean snaps) {
        stored.putBoolean(SNAP, snaps);
        listeners.forEach(Runnable::run);
    }

    /** Adds what is run after each change. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }
}
