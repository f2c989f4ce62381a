package slopewright.evaluation.equipment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.messages.Argument;
import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.siting.Colour;
import slopewright.siting.range.LightCondition;
import slopewright.siting.range.PrintedLight;
import slopewright.standards.PhotometryTable;

/**
 * The light of one colour that a rule set asks of the units of an aid, by day, and what was measured at the equipment. Angles are decimal
 * degrees from the axis of the beam, to the right and above positive.
 *
 * @param colour   the colour
 * @param required the contours that the rule set prints, the inner one first; empty where it prints none
 * @param source   where they are printed; empty as above
 * @param measured what was measured, in the order of entry; empty where nothing was
 */
public record LightDistribution(Colour colour, List<Contour> required, Optional<Argument> source, List<Measured> measured) {

    private static final double FAR_DEG = 90;
    private static final int STEPS = 72;
    private static final int HALVINGS = 40;

    /** Copies the lists. */
    public LightDistribution {
        Objects.requireNonNull(colour);
        Objects.requireNonNull(source);
        required = List.copyOf(required);
        measured = List.copyOf(measured);
    }

    /**
     * One printed contour.
     *
     * @param intensityCd  least intensity inside, candela
     * @param azimuthDeg   its extent to each side
     * @param elevationDeg its extent above and below; empty where it has no limit there
     * @param printed      its form
     */
    public record Contour(double intensityCd, double azimuthDeg, OptionalDouble elevationDeg, PhotometryTable.Contour printed) {

        /**
         * Returns its outline.
         *
         * @param mostDeg where what has no limit above and below is cut off
         * @return directions around the axis
         */
        public List<Direction> outline(double mostDeg) {
            List<Direction> outline = new ArrayList<>();
            for (int i = 0; i < STEPS; i++) {
                outline.add(at(Math.PI * 2 * i / STEPS, mostDeg));
            }
            return outline;
        }

        /** Returns where it ends at an angle around the axis, radians from the right upward. */
        public Direction at(double angle, double mostDeg) {
            double inside = 0;
            double outside = FAR_DEG * 2;
            for (int i = 0; i < HALVINGS; i++) {
                double middle = (inside + outside) / 2;
                boolean encloses = printed.encloses(middle * Math.cos(angle), middle * Math.sin(angle))
                        && Math.abs(middle * Math.sin(angle)) <= mostDeg;
                inside = encloses ? middle : inside;
                outside = encloses ? outside : middle;
            }
            return new Direction(inside * Math.cos(angle), inside * Math.sin(angle));
        }
    }

    /**
     * A direction from the axis of the beam.
     *
     * @param azimuthDeg   to the right
     * @param elevationDeg upward
     */
    public record Direction(double azimuthDeg, double elevationDeg) {
    }

    /**
     * One measurement.
     *
     * @param at          its direction
     * @param intensityCd what was measured, candela
     * @param leastCd     what the contours ask for there; empty outside of them
     */
    public record Measured(Direction at, double intensityCd, OptionalDouble leastCd) {

        /** Tells whether it is weaker than the contour around it. */
        public boolean isWeaker() {
            return leastCd.isPresent() && intensityCd < leastCd.getAsDouble();
        }
    }

    /**
     * Returns the light of an aid.
     *
     * @param aid the evaluation of the aid
     * @return one a colour for which there are contours or measurements; empty where there is neither
     */
    public static List<LightDistribution> of(AidEvaluation aid) {
        List<LightDistribution> found = new ArrayList<>();
        for (Colour colour : Colour.values()) {
            Optional<PrintedLight> light = aid.family().flatMap(family -> PrintedLight.of(family, aid.rules(), colour, LightCondition.DAY,
                    true));
            List<Contour> required = light.map(LightDistribution::contours).orElse(List.of());
            List<Measured> measured = measured(aid.aid().getEquipment(), colour, light);
            if (!required.isEmpty() || !measured.isEmpty()) {
                found.add(new LightDistribution(colour, required, light.map(printed -> printed.table().citation().text()),
                        measured));
            }
        }
        return found;
    }

    private static List<Contour> contours(PrintedLight light) {
        return light.table().contours().stream().map(printed -> new Contour(light.intensityCd(printed), printed.azimuthDeg(),
                printed.shape() == PhotometryTable.Shape.AZIMUTH ? OptionalDouble.empty() : OptionalDouble.of(printed.elevationDeg()),
                printed)).toList();
    }

    private static List<Measured> measured(EquipmentType type, Colour colour, Optional<PrintedLight> light) {
        return type == null ? List.of() : type.getIntensities().stream().filter(point -> point.getColour() != LightColour.NONE
                && point.getColour().getName().equalsIgnoreCase(colour.name()) && point.getAzimuthDeg() != null
                && point.getElevationDeg() != null && point.getIntensityCd() != null)
                .map(point -> new Measured(new Direction(point.getAzimuthDeg(), point.getElevationDeg()), point.getIntensityCd(), light
                        .map(printed -> printed.intensityCd(point.getAzimuthDeg(), point.getElevationDeg()))
                        .orElse(OptionalDouble.empty()))).toList();
    }

    /**
     * Returns the corners of the area between measured directions in which at least an intensity was found everywhere it was measured: the
     * hull of those directions. Between them nothing was measured.
     *
     * @param leastCd candela
     * @return the corners around the area; fewer than three where there is none
     */
    public List<Direction> reached(double leastCd) {
        List<Direction> strong = new ArrayList<>(measured.stream().filter(point -> point.intensityCd() >= leastCd).map(Measured::at)
                .distinct().toList());
        List<Direction> weak = measured.stream().filter(point -> point.intensityCd() < leastCd).map(Measured::at).toList();
        List<Direction> hull = hull(strong);
        return weak.stream().anyMatch(point -> isInside(hull, point)) ? List.of() : hull;
    }

    private static List<Direction> hull(List<Direction> points) {
        if (points.size() < 3) {
            return points;
        }
        points.sort((a, b) -> a.azimuthDeg() == b.azimuthDeg() ? Double.compare(a.elevationDeg(), b.elevationDeg())
                : Double.compare(a.azimuthDeg(), b.azimuthDeg()));
        List<Direction> hull = new ArrayList<>(half(points));
        List<Direction> back = new ArrayList<>(points);
        Collections.reverse(back);
        hull.addAll(half(back));
        return hull;
    }

    private static List<Direction> half(List<Direction> points) {
        List<Direction> side = new ArrayList<>();
        for (Direction point : points) {
            while (side.size() >= 2 && turn(side.get(side.size() - 2), side.get(side.size() - 1), point) <= 0) {
                side.remove(side.size() - 1);
            }
            side.add(point);
        }
        return side.subList(0, side.size() - 1);
    }

    private static double turn(Direction a, Direction b, Direction c) {
        return (b.azimuthDeg() - a.azimuthDeg()) * (c.elevationDeg() - a.elevationDeg())
                - (b.elevationDeg() - a.elevationDeg()) * (c.azimuthDeg() - a.azimuthDeg());
    }

    private static boolean isInside(List<Direction> hull, Direction point) {
        for (int i = 0; i < hull.size(); i++) {
            if (turn(hull.get(i), hull.get((i + 1) % hull.size()), point) <= 0) {
                return false;
            }
        }
        return hull.size() >= 3;
    }
}
