package slopewright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** The exact worst point of lines and areas against dense sampling and against the overlay of an independent geometry library. */
class WorstPointTest {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final int SAMPLES = 4000;

    /** A surface worked out anew from the words of its definition, without the code under test. */
    private record Outline(ProtectionSurface of) {

        private double[] axis() {
            double turn = Math.toRadians(of.axisTurnDeg());
            return new double[] {-Math.cos(turn), -Math.sin(turn)};
        }

        double outward(double along, double right) {
            double[] axis = axis();
            return (along - of.startAlongM()) * axis[0] + right * axis[1];
        }

        double limit(double along, double right) {
            return of.startHeightM() + outward(along, right) * Math.tan(Math.toRadians(of.slopeDeg()));
        }

        boolean holds(double along, double right) {
            double out = outward(along, right);
            double[] axis = axis();
            double aside = Math.abs((along - of.startAlongM()) * -axis[1] + right * axis[0]);
            return out >= 0 && out <= of.lengthM() && aside <= of.innerEdgeM() / 2 + of.divergence() * out;
        }

        Polygon polygon() {
            double[] axis = axis();
            double inner = of.innerEdgeM() / 2;
            double outer = inner + of.divergence() * of.lengthM();
            return FACTORY.createPolygon(new Coordinate[] {at(axis, 0, -inner), at(axis, 0, inner), at(axis, of.lengthM(), outer),
                at(axis, of.lengthM(), -outer), at(axis, 0, -inner)});
        }

        private Coordinate at(double[] axis, double out, double aside) {
            return new Coordinate(of.startAlongM() + out * axis[0] - aside * axis[1], out * axis[1] + aside * axis[0]);
        }
    }

    static IntStream seeds() {
        return IntStream.range(0, 120);
    }

    private static Random random(int seed) {
        return new Random(7919L * seed + 1);
    }

    private static ProtectionSurface surface(Random random) {
        return new ProtectionSurface(-60 + random.nextInt(200), random.nextDouble() * 4 - 2, 60 + random.nextInt(240),
                random.nextBoolean() ? 0.1 : 0.15, 2500 + random.nextInt(5000), random.nextDouble() * 3.5 - 0.5, random.nextInt(11) - 5);
    }

    private static FramePoint place(Random random) {
        return new FramePoint(600 - random.nextDouble() * 8000, random.nextDouble() * 3000 - 1500, random.nextDouble() * 250);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void linesAgreeWithDenseSampling(int seed) {
        Random random = random(seed);
        ProtectionSurface surface = surface(random);
        Outline outline = new Outline(surface);
        List<FramePoint> line = Stream.generate(() -> place(random)).limit(2 + random.nextInt(4)).toList();
        Optional<Penetration> exact = surface.compareLine(line, 0, 0);
        double sampled = Double.NEGATIVE_INFINITY;
        double coarsest = 0;
        for (int i = 1; i < line.size(); i++) {
            FramePoint from = line.get(i - 1);
            FramePoint to = line.get(i);
            for (int k = 0; k <= SAMPLES; k++) {
                double share = (double) k / SAMPLES;
                double along = from.alongM() + share * (to.alongM() - from.alongM());
                double right = from.rightM() + share * (to.rightM() - from.rightM());
                double height = from.heightM() + share * (to.heightM() - from.heightM());
                if (outline.holds(along, right)) {
                    sampled = Math.max(sampled, height - outline.limit(along, right));
                }
            }
            double run = Math.hypot(to.alongM() - from.alongM(), to.rightM() - from.rightM());
            coarsest = Math.max(coarsest, (Math.abs(to.heightM() - from.heightM()) + 0.07 * run) / SAMPLES);
        }
        if (exact.isEmpty()) {
            assertEquals(Double.NEGATIVE_INFINITY, sampled, "sampling finds the line inside, the exact way does not");
            return;
        }
        assertTrue(sampled <= exact.get().excessM() + 1e-6, "no sample stands higher than the exact worst point");
        if (sampled > Double.NEGATIVE_INFINITY) {
            assertEquals(exact.get().excessM(), sampled, coarsest + 1e-6);
        }
        FramePoint worst = exact.get().point();
        assertEquals(worst.heightM() - outline.limit(worst.alongM(), worst.rightM()), exact.get().excessM(), 1e-6);
        assertTrue(distanceToM(line, worst) < 1e-6, "the worst point lies on the line");
    }

    private static double distanceToM(List<FramePoint> line, FramePoint point) {
        Coordinate[] corners = line.stream().map(corner -> new Coordinate(corner.alongM(), corner.rightM())).toArray(Coordinate[]::new);
        return FACTORY.createLineString(corners).distance(FACTORY.createPoint(new Coordinate(point.alongM(), point.rightM())));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void linesAgreeWithTheOverlay(int seed) {
        Random random = random(seed);
        ProtectionSurface surface = surface(random);
        Outline outline = new Outline(surface);
        FramePoint from = place(random);
        FramePoint to = place(random);
        Geometry inside = FACTORY.createLineString(new Coordinate[] {new Coordinate(from.alongM(), from.rightM()),
            new Coordinate(to.alongM(), to.rightM())}).intersection(outline.polygon());
        double run = Math.hypot(to.alongM() - from.alongM(), to.rightM() - from.rightM());
        OptionalDouble expected = Arrays.stream(inside.getCoordinates()).mapToDouble(corner -> {
            double share = Math.hypot(corner.x - from.alongM(), corner.y - from.rightM()) / run;
            return from.heightM() + share * (to.heightM() - from.heightM()) - outline.limit(corner.x, corner.y);
        }).max();
        assertSame(expected, surface.compareLine(List.of(from, to), 0, 0));
    }

    /** Star-shaped rings, so most are not convex; some stand far out, some swallow the surface. */
    private static List<FramePoint> ring(Random random) {
        FramePoint middle = place(random);
        double size = Math.pow(10, 1 + 2.7 * random.nextDouble());
        int corners = 3 + random.nextInt(9);
        List<FramePoint> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
            double radius = size * (0.15 + random.nextDouble());
            ring.add(new FramePoint(middle.alongM() + radius * Math.cos(angle), middle.rightM() + radius * Math.sin(angle),
                    random.nextDouble() * 100));
        }
        return ring;
    }

    private static Polygon polygon(List<FramePoint> ring) {
        List<Coordinate> corners = new ArrayList<>(ring.stream().map(point -> new Coordinate(point.alongM(), point.rightM())).toList());
        corners.add(corners.get(0));
        return FACTORY.createPolygon(corners.toArray(new Coordinate[0]));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void areasAgreeWithTheOverlay(int seed) {
        Random random = random(seed);
        for (int i = 0; i < 20; i++) {
            ProtectionSurface surface = surface(random);
            Outline outline = new Outline(surface);
            List<FramePoint> ring = ring(random);
            double top = ring.stream().mapToDouble(FramePoint::heightM).max().orElseThrow();
            Polygon area = polygon(ring);
            assertTrue(area.isValid());
            OptionalDouble expected = Arrays.stream(area.intersection(outline.polygon()).getCoordinates())
                    .mapToDouble(corner -> top - outline.limit(corner.x, corner.y)).max();
            Optional<Penetration> found = surface.compareArea(ring, 0, 0);
            assertSame(expected, found);
            found.ifPresent(one -> assertTrue(area.distance(FACTORY.createPoint(
                    new Coordinate(one.point().alongM(), one.point().rightM()))) < 1e-6, "the worst point lies in the area"));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void areasAgreeWithDenseSampling(int seed) {
        Random random = random(seed);
        ProtectionSurface surface = surface(random);
        Outline outline = new Outline(surface);
        List<FramePoint> ring = ring(random);
        double top = ring.stream().mapToDouble(FramePoint::heightM).max().orElseThrow();
        var box = polygon(ring).getEnvelopeInternal();
        double sampled = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 200; i++) {
            for (int k = 0; k < 200; k++) {
                double along = box.getMinX() + (i + 0.5) / 200 * box.getWidth();
                double right = box.getMinY() + (k + 0.5) / 200 * box.getHeight();
                if (outline.holds(along, right) && isInside(ring, along, right)) {
                    sampled = Math.max(sampled, top - outline.limit(along, right));
                }
            }
        }
        double found = surface.compareArea(ring, 0, 0).map(Penetration::excessM).orElse(Double.NEGATIVE_INFINITY);
        assertTrue(sampled <= found + 1e-6, "a sample stands higher than the exact worst point");
    }

    /** Winding by summed angles, unlike the crossing count that libraries use. */
    private static boolean isInside(List<FramePoint> ring, double along, double right) {
        double turned = 0;
        for (int i = 0; i < ring.size(); i++) {
            FramePoint from = ring.get(i);
            FramePoint to = ring.get((i + 1) % ring.size());
            double step = Math.atan2(to.rightM() - right, to.alongM() - along) - Math.atan2(from.rightM() - right, from.alongM() - along);
            turned += Math.IEEEremainder(step, 2 * Math.PI);
        }
        return Math.abs(turned) > Math.PI;
    }

    private static void assertSame(OptionalDouble expected, Optional<Penetration> found) {
        assertEquals(expected.isPresent(), found.isPresent());
        if (found.isPresent()) {
            assertEquals(expected.getAsDouble(), found.get().excessM(), 1e-6);
        }
    }
}
