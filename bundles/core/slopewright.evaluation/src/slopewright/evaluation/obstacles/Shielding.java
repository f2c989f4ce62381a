package slopewright.evaluation.obstacles;

import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.util.Projects;

/**
 * Whether an obstacle may stand through a surface because an existing immovable object shields it. A claim counts only where it names
 * the object, which stands at least as high, or a study with document, date and person. Shielding changes no comparison.
 *
 * @param kind what is claimed, and whether it is backed
 * @param by   the object or the study; empty where none is named
 */
public record Shielding(Kind kind, String by) {
    /** Nothing is claimed. */
    public static final Shielding NONE = new Shielding(Kind.NONE, "");

    /** It is claimed, and by nothing that counts. */
    public static final Shielding UNBACKED = new Shielding(Kind.CLAIMED, "");

    /** What is claimed. */
    public enum Kind {
        /** Nothing. */
        NONE,
        /** Shielded, but neither by a named object nor by a study. */
        CLAIMED,
        /** Shielded by another object of the project. */
        BY_OBJECT,
        /** Shielded by what a study found. */
        BY_STUDY
    }

    /** Refuses missing parts. */
    public Shielding {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(by);
    }

    /**
     * Reads the shielding of an obstacle. An object that is temporary, is lower, or is shielded by the obstacle itself in the end, shields
     * nothing. Against a surface an object shields only where it stands through it as well: {@link ObstacleField}.
     *
     * @param obstacle the obstacle
     * @return its shielding
     */
    public static Shielding of(Obstacle obstacle) {
        if (!Boolean.TRUE.equals(obstacle.getShielded())) {
            return NONE;
        }
        Obstacle object = obstacle.getShieldedBy();
        if (object != null && object.eContainer() != null && !Boolean.TRUE.equals(object.getTemporary()) && !leadsBack(obstacle)
                && topM(object) >= topM(obstacle)) {
            return new Shielding(Kind.BY_OBJECT, Projects.label(object));
        }
        boolean study = isGiven(obstacle.getShieldingStudy()) && isGiven(obstacle.getShieldingStudyDate())
                && isGiven(obstacle.getShieldingStudyPerson());
        return study ? new Shielding(Kind.BY_STUDY, obstacle.getShieldingStudy() + ", " + obstacle.getShieldingStudyDate() + ", "
                + obstacle.getShieldingStudyPerson()) : UNBACKED;
    }

    private static boolean leadsBack(Obstacle obstacle) {
        Set<Obstacle> seen = new HashSet<>();
        for (Obstacle one = obstacle; one != null; one = one.getShieldedBy()) {
            if (!seen.add(one)) {
                return true;
            }
        }
        return false;
    }

    /** Returns the highest elevation that is entered of an obstacle, not a number where none is. */
    private static double topM(Obstacle obstacle) {
        return Stream.concat(Stream.of(obstacle).map(Obstacle::getTopElevationM), obstacle.getPlaces().stream().map(Place::getElevationM))
                .filter(Objects::nonNull).mapToDouble(Double::doubleValue).max().orElse(Double.NaN);
    }

    private static boolean isGiven(String text) {
        return text != null && !text.isBlank();
    }

    /** Returns whether it is claimed and backed, so that a penetration is accepted. */
    public boolean isBacked() {
        return kind == Kind.BY_OBJECT || kind == Kind.BY_STUDY;
    }
}
