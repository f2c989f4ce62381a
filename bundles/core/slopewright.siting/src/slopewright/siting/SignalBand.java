package slopewright.siting;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;

/**
 * One pattern with the angles between which it is seen, from so far out that the distance of the units from each other does not count.
 *
 * @param fromDeg lower end, decimal degrees; of the lowest band half a degree below its upper end
 * @param toDeg   upper end, decimal degrees; of the highest band half a degree above its lower end
 * @param seen    what is seen
 */
public record SignalBand(double fromDeg, double toDeg, Observation seen) {
    private static final double FAR_M = 1e6;
    private static final double BEYOND_DEG = 0.5;

    /** Refuses missing parts. */
    public SignalBand {
        Objects.requireNonNull(seen);
    }

    private boolean isLike(Observation other) {
        return seen.meanings().equals(other.meanings())
                && seen.seen().stream().map(SeenUnit::light).toList().equals(other.seen().stream().map(SeenUnit::light).toList());
    }

    /**
     * Returns what an eye on the slope itself sees. Where neighbouring units change at one and the same angle, as the legs of a T form do,
     * the on-slope pattern has no band of its own from far out; it is what a pilot sees between them.
     *
     * @param siting    the layout
     * @param distanceM how far from its reference the eye is, metres
     * @return the observation; empty where it is not read as on the slope
     */
    public static Optional<Observation> onSlope(Siting siting, double distanceM) {
        FramePoint eye = new FramePoint(siting.reference().alongM() - distanceM, 0,
                siting.reference().heightM() + distanceM * Angles.tanDeg(siting.slopeDeg()));
        return Optional.of(Signals.observe(siting, eye)).filter(seen -> seen.meanings().containsValue(Meaning.ON_SLOPE));
    }

    /** Returns the bands of a layout, the lowest first; none for panels, which have no lights. */
    public static List<SignalBand> of(Siting siting) {
        TreeSet<Double> edges = new TreeSet<>();
        siting.units().forEach(unit -> unit.edges().forEach(edge -> edges.add(Math.round(edge.angleDeg() * 1e6) / 1e6)));
        List<SignalBand> bands = new ArrayList<>();
        if (edges.isEmpty()) {
            return bands;
        }
        List<Double> limits = new ArrayList<>(edges);
        limits.add(0, edges.first() - BEYOND_DEG);
        limits.add(edges.last() + BEYOND_DEG);
        for (int i = 1; i < limits.size(); i++) {
            double middle = (limits.get(i - 1) + limits.get(i)) / 2;
            FramePoint eye = new FramePoint(siting.reference().alongM() - FAR_M, 0,
                    siting.reference().heightM() + FAR_M * Angles.tanDeg(middle));
            Observation seen = Signals.observe(siting, eye);
            SignalBand last = bands.isEmpty() ? null : bands.get(bands.size() - 1);
            if (last != null && last.isLike(seen)) {
                bands.set(bands.size() - 1, new SignalBand(last.fromDeg(), limits.get(i), last.seen()));
            } else {
                bands.add(new SignalBand(limits.get(i - 1), limits.get(i), seen));
            }
        }
        return bands;
    }
}
