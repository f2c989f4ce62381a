package slopewright.exchange.survey;

import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is said of the heights of a survey where its file leaves it open: of an elevation that it names no closer, and of the third number
 * of a position.
 *
 * @param meaning what they are
 * @param groundM elevation of the ground for heights above it where the file has none, metres; empty where it is not known
 */
public record SurveyHeights(Meaning meaning, OptionalDouble groundM) {

    /** Nothing is said: what the file leaves open is refused. */
    public static final SurveyHeights AS_STATED = new SurveyHeights(Meaning.AS_STATED, OptionalDouble.empty());

    /** What an elevation that is named no closer is. */
    public enum Meaning {
        /** That of the top where nothing in the file speaks against it; else the file is refused. */
        AS_STATED,
        /** The elevation of the top, be it 0. */
        TOP,
        /** The elevation of the ground; a height above it gives the top. */
        GROUND,
        /** No elevation at all: the height above the ground. */
        ABOVE_GROUND;

        /** Returns the word on the command line. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** Finds a meaning by its word. */
        public static Optional<Meaning> find(String key) {
            return Arrays.stream(values()).filter(meaning -> meaning.key().equals(key)).findFirst();
        }
    }

    /** Refuses missing parts. */
    public SurveyHeights {
        Objects.requireNonNull(meaning);
        Objects.requireNonNull(groundM);
    }
}
