package slopewright.evaluation.obstacles;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.geometry.ProtectionSurface;

/**
 * Everything that stands there against one surface. What lies outside the surface is left out; what could not be compared is named, so
 * that nothing is taken to be clear because nobody knows.
 *
 * @param surface    the surface
 * @param surveyed   how many obstacles and survey points were compared, those outside too
 * @param inside     what lies under or over the surface, obstacles in the order of the project, then blocks
 * @param uncompared what could not be compared
 */
public record SurfaceComparison(ProtectionSurface surface, long surveyed, List<ObstacleComparison> inside, List<Uncompared> uncompared) {
    private static final Comparator<ObstacleComparison> LEAST_MARGIN = Comparator.comparingDouble(ObstacleComparison::marginM);

    /** Copies the lists. */
    public SurfaceComparison {
        Objects.requireNonNull(surface);
        inside = List.copyOf(inside);
        uncompared = List.copyOf(uncompared);
    }

    /** Returns what stands highest against the surface, whatever shields it; empty where nothing lies within. */
    public Optional<ObstacleComparison> governing() {
        return inside.stream().min(LEAST_MARGIN);
    }

    /**
     * Returns the height of the surface above the governing one, metres, negative where it stands through; empty where nothing lies
     * within.
     */
    public OptionalDouble marginM() {
        Optional<ObstacleComparison> governing = governing();
        return governing.isPresent() ? OptionalDouble.of(governing.get().marginM()) : OptionalDouble.empty();
    }

    /** Returns the one of least margin among those that nothing named shields; empty where there is none. */
    public Optional<ObstacleComparison> governingUnshielded() {
        return inside.stream().filter(comparison -> !comparison.shielding().isBacked()).min(LEAST_MARGIN);
    }

    /** Returns whether nothing was surveyed at all, so that nobody knows what stands there. */
    public boolean isUnsurveyed() {
        return surveyed == 0;
    }

    /** Returns whether everything that is entered was compared, and something is. */
    public boolean isComplete() {
        return uncompared.isEmpty() && !isUnsurveyed();
    }

    /** Returns whether something that nothing named shields stands above the surface. */
    public boolean isPenetrated() {
        return inside.stream().anyMatch(ObstacleComparison::isUnshieldedPenetration);
    }

    /** Returns the comparison of an element, empty where it lies outside or could not be compared. */
    public Optional<ObstacleComparison> of(Object element) {
        return inside.stream().filter(comparison -> comparison.element() == element).findFirst();
    }
}
