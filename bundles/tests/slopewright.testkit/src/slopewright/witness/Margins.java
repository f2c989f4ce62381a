package slopewright.witness;

import java.util.ArrayList;
import java.util.List;

/** Margins of obstacles against a surface, by sampling; accuracy always on the safe side. */
public final class Margins {
    private static final int BEARINGS = 360;
    private static final int RINGS = 12;

    private Margins() {
    }

    /** A point with horizontal and vertical accuracy, metres: the least surface height found in the disc of its accuracy. */
    public static Margin point(Surface surface, Spot spot, double horizontalM, double verticalM) {
        double limit = limitM(surface, spot, horizontalM);
        if (Double.isNaN(limit)) {
            return new Margin(false, spot, Double.NaN, Double.NaN);
        }
        return new Margin(true, spot, limit, limit - spot.heightM() - verticalM);
    }

    /** A broken line with heights at its corners, sampled at a step in metres. */
    public static Margin line(Surface surface, List<Spot> corners, double horizontalM, double verticalM, double stepM) {
        Margin worst = point(surface, corners.get(0), horizontalM, verticalM);
        for (int i = 1; i < corners.size(); i++) {
            worst = worse(worst, segment(surface, corners.get(i - 1), corners.get(i), horizontalM, verticalM, stepM));
        }
        return worst;
    }

    /**
     * A polygon whose top is level at the greatest height of its corners, sampled along its outline and over its area at a
     * step in metres.
     */
    public static Margin polygon(Surface surface, List<Spot> corners, double horizontalM, double verticalM, double stepM) {
        double top = corners.stream().mapToDouble(Spot::heightM).max().orElseThrow();
        List<Spot> ring = new ArrayList<>();
        for (Spot corner : corners) {
            ring.add(new Spot(corner.alongM(), corner.rightM(), top));
        }
        ring.add(ring.get(0));
        Margin worst = line(surface, ring, horizontalM, verticalM, stepM);
        double alongFrom = corners.stream().mapToDouble(Spot::alongM).min().orElseThrow();
        double alongTo = corners.stream().mapToDouble(Spot::alongM).max().orElseThrow();
        double rightFrom = corners.stream().mapToDouble(Spot::rightM).min().orElseThrow();
        double rightTo = corners.stream().mapToDouble(Spot::rightM).max().orElseThrow();
        for (double along = alongFrom; along <= alongTo; along += stepM) {
            for (double right = rightFrom; right <= rightTo; right += stepM) {
                if (within(corners, along, right)) {
                    worst = worse(worst, point(surface, new Spot(along, right, top), horizontalM, verticalM));
                }
            }
        }
        return worst;
    }

    /** The margin that governs of two. */
    public static Margin worse(Margin one, Margin other) {
        if (!one.inside()) {
            return other.inside() ? other : one;
        }
        return other.inside() && other.marginM() < one.marginM() ? other : one;
    }

    /** Whether a place lies inside a polygon (a ray to the right crosses its outline an odd number of times). */
    public static boolean within(List<Spot> corners, double alongM, double rightM) {
        boolean inside = false;
        for (int i = 0; i < corners.size(); i++) {
            Spot a = corners.get(i);
            Spot b = corners.get((i + 1) % corners.size());
            if (a.alongM() > alongM != b.alongM() > alongM) {
                double crossing = a.rightM() + (alongM - a.alongM()) / (b.alongM() - a.alongM()) * (b.rightM() - a.rightM());
                if (crossing > rightM) {
                    inside = !inside;
                }
            }
        }
        return inside;
    }

    private static Margin segment(Surface surface, Spot from, Spot to, double horizontalM, double verticalM, double stepM) {
        int steps = (int) Math.max(1, Math.ceil(Math.hypot(to.alongM() - from.alongM(), to.rightM() - from.rightM()) / stepM));
        Margin worst = point(surface, from, horizontalM, verticalM);
        boolean before = worst.inside();
        for (int i = 1; i <= steps; i++) {
            Margin here = point(surface, between(from, to, (double) i / steps), horizontalM, verticalM);
            if (here.inside() != before) {
                double edge = Angles.change((i - 1.0) / steps, (double) i / steps,
                    part -> !Double.isNaN(limitM(surface, between(from, to, part), horizontalM)));
                double nudge = here.inside() ? 1e-9 : -1e-9;
                worst = worse(worst, point(surface, between(from, to, edge + nudge), horizontalM, verticalM));
            }
            before = here.inside();
            worst = worse(worst, here);
        }
        return worst;
    }

    private static Spot between(Spot from, Spot to, double part) {
        return new Spot(from.alongM() + part * (to.alongM() - from.alongM()), from.rightM() + part * (to.rightM() - from.rightM()),
            from.heightM() + part * (to.heightM() - from.heightM()));
    }

    /** Least height of the surface over the part of the disc that lies in its plan, metres; NaN where none does. */
    private static double limitM(Surface surface, Spot spot, double horizontalM) {
        double least = Double.NaN;
        if (surface.contains(spot.alongM(), spot.rightM())) {
            least = surface.heightM(spot.alongM(), spot.rightM());
        }
        if (horizontalM <= 0) {
            return least;
        }
        for (int i = 0; i < BEARINGS; i++) {
            double along = Math.cos(2 * Math.PI * i / BEARINGS);
            double right = Math.sin(2 * Math.PI * i / BEARINGS);
            least = lesser(least, leastOnRay(surface, spot, along, right, horizontalM));
        }
        return least;
    }

    /** Least height along one ray from the point out to the accuracy, with the places where the ray enters or leaves the plan. */
    private static double leastOnRay(Surface surface, Spot spot, double along, double right, double reachM) {
        double least = Double.NaN;
        boolean before = surface.contains(spot.alongM(), spot.rightM());
        for (int ring = 1; ring <= RINGS; ring++) {
            double radius = reachM * ring / RINGS;
            boolean here = surface.contains(spot.alongM() + radius * along, spot.rightM() + radius * right);
            if (here) {
                least = lesser(least, surface.heightM(spot.alongM() + radius * along, spot.rightM() + radius * right));
            }
            if (here != before) {
                double edge = Angles.change(reachM * (ring - 1) / RINGS, radius,
                    r -> surface.contains(spot.alongM() + r * along, spot.rightM() + r * right));
                least = lesser(least, surface.heightM(spot.alongM() + edge * along, spot.rightM() + edge * right));
            }
            before = here;
        }
        return least;
    }

    private static double lesser(double one, double other) {
        if (Double.isNaN(one)) {
            return other;
        }
        return Double.isNaN(other) ? one : Math.min(one, other);
    }
}
