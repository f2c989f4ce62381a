package slopewright.siting.range;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.siting.Colour;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Siting;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.PhotometryTable;
import slopewright.standards.RuleSet;

/**
 * Printed least intensities of a light: the contours of its own colour, or those of another colour of which it is a share or a multiple.
 *
 * @param table  the contours
 * @param factor what their intensities are multiplied with
 * @param uses   where the numbers come from
 */
public record PrintedLight(PhotometryTable table, double factor, List<Siting.CitedUse> uses) {
    private static final double FULL_PERCENT = 100;

    /** Copies the list. */
    public PrintedLight {
        uses = List.copyOf(uses);
    }

    /**
     * Finds the contours of a colour.
     *
     * @param family    the family
     * @param rules     the rule set
     * @param colour    the colour of the light
     * @param condition by day, at twilight or at night; twilight counts as night where the printed intensities differ
     * @param asWhite   whether white counts as such; else as the red beside it, which is the weaker
     * @return the contours, empty where the rule set prints none
     */
    public static Optional<PrintedLight> of(IndicatorFamily family, RuleSet rules, Colour colour, LightCondition condition,
            boolean asWhite) {
        boolean night = condition != LightCondition.DAY;
        Optional<PhotometryTable> own = rules.photometry(family.ruleKey(), colour.key(), night);
        if (own.isPresent()) {
            return own.map(table -> new PrintedLight(table, 1, List.of(use(table))));
        }
        Optional<PhotometryTable> white = rules.photometry(family.ruleKey(), Colour.WHITE.key(), night);
        Optional<PhotometryTable> red = rules.photometry(family.ruleKey(), Colour.RED.key(), night);
        if (colour == Colour.RED) {
            return rules.find(family.ruleKey() + ".red-filter-percent")
                    .flatMap(share -> white.map(table -> following(table, share, share.value() / FULL_PERCENT)));
        }
        if (colour == Colour.WHITE && asWhite) {
            return rules.find(family.ruleKey() + ".white-to-red-from-times")
                    .flatMap(times -> red.map(table -> following(table, times, times.value())));
        }
        return colour == Colour.WHITE ? red.map(table -> new PrintedLight(table, 1, List.of(use(table)))) : Optional.empty();
    }

    private static Siting.CitedUse use(PhotometryTable table) {
        Citation citation = table.citation();
        return new Siting.CitedUse(citation.key(), table.contours().get(0).intensityCd(), "cd", citation);
    }

    private static PrintedLight following(PhotometryTable table, CitedValue value, double factor) {
        List<Siting.CitedUse> uses = new ArrayList<>(List.of(use(table)));
        uses.add(new Siting.CitedUse(value.key(), value.value(), value.unit(), value.citation()));
        return new PrintedLight(table, factor, uses);
    }

    /** Returns the same at a share of full brightness; contours of the night are those at the setting for the night already. */
    PrintedLight dimmed(double share) {
        return table.condition() == PhotometryTable.Condition.NIGHT ? this : new PrintedLight(table, factor * share, uses);
    }

    /**
     * Returns the least intensity in a direction.
     *
     * @param azimuthDeg   to the side of the axis, decimal degrees
     * @param elevationDeg above the setting, decimal degrees
     * @return candela, empty outside the last contour
     */
    public OptionalDouble intensityCd(double azimuthDeg, double elevationDeg) {
        OptionalDouble found = table.intensityCd(azimuthDeg, elevationDeg);
        return found.isPresent() ? OptionalDouble.of(found.getAsDouble() * factor) : found;
    }

    /** Returns the least intensity of a contour, candela. */
    public double intensityCd(PhotometryTable.Contour contour) {
        return contour.intensityCd() * factor;
    }

    double onAxisCd() {
        return intensityCd(table.contours().get(0));
    }
}
