package slopewright.exchange.survey;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

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
        ID,
        /** What people call it. */
        NAME,
        /** Elevation of its top. */
        TOP_ELEVATION,
        /** An elevation: of the top of an obstacle, or of the ground of a ground level. */
        ELEVATION,
        /** Its height above the ground. */
        HEIGHT,
        /** Elevation of the ground that it stands on. */
        GROUND_ELEVATION,
        /** Radius in which its true place may lie. */
        HORIZONTAL_ACCURACY,
        /** By how much it may be higher. */
        VERTICAL_ACCURACY,
        /** Where it comes from. */
        SOURCE,
        /** The day of the survey. */
        DATE
    }

    /** Copies the lists. */
    public SurveyShape {
        vertices = List.copyOf(vertices);
        facts = Map.copyOf(facts);
    }

    /** Returns what the file says, empty where it says nothing. */
    public Optional<String> text(Fact fact) {
        return Optional.ofNullable(facts.get(fact));
    }

    /** Returns the highest elevation of the positions themselves, empty where one has none. */
    public OptionalDouble highestM() {
        return vertices.stream().anyMatch(one -> Double.isNaN(one.elevationM())) ? OptionalDouble.empty()
                : vertices.stream().mapToDouble(SurveyVertex::elevationM).max();
    }
}
