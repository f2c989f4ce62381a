package slopewright.siting.range;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.siting.UnitPlan;

/**
 * The two units of a layout that are hardest to tell apart of those that must be told apart: neighbours that show different things.
 *
 * @param kind         how they stand
 * @param gapM         distance between them, metres
 * @param apparentGapM the part of it that is square to the line of sight, metres
 * @param splitRangeM  from how far the eye just splits them, metres
 * @param clearRangeM  from how far they are clearly apart, metres
 */
public record Separation(Kind kind, double gapM, double apparentGapM, double splitRangeM, double clearRangeM) {

    /** How two units stand. */
    public enum Kind {
        /** Side by side; the whole gap counts. */
        SIDE_BY_SIDE,
        /** One behind the other on the slope; the gap times the sine of the slope counts. */
        BEHIND
    }

    /** Units that stand so close together along the runway stand side by side. */
    private static final double ONE_PLACE_M = 1;

    /**
     * Finds the closest pair.
     *
     * @param units        the units
     * @param slopeDeg     slope of the line of sight, decimal degrees
     * @param splitMinutes angle that the eye just splits, minutes of arc
     * @param clearMinutes angle at which lights are clearly apart, minutes of arc
     * @return the pair, empty where all units show the same or there is one
     */
    public static Optional<Separation> of(List<UnitPlan> units, double slopeDeg, double splitMinutes, double clearMinutes) {
        List<Separation> all = new ArrayList<>();
        for (int i = 0; i < units.size(); i++) {
            for (int j = i + 1; j < units.size(); j++) {
                UnitPlan first = units.get(i);
                UnitPlan second = units.get(j);
                double along = Math.abs(first.place().alongM() - second.place().alongM());
                double right = Math.abs(first.place().rightM() - second.place().rightM());
                boolean sameSide = first.place().rightM() * second.place().rightM() >= 0;
                if (!sameSide || first.edges().isEmpty() || first.edges().equals(second.edges())) {
                    continue;
                }
                Kind kind = along < ONE_PLACE_M ? Kind.SIDE_BY_SIDE : Kind.BEHIND;
                double gap = kind == Kind.BEHIND ? along : right;
                double apparent = kind == Kind.BEHIND ? along * Math.sin(Math.toRadians(slopeDeg)) : right;
                all.add(new Separation(kind, gap, apparent, Allard.separationRangeM(apparent, splitMinutes),
                        Allard.separationRangeM(apparent, clearMinutes)));
            }
        }
        return all.stream().min(Comparator.comparingDouble(Separation::apparentGapM));
    }
}
