package slopewright.exchange.internal.runways;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What the words of open data for the surface of a runway mean. */
public final class Surfaces {
    private static final Set<String> UNKNOWN = Set.of("", "unknown", "unk", "u");
    private static final List<String> PAVED = List.of("asph", "asp", "conc", "con", "bit", "tarmac", "paved");
    private static final List<String> UNPAVED = List.of("grass", "turf", "grs", "grav", "grv", "dirt", "sand", "clay", "earth", "snow",
            "ice", "unpaved");

    private Surfaces() {
    }

    /** Returns the word in small letters; empty where it says that nobody knows. */
    public static String word(String surface) {
        String word = surface.strip().toLowerCase(Locale.ROOT);
        return UNKNOWN.contains(word) ? "" : word;
    }

    /** Returns whether it is water. */
    public static boolean isWater(String word) {
        return word.startsWith("wat");
    }

    /** Returns whether it is paved; empty where the word does not say. */
    public static Optional<Boolean> isPaved(String word) {
        return UNPAVED.stream().anyMatch(word::startsWith) ? Optional.of(false)
                : PAVED.stream().anyMatch(word::startsWith) ? Optional.of(true) : Optional.empty();
    }
}
