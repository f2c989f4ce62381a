package slopewright.rcp.internal.site;

import java.util.ArrayList;
import java.util.List;

import slopewright.evaluation.site.FurtherPad;
import slopewright.evaluation.site.SiteNumber;
import slopewright.geometry.Decimals;
import slopewright.rcp.internal.Messages;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** A helipad as it is typed: its name, where it lies from the first one, its elevation and its landing directions. */
final class PadRow {
    static final int COLUMNS = 5;
    private static final int EAST = 1;
    private static final int NORTH = 2;
    private static final int ELEVATION = 3;
    private static final int DIRECTIONS = 4;
    /** What is further away is another site, metres. */
    private static final double FURTHEST_M = 100_000;
    private static final double FULL_DEG = 360;

    private final String[] typed = new String[COLUMNS];
    private final boolean first;

    private PadRow(boolean first, String... words) {
        this.first = first;
        for (int i = 0; i < COLUMNS; i++) {
            typed[i] = words[i];
        }
    }

    /** Makes the row of the first pad, of which only further directions are typed here. */
    static PadRow first(String name) {
        return new PadRow(true, name, "0", "0", "", "");
    }

    /** Makes a further pad. */
    static PadRow further(String name, double elevationM) {
        return new PadRow(false, name, "100", "0", QuantityFormat.preferred().show(elevationM, Quantity.LENGTH), "90");
    }

    boolean isFirst() {
        return first;
    }

    boolean isTyped(int column) {
        return !first || column == DIRECTIONS;
    }

    String text(int column) {
        return typed[column];
    }

    void type(int column, String words) {
        typed[column] = column == 0 ? Answers.line(words) : words;
    }

    /** Returns its landing directions, decimal degrees from true north; refuses what is none. */
    List<Double> directions() {
        List<Double> all = new ArrayList<>();
        for (String word : typed[DIRECTIONS].strip().split("[\\s;]+|,\\s+|,(?=\\d{3})")) {
            if (!word.isBlank()) {
                double deg = Decimals.parse(word);
                if (!(deg >= 0 && deg <= FULL_DEG)) {
                    throw new IllegalArgumentException(Messages.get("pads.no-direction", word));
                }
                all.add(deg);
            }
        }
        return all;
    }

    /** Returns the pad; refuses what makes none. */
    FurtherPad pad() {
        if (typed[0].isBlank() || directions().isEmpty()) {
            throw new IllegalArgumentException(Messages.get("pads.needs"));
        }
        return new FurtherPad(typed[0].strip(), length(EAST, -FURTHEST_M, FURTHEST_M), length(NORTH, -FURTHEST_M, FURTHEST_M),
                length(ELEVATION, SiteNumber.ELEVATION.min(), SiteNumber.ELEVATION.max()), directions());
    }

    private double length(int column, double least, double most) {
        QuantityFormat format = QuantityFormat.preferred();
        double length = format.read(typed[column], Quantity.LENGTH);
        if (!(length >= least && length <= most)) {
            throw new IllegalArgumentException(Messages.get("site.range", typed[0].strip() + ": " + typed[column].strip(),
                    format.showWithUnit(least, Quantity.LENGTH), format.showWithUnit(most, Quantity.LENGTH)));
        }
        return length;
    }
}
