package slopewright.exchange.survey;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One thing that a survey file holds.
 *
 * @param kind     its shape
 * @param grid     whether its positions are metres east and north instead of latitude and longitude
 * @param vertices its positions; the first of an area is not repeated at the end
 * @param facts    what the file says of it, by {@link Fact}
 * @param line     line in the file, 1 for the first
 */
public record SurveyShape(Kind kind, boolean grid, List<SurveyVertex> vertices, Map<Fact, String> facts, long line) {

    /** Shapes. */
    public enum Kind {
        /** One position. */
        POINT,
        /** Two positions or more. */
        LINE,
        /** A ring of three positions or more. */
        AREA
    }

    /** What a file may say of a shape. Lengths are metres. */
    public enum Fact {
        /** Its id in the file. */
        ID("id"),
        /** What people call it. */
        NAME("name"),
        /** Elevation of its top. */
        TOP_ELEVATION("topElevationM"),
        /** An elevation that is named no closer: of its top, or of the ground. */
        ELEVATION("elevationM"),
        /** Its height above the ground. */
        HEIGHT("heightM"),
        /** Elevation of the ground that it stands on. */
        GROUND_ELEVATION("groundElevationM"),
        /** Radius in which its true place may lie. */
        HORIZONTAL_ACCURACY("horizontalAccuracyM"),
        /** How far from its position it may reach, where it is one of many that were measured at places only. */
        REACH("reachM"),
        /** By how much it may be higher. */
        VERTICAL_ACCURACY("verticalAccuracyM"),
        /** The unit of its lengths. */
        UNIT("unit"),
        /** The vertical datum of its elevations. */
        VERTICAL_DATUM("verticalDatum"),
        /** Where it comes from. */
        SOURCE("source"),
        /** The day of the survey. */
        DATE("date");

        private final String label;

        Fact(String label) {
            this.label = label;
        }

        /** Returns its name in files. */
        public String label() {
            return label;
        }
    }

    /** Copies the lists. */
    public SurveyShape {
        vertices = List.copyOf(vertices);
        facts = facts.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(facts));
    }

    /** Returns what the file says, empty where it says nothing. */
    public Optional<String> text(Fact fact) {
        return Optional.ofNullable(facts.get(fact));
    }

    /** Returns the third numbers of the positions in their order; empty where one has none. */
    public Optional<double[]> elevationsM() {
        double[] all = new double[vertices.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = vertices.get(i).elevationM();
            if (Double.isNaN(all[i])) {
                return Optional.empty();
            }
        }
        return Optional.of(all);
    }
}
