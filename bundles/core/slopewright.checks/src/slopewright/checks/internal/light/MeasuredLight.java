package slopewright.checks.internal.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.portable.SightLines;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.model.MeasuredIntensity;
import slopewright.siting.Colour;
import slopewright.siting.ElementNames;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.UnitPlan;
import slopewright.siting.range.LightCondition;
import slopewright.siting.range.PrintedLight;
import slopewright.standards.CitedValue;
import slopewright.standards.PhotometryTable;
import slopewright.standards.RuleSet;

/**
 * One intensity that was measured at a type of equipment.
 *
 * @param colour       colour of the light
 * @param azimuthDeg   to the side of the axis, decimal degrees
 * @param elevationDeg above the setting, decimal degrees
 * @param intensityCd  candela
 */
record MeasuredLight(Colour colour, double azimuthDeg, double elevationDeg, double intensityCd) {
    /** Directions are the same that differ by no more than this, decimal degrees: the stored resolution. */
    private static final double SAME_DEG = 1e-6;
    private static final double PERCENT = 100;

    /**
     * A direction in which the contours ask for a measurement.
     *
     * @param colour       colour of the light
     * @param azimuthDeg   to the side of the axis, decimal degrees
     * @param elevationDeg above the setting, decimal degrees
     * @param leastCd      what the contour that ends there asks for, candela
     */
    record Direction(Colour colour, double azimuthDeg, double elevationDeg, double leastCd) {

        /** Returns whether a measurement there, or farther out on the same side and as strong, tells of it. */
        boolean isTold(MeasuredLight light) {
            if (light.colour() != colour) {
                return false;
            }
            boolean there = same(light.azimuthDeg(), azimuthDeg) && same(light.elevationDeg(), elevationDeg);
            boolean side = same(light.elevationDeg(), elevationDeg) && isBeyond(light.azimuthDeg(), azimuthDeg);
            boolean height = same(light.azimuthDeg(), azimuthDeg) && isBeyond(light.elevationDeg(), elevationDeg);
            return there || (side || height) && light.intensityCd() >= leastCd;
        }

        private static boolean isBeyond(double measured, double wanted) {
            return wanted != 0 && measured / wanted >= 1;
        }

        boolean isSame(Direction other) {
            return colour == other.colour && same(azimuthDeg, other.azimuthDeg) && same(elevationDeg, other.elevationDeg);
        }

        Message name() {
            return MeasuredLight.name(colour, azimuthDeg, elevationDeg);
        }
    }

    /** Returns what was measured at the equipment of an aid; ends the rule where nothing was, or a number is missing. */
    static List<MeasuredLight> of(AidFacts facts) {
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), Message.of("missing.equipment-type"));
        Message missing = Message.of("missing.measured-intensities", ElementNames.of(type));
        if (type.getIntensities().isEmpty()) {
            throw Stop.missing(missing);
        }
        List<MeasuredLight> found = new ArrayList<>();
        for (MeasuredIntensity point : type.getIntensities()) {
            if (point.getColour() == LightColour.NONE || point.getAzimuthDeg() == null || point.getElevationDeg() == null
                    || point.getIntensityCd() == null) {
                throw Stop.missing(missing, Message.of("light.incomplete", ElementNames.of(type)));
            }
            found.add(new MeasuredLight(Colour.valueOf(point.getColour().getName().toUpperCase(Locale.ROOT)), point.getAzimuthDeg(),
                    point.getElevationDeg(), point.getIntensityCd()));
        }
        return found;
    }

    /**
     * Returns the directions in which the contours of an aid end: to both sides at the setting, below it in red and above it in the other
     * colour, and the axis itself. Where green is printed it shines at the setting, and red only below. At a portable unit that ends its
     * red in the dark all contours but the innermost end at that edge, where the rule set has a value for it ({@link #darkEdge}).
     */
    static List<Direction> asked(AidFacts facts) {
        IndicatorFamily family = facts.indicator();
        RuleSet rules = facts.rules();
        Optional<CitedValue> belowPercent = darkEdge(facts);
        double dark = darkOffsetDeg(facts).orElse(Double.NaN);
        List<Direction> asked = new ArrayList<>();
        boolean green = rules.photometry(family.ruleKey(), Colour.GREEN.key(), false).isPresent();
        for (Colour colour : List.of(Colour.RED, Colour.WHITE, Colour.GREEN)) {
            PrintedLight light = PrintedLight.of(family, rules, colour, LightCondition.DAY, true).orElse(null);
            if (light == null) {
                continue;
            }
            boolean own = light.table().colour().equals(colour.key());
            boolean atSetting = own && (colour != Colour.RED || !green);
            if (atSetting) {
                asked.add(new Direction(colour, 0, 0, light.intensityCd(light.table().contours().get(0))));
            }
            for (PhotometryTable.Contour contour : light.table().contours()) {
                double least = light.intensityCd(contour);
                if (atSetting) {
                    asked.add(new Direction(colour, -contour.azimuthDeg(), 0, least));
                    asked.add(new Direction(colour, contour.azimuthDeg(), 0, least));
                }
                if (contour.shape() != PhotometryTable.Shape.AZIMUTH) {
                    if (colour == Colour.RED && belowPercent.isPresent() && isBelow(contour, light, dark)) {
                        Direction atEdge = new Direction(colour, 0, dark, least);
                        if (asked.stream().noneMatch(atEdge::isSame)) {
                            asked.add(atEdge);
                        }
                        least *= belowPercent.get().value() / PERCENT;
                    }
                    if (least > 0) {
                        asked.add(new Direction(colour, 0, colour == Colour.RED ? -contour.elevationDeg() : contour.elevationDeg(), least));
                    }
                }
            }
        }
        return asked;
    }

    /** Returns whether a contour, the innermost apart, reaches below an edge. */
    private static boolean isBelow(PhotometryTable.Contour contour, PrintedLight light, double edgeDeg) {
        double innermost = light.table().contours().stream().mapToDouble(PhotometryTable.Contour::elevationDeg).min().orElseThrow();
        return contour.elevationDeg() > innermost && -contour.elevationDeg() < edgeDeg;
    }

    /**
     * Returns how much of the contours, the innermost apart, is asked for below the edge of a portable unit's red over the dark. That edge
     * stands above what stands below the approach, so a unit set low cannot shine as far down as the contours are printed; no text that was
     * read says so.
     *
     * @return empty for a unit that is not portable or has no such edge, and where the rule set has no value
     */
    static Optional<CitedValue> darkEdge(AidFacts facts) {
        boolean hasEdge = Boolean.TRUE.equals(facts.aid().getPortable()) && darkOffsetDeg(facts).isPresent();
        return hasEdge ? facts.find("light-below-dark-edge-percent") : Optional.empty();
    }

    /** Returns the lowest edge of red over the dark among the units, decimal degrees from the setting, downwards negative. */
    private static OptionalDouble darkOffsetDeg(AidFacts facts) {
        List<UnitPlan> units = facts.laid().units();
        List<Double> edges = units.stream().flatMap(unit -> SightLines.redLowerEdgeDeg(facts.aid(), unit).stream()
                .mapToObj(edge -> edge - unit.settingDeg())).filter(offset -> offset < 0).toList();
        return edges.size() < units.size() ? OptionalDouble.empty() : edges.stream().mapToDouble(Double::doubleValue).min();
    }

    private static boolean same(double one, double other) {
        return Math.abs(one - other) <= SAME_DEG;
    }

    /** Returns whether another measurement lies in the same direction on the other side of the setting. */
    boolean isOpposite(MeasuredLight other) {
        return same(azimuthDeg, other.azimuthDeg) && same(elevationDeg, -other.elevationDeg);
    }

    Message name() {
        return name(colour, azimuthDeg, elevationDeg);
    }

    private static Message name(Colour colour, double azimuthDeg, double elevationDeg) {
        Argument light = Words.term("colour." + colour.key());
        return Message.of("light.direction", light, Words.deg(azimuthDeg), Words.deg(elevationDeg));
    }
}
