package slopewright.siting.witness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.junit.jupiter.api.Test;

import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.witness.Angles;
import slopewright.witness.Margin;
import slopewright.witness.Margins;
import slopewright.witness.Spot;
import slopewright.witness.Surface;

/** Margins of random points, lines and areas against random surfaces, held against the sampling of the second implementation. */
class SurfaceWitnessTest {

    private static final double NEARER = 200;
    private static final double SAME_M = 1e-6;
    /** The witness looks into this many directions. */
    private static final int BEARINGS = 360;
    private static final int POINTS = 40;

    private final Random random = Trial.random(20_261_130);
    private final Differences differences = new Differences();
    private Surface witness;
    private ProtectionSurface product;

    private double between(double from, double to) {
        return from + random.nextDouble() * (to - from);
    }

    /** The texts do not say about which place a turned surface turns; the product turns it about the middle of its inner edge. */
    private void surface() {
        double start = between(-200, 100);
        double level = between(-5, 5);
        double edge = random.nextInt(4) == 0 ? 0 : between(20, 300);
        double percent = between(5, 18);
        double slope = between(1, 4);
        double length = between(500, 15_000);
        double turn = random.nextBoolean() ? 0 : between(-5, 5);
        witness = new Surface(start, level, edge, percent, Double.NaN, slope, length, start, turn);
        product = new ProtectionSurface(start, level, edge, percent / 100, length, slope, -turn);
    }

    private Spot spot(double reachM) {
        double outward = between(-reachM, witness.lengthM() + reachM);
        double half = witness.halfWidthM(Math.max(0, outward)) + reachM;
        return new Spot(witness.startAlongM() - outward, between(-half, half), between(-10, 300));
    }

    private static FramePoint point(Spot spot) {
        return new FramePoint(spot.alongM(), spot.rightM(), spot.heightM());
    }

    /** Returns whether a place is nearer to an edge of the plan than a distance. */
    private boolean isNearEdge(Spot spot, double distanceM) {
        double outward = witness.outwardM(spot.alongM(), spot.rightM());
        double aside = Math.abs(witness.asideM(spot.alongM(), spot.rightM()));
        return Math.abs(outward) <= distanceM || Math.abs(outward - witness.lengthM()) <= distanceM
                || Math.abs(aside - witness.halfWidthM(outward)) <= distanceM * 1.02;
    }

    @Test
    void pointsHaveTheSameMargin() {
        for (int i = 0; i < Trial.count() * 20; i++) {
            surface();
            for (int n = 0; n < POINTS; n++) {
                Spot spot = spot(100);
                if (isNearEdge(spot, SAME_M)) {
                    differences.except();
                } else {
                    same(i + " " + spot, Margins.point(witness, spot, 0, 0), product.compare(point(spot), 0, 0), SAME_M);
                }
            }
        }
        differences.verify(Trial.count());
    }

    /**
     * Inside, the accuracy lowers the limit alike. About an edge the product takes the outline moved out by the accuracy and the limit that
     * far nearer to the inner edge, the witness the part of the disc in plan: the product may be stricter there, never more lenient. Where
     * the disc only touches a flank, it does so at right angles to it, by the sine of the splay farther out than its centre, seen by
     * the witness within half a step of its directions; that bounds how much stricter.
     */
    @Test
    void accuracyIsTakenOnTheSafeSide() {
        for (int i = 0; i < Trial.count() * 2; i++) {
            surface();
            for (int n = 0; n < POINTS; n++) {
                double reach = between(0.1, 20);
                double vertical = between(0, 3);
                Spot spot = spot(2 * reach);
                double sampling = reach * Angles.tanDeg(witness.slopeDeg()) * (1 - Math.cos(Math.PI / BEARINGS));
                Margin margin = Margins.point(witness, spot, reach, vertical);
                Optional<Penetration> penetration = product.compare(point(spot), reach, vertical);
                String name = i + " " + spot + " within " + reach;
                if (isNearEdge(spot, reach)) {
                    double splay = Math.sin(Math.atan(witness.divergencePercent() / 100) + Math.PI / BEARINGS);
                    stricter(name, margin, penetration, SAME_M, reach * Angles.tanDeg(witness.slopeDeg()) * (1 + splay));
                } else {
                    same(name, margin, penetration, SAME_M + sampling);
                }
            }
        }
        differences.verify(Trial.count());
    }

    /**
     * Samples two metres apart may miss the worst place by a step in each direction, and the point of a surface without inner edge until it
     * is a step wide to each side; the product finds both exactly.
     */
    @Test
    void linesAndAreasHaveTheSameMargin() {
        for (int i = 0; i < Trial.count() * 10; i++) {
            surface();
            double step = 2;
            List<Spot> corners = corners();
            List<FramePoint> points = corners.stream().map(SurfaceWitnessTest::point).toList();
            double missed = witness.innerEdgeM() < 2 * step ? 100 * step / witness.divergencePercent() : 2 * step;
            double steepest = Angles.tanDeg(witness.slopeDeg()) + steepest(corners);
            line(i + " line " + corners, corners, product.compareLine(points, 0, 0), step, steepest);
            stricter(i + " area " + corners, Margins.polygon(witness, corners, 0, 0, step), product.compareArea(points, 0, 0), SAME_M,
                    missed * Angles.tanDeg(witness.slopeDeg()));
        }
        differences.verify(Trial.count());
    }

    /**
     * A stretch of a line shorter than a step can lie within the surface between two looks: where they find less, looks nearer to each
     * other decide.
     */
    private void line(String name, List<Spot> corners, Optional<Penetration> found, double step, double steepest) {
        Margin looked = Margins.line(witness, corners, 0, 0, step);
        boolean passedOver = looked.inside() && found.isPresent() && looked.marginM() + found.get().excessM() > step * steepest;
        double taken = passedOver ? step / NEARER : step;
        stricter(name, passedOver ? Margins.line(witness, corners, 0, 0, taken) : looked, found, SAME_M, taken * steepest);
    }

    private List<Spot> corners() {
        Spot middle = spot(20);
        List<Spot> corners = new ArrayList<>();
        int count = 3 + random.nextInt(4);
        for (int n = 0; n < count; n++) {
            double bearing = 2 * Math.PI * (n + 0.8 * random.nextDouble()) / count;
            double radius = between(5, 60);
            corners.add(new Spot(middle.alongM() + radius * Math.cos(bearing), middle.rightM() + radius * Math.sin(bearing),
                    between(0, 100)));
        }
        return corners;
    }

    private static double steepest(List<Spot> corners) {
        double steepest = 0;
        for (int n = 1; n < corners.size(); n++) {
            Spot from = corners.get(n - 1);
            Spot to = corners.get(n);
            steepest = Math.max(steepest, Math.abs(to.heightM() - from.heightM())
                    / Math.hypot(to.alongM() - from.alongM(), to.rightM() - from.rightM()));
        }
        return steepest;
    }

    private void same(String name, Margin margin, Optional<Penetration> penetration, double toleranceM) {
        differences.word(name + " inside", margin.inside(), penetration.isPresent());
        penetration.ifPresent(found -> differences.number(name, margin.marginM(), -found.excessM(), toleranceM));
    }

    /** The product must be inside where the witness is, at a margin no greater, and smaller by no more than a bound. */
    private void stricter(String name, Margin margin, Optional<Penetration> penetration, double toleranceM, double boundM) {
        if (margin.inside()) {
            differences.word(name + " inside", true, penetration.isPresent());
            penetration.ifPresent(found -> differences.number(name, margin.marginM() - boundM / 2, -found.excessM(),
                    boundM / 2 + toleranceM));
        } else if (penetration.isPresent()) {
            differences.except();
        }
    }
}
