package slopewright.ui.plan.internal.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the place that something snaps to: the nearest one within reach, and the grid only where nothing else is. */
public final class Snapping {

    /**
     * A place to snap to.
     *
     * @param valueM where it is, metres
     * @param name   what it is, for people
     */
    public record Target(double valueM, String name) {
    }

    private final List<Target> targets = new ArrayList<>();
    private final double reachM;
    private double gridM;
    private String gridName = "";

    /**
     * Starts without any place to snap to.
     *
     * @param reachM how near is near enough, metres
     */
    public Snapping(double reachM) {
        this.reachM = reachM;
    }

    /** Adds a place; one that is not a number is left out. */
    public Snapping to(double valueM, String name) {
        if (Double.isFinite(valueM)) {
            targets.add(new Target(valueM, name));
        }
        return this;
    }

    /** Adds the lines of a grid, spaced by some metres. */
    public Snapping toGrid(double spacingM, String name) {
        gridM = spacingM;
        gridName = name;
        return this;
    }

    /** Returns what a value snaps to, empty where nothing is near enough. */
    public Optional<Target> near(double valueM) {
        Optional<Target> best = Optional.empty();
        for (Target target : targets) {
            double distance = Math.abs(target.valueM() - valueM);
            if (distance <= reachM && (best.isEmpty() || distance < Math.abs(best.get().valueM() - valueM) - 1e-9)) {
                best = Optional.of(target);
            }
        }
        double line = gridM > 0 ? Math.rint(valueM / gridM) * gridM : Double.NaN;
        return best.isEmpty() && Math.abs(line - valueM) <= reachM ? Optional.of(new Target(line, gridName)) : best;
    }
}
