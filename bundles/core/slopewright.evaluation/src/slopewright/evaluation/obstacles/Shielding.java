package slopewright.evaluation.obstacles;

import java.util.Objects;

import slopewright.model.Obstacle;
import slopewright.model.util.Projects;

/**
 * Whether an obstacle may stand through a surface because an existing immovable object shields it. A claim counts only where it names
 * the object, or a study with document, date and person. Shielding changes no comparison.
 *
 * @param kind what is claimed, and whether it is backed
 * @param by   the object or the study; empty where none is named
 */
public record Shielding(Kind kind, String by) {
    /** Nothing is claimed. */
    public static final Shielding NONE = new Shielding(Kind.NONE, "");

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
     * Reads the shielding of an obstacle. An object that is temporary, or is the obstacle itself, shields nothing.
     *
     * @param obstacle the obstacle
     * @return its shielding
     */
    public static Shielding of(Obstacle obstacle) {
        if (!Boolean.TRUE.equals(obstacle.getShielded())) {
            return NONE;
        }
        Obstacle object = obstacle.getShieldedBy();
        if (object != null && object != obstacle && object.eContainer() != null && !Boolean.TRUE.equals(object.getTemporary())
                && object.getShieldedBy() != obstacle) {
            return new Shielding(Kind.BY_OBJECT, Projects.label(object));
        }
        boolean study = isGiven(obstacle.getShieldingStudy()) && isGiven(obstacle.getShieldingStudyDate())
                && isGiven(obstacle.getShieldingStudyPerson());
        return study ? new Shielding(Kind.BY_STUDY, obstacle.getShieldingStudy() + ", " + obstacle.getShieldingStudyDate() + ", "
                + obstacle.getShieldingStudyPerson()) : new Shielding(Kind.CLAIMED, "");
    }

    private static boolean isGiven(String text) {
        return text != null && !text.isBlank();
    }

    /** Returns whether it is claimed and backed, so that a penetration is accepted. */
    public boolean isBacked() {
        return kind == Kind.BY_OBJECT || kind == Kind.BY_STUDY;
    }
}
