package slopewright.exchange.survey;

import java.util.Objects;

import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;

/** Tells what a project has already from what a survey brings anew. */
final class Sameness {

    private static final double SAME_DEG = 1e-8;
    private static final double SAME_M = 1e-3;

    private Sameness() {
    }

    /** Returns whether a project has the points of a block already. */
    static boolean isRepeated(Project project, SurveyBlock block) {
        return project.getSurveyBlocks().stream().anyMatch(known -> block.getSha256().equals(known.getSha256()));
    }

    /** The order of the places does not count: a ring may start anywhere and run either way. */
    static boolean isSameThing(Obstacle found, Obstacle known) {
        return Objects.equals(found.getName(), known.getName()) && found.getKind() == known.getKind()
                && found.getPlaces().size() == known.getPlaces().size()
                && found.getPlaces().stream().allMatch(place -> known.getPlaces().stream().anyMatch(there -> isSamePlace(place, there)));
    }

    /** What has another height is another statement, and is kept. */
    static boolean isSame(Obstacle found, Obstacle known) {
        return isSameThing(found, known) && isNear(found.getTopElevationM(), known.getTopElevationM(), SAME_M)
                && found.getPlaces().stream().allMatch(place -> known.getPlaces().stream().anyMatch(there -> isSame(place, there)));
    }

    static boolean isSame(Place found, Place known) {
        return isSamePlace(found, known) && isNear(found.getElevationM(), known.getElevationM(), SAME_M);
    }

    private static boolean isSamePlace(Place found, Place known) {
        return isNear(found.getLatitudeDeg(), known.getLatitudeDeg(), SAME_DEG)
                && isNear(found.getLongitudeDeg(), known.getLongitudeDeg(), SAME_DEG) && isNear(found.getEastM(), known.getEastM(), SAME_M)
                && isNear(found.getNorthM(), known.getNorthM(), SAME_M);
    }

    private static boolean isNear(Double found, Double known, double within) {
        return found == null || known == null ? found == known : Math.abs(found - known) <= within;
    }
}
