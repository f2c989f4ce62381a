package slopewright.evaluation.landing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Every slope in one landing direction.
 *
 * @param trueDeg landing direction, decimal degrees from true north
 * @param cells   one a slope, the lowest first
 */
public record LandingDirection(double trueDeg, List<LandingCell> cells) {

    /** Copies the list. */
    public LandingDirection {
        cells = List.copyOf(cells);
    }

    /**
     * Returns the lowest slope that is clear and from which every steeper one is clear too, up to the steepest that is, decimal degrees;
     * empty where none is.
     */
    public OptionalDouble clearFromDeg() {
        int i = steepestClear();
        OptionalDouble lowest = OptionalDouble.empty();
        for (; i >= 0 && cells.get(i).isClear(); i--) {
            lowest = OptionalDouble.of(cells.get(i).slopeDeg());
        }
        return lowest;
    }

    /**
     * Returns the steepest slope that is clear, decimal degrees; empty where none is, or where it is the steepest that can be set. A
     * steeper one would place a unit on the pad, or cannot be set.
     */
    public OptionalDouble clearToDeg() {
        int i = steepestClear();
        return i < 0 || i == cells.size() - 1 ? OptionalDouble.empty() : OptionalDouble.of(cells.get(i).slopeDeg());
    }

    private int steepestClear() {
        int i = cells.size() - 1;
        while (i >= 0 && !cells.get(i).isClear()) {
            i--;
        }
        return i;
    }

    /** Returns whether at least one slope is clear. */
    public boolean isClearSomewhere() {
        return cells.stream().anyMatch(LandingCell::isClear);
    }

    /** Returns the cell of the slope nearest to one, empty where the unit cannot be set within half a step of it. */
    public Optional<LandingCell> at(double slopeDeg) {
        double step = cells.size() < 2 ? SettableSlopes.USUAL_STEP_DEG : cells.get(1).slopeDeg() - cells.get(0).slopeDeg();
        return cells.stream().filter(cell -> Math.abs(cell.slopeDeg() - slopeDeg) <= step / 2 + 1e-9)
                .min(Comparator.comparingDouble(cell -> Math.abs(cell.slopeDeg() - slopeDeg)));
    }

    /**
     * Returns what is said about the direction as a whole: its steepest slope where nothing is clear from anywhere, of those that place no
     * unit on the pad where there are such, else the one from which it is clear.
     */
    public LandingCell telling() {
        OptionalDouble from = clearFromDeg();
        return from.isPresent() ? at(from.getAsDouble()).orElseThrow()
                : cells.stream().filter(cell -> !cell.isOnPad()).reduce((flatter, steeper) -> steeper).orElse(cells.get(cells.size() - 1));
    }
}
