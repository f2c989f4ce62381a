package slopewright.checks.internal.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.model.MeasuredIntensity;
import slopewright.siting.Colour;
import slopewright.siting.ElementNames;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.range.LightCondition;
import slopewright.siting.range.PrintedLight;
import slopewright.standards.PhotometryTable;

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
     * Returns the directions in which the contours of a family end: to both sides at the setting, below it in red and above it in the other
     * colour, and the axis itself. Where green is printed it shines at the setting, and red only below.
     */
    static List<Direction> asked(IndicatorFamily family, slopewright.standards.RuleSet rules) {
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
                    asked.add(new Direction(colour, 0, colour == Colour.RED ? -contour.elevationDeg() : contour.elevationDeg(), least));
                }
            }
        }
        return asked;
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
