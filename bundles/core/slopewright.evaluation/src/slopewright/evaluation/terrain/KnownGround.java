package slopewright.evaluation.terrain;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.model.util.Projects;

/**
 * The ground at a place with the model that knows it. Of several models that know a place the most accurate one there counts, of equal ones
 * the first of the project.
 *
 * @param model     the model
 * @param heightM   height of the ground in the frame of the approach, metres
 * @param accuracyM by how much it may be higher or lower, metres
 */
public record KnownGround(TerrainField model, double heightM, double accuracyM) {

    /**
     * Returns the ground at a place; empty where no model knows it.
     *
     * @param models the models, in the order of the project
     * @param alongM the place along the approach, metres
     * @param rightM the place to the right of it, metres
     */
    public static Optional<KnownGround> at(List<TerrainField> models, double alongM, double rightM) {
        return models.stream().flatMap(model -> model.at(alongM, rightM).map(ground -> new KnownGround(model, ground.heightM(),
                ground.accuracyM())).stream()).min(Comparator.comparingDouble(KnownGround::accuracyM));
    }

    /** Returns where the model comes from, as it was entered. */
    public String source() {
        return String.valueOf(model.block().getSource());
    }

    /** Returns the day of the model, as it was entered. */
    public String date() {
        return String.valueOf(model.block().getDate());
    }

    /** Returns what the model is called. */
    String name() {
        return Projects.label(model.block());
    }

    /** Returns the model by name and source. */
    String label() {
        return name() + ": " + source();
    }
}
