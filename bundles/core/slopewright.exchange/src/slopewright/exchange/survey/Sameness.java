package slopewright.exchange.survey;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;

/** Tells what a project has already from what a survey brings anew. */
final class Sameness {

    private static final double SAME_DEG = 1e-8;
    private static final double SAME_M = 1e-3;

    private Sameness() {
    }

    /** Returns whether a project has the points of a block already, as the same kind of thing and surveyed as accurately. */
    static boolean isRepeated(Project project, SurveyBlock block) {
        return project.getSurveyBlocks().stream().anyMatch(known -> block.getSha256().equals(known.getSha256())
                && Objects.equals(block.getKind(), known.getKind())
                && isNear(block.getHorizontalAccuracyM(), known.getHorizontalAccuracyM(), SAME_M)
                && isNear(block.getVerticalAccuracyM(), known.getVerticalAccuracyM(), SAME_M));
    }

    /** A ring may start anywhere and run either way, and a line may run either way. */
    static boolean isSameThing(Obstacle found, Obstacle known) {
        if (!Objects.equals(found.getName(), known.getName()) || found.getKind() != known.getKind()
                || found.getPlaces().size() != known.getPlaces().size()) {
            return false;
        }
        if (found.getKind() == ObstacleKind.LINE) {
            List<Place> back = new ArrayList<>(known.getPlaces());
            Collections.reverse(back);
            return isSameLine(found.getPlaces(), known.getPlaces()) || isSameLine(found.getPlaces(), back);
        }
        return found.getPlaces().stream().allMatch(place -> known.getPlaces().stream().anyMatch(there -> isSamePlace(place, there)));
    }

    private static boolean isSameLine(List<Place> found, List<Place> known) {
        return IntStream.range(0, found.size()).allMatch(i -> isSamePlace(found.get(i), known.get(i)));
    }

    /** What has another height, or was surveyed more or less accurately, is another statement, and is kept. */
    static boolean isSame(Obstacle found, Obstacle known) {
        return isSameThing(found, known) && isNear(found.getTopElevationM(), known.getTopElevationM(), SAME_M)
                && isNear(found.getHorizontalAccuracyM(), known.getHorizontalAccuracyM(), SAME_M)
                && isNear(found.getVerticalAccuracyM(), known.getVerticalAccuracyM(), SAME_M)
                && found.getPlaces().stream().allMatch(place -> known.getPlaces().stream().anyMatch(there -> isSamePlace(place, there)
                        && isNear(topM(found, place), topM(known, there), SAME_M)));
    }

    /** A place without a height of its own stands as high as the whole. */
    private static Double topM(Obstacle obstacle, Place place) {
        return place.getElevationM() == null ? obstacle.getTopElevationM() : place.getElevationM();
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
