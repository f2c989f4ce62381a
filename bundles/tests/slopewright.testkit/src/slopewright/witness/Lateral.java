package slopewright.witness;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Distances of units from the runway edge. */
public final class Lateral {
    private Lateral() {
    }

    /** Choice of lateral layout of a row. */
    public enum Choice {
        /** Four units 15 and 9 m, two units 10 and 6 m; US 50 and 30 ft. */
        STANDARD(""),
        /** Code 1 or 2, four units: 10 and 6 m (Fig 5-19 f); US small runways 30 ft from the edge. */
        REDUCED("reduced."),
        /** Two units, greater range: 10 and 9 m (Fig 5-19 g). */
        ENLARGED("enlarged."),
        /** Two units to become four: 15 and 9 m (Fig 5-19 g). */
        CONVERTIBLE("convertible.");

        private final String prefix;

        Choice(String prefix) {
            this.prefix = prefix;
        }
    }

    /** The choice the text names for a code number: the reduced one for four units at code 1 and 2, else the standard one. */
    public static Choice usual(Edition edition, Family family, int code) {
        boolean reduced = !edition.american() && family == Family.FOUR_UNIT_ROW && code <= 2;
        return reduced ? Choice.REDUCED : Choice.STANDARD;
    }

    /** Distance of the inner unit of a row from the runway edge, metres. */
    public static double innerM(Edition edition, Family family, Choice choice) {
        return length(edition, family, choice, "inner-unit-to-edge");
    }

    /** Spacing of the units of a row, metres. */
    public static double spacingM(Edition edition, Family family, Choice choice) {
        return length(edition, family, choice, "spacing");
    }

    /** Distances from the runway edge of the units of a row, inner unit first, metres. */
    public static List<Double> rowM(Edition edition, Family family, Choice choice) {
        List<Double> list = new ArrayList<>();
        int count = family == Family.FOUR_UNIT_ROW ? 4 : 2;
        for (int i = 0; i < count; i++) {
            list.add(innerM(edition, family, choice) + i * spacingM(edition, family, choice));
        }
        return list;
    }

    /** Distances from the runway edge of the units of one bar of two or three bars, inner first, metres (US pack 3.3.7). */
    public static List<Double> barM(Edition edition, Family family, int unitsInBar) {
        double inner = Transcription.number(edition, family, "inner-unit-to-edge-ft") * Angles.FOOT_M;
        double spacing = Transcription.number(edition, family, "unit-spacing-ft") * Angles.FOOT_M;
        List<Double> list = new ArrayList<>();
        for (int i = 0; i < unitsInBar; i++) {
            list.add(inner + i * spacing);
        }
        return list;
    }

    /** Distance of the leg line of a T form from the runway edge, metres (Fig 5-17). */
    public static double legLineM(Edition edition, Family family) {
        return Transcription.number(edition, family, "leg-line-to-edge-m");
    }

    /** Distances from the runway edge of the four wing bar units of a T form, inner first, metres (Fig 5-17). */
    public static List<Double> wingBarM(Edition edition, Family family) {
        double line = legLineM(edition, family);
        double inner = Transcription.number(edition, family, "bar-unit-inner-offset-m");
        double outer = Transcription.number(edition, family, "bar-unit-outer-offset-m");
        return List.of(line - outer, line - inner, line + inner, line + outer);
    }

    private static double length(Edition edition, Family family, Choice choice, String name) {
        for (String prefix : List.of(choice.prefix, "")) {
            OptionalDouble feet = Transcription.maybe(edition, family.key(), prefix + name + "-ft");
            if (feet.isPresent()) {
                return feet.getAsDouble() * Angles.FOOT_M;
            }
            OptionalDouble metres = Transcription.maybe(edition, family.key(), prefix + name + "-m");
            if (metres.isPresent()) {
                return metres.getAsDouble();
            }
        }
        throw new IllegalArgumentException("no " + name + " for " + edition.key() + " " + family.key());
    }
}
