package slopewright.ui.plan.internal.places;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.drawing.scene.ScenePoint;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.terrain.TerrainField;
import slopewright.geometry.FramePoint;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.PlanPoint;

/**
 * The models of the terrain of a project as they lie in a plan.
 *
 * @param axis             the axis in whose frame they were brought
 * @param originElevationM elevation of its origin, metres
 * @param fields           the models
 */
public record PlanTerrain(PlanAxis axis, double originElevationM, List<TerrainField> fields) {

    /** Returns those of an evaluation; empty where it has none. */
    static Optional<PlanTerrain> of(PlanPlaces places, ProjectEvaluation evaluation) {
        for (AidEvaluation aid : evaluation.aids()) {
            Optional<PlanAxis> axis = places.axis(aid.host());
            List<TerrainField> fields = aid.surroundings().value().map(TerrainField::of).orElse(List.of());
            if (axis.isPresent() && !fields.isEmpty() && aid.frame().value().isPresent()) {
                return Optional.of(new PlanTerrain(axis.get(), aid.frame().orThrow().originElevationM(), fields));
            }
        }
        return Optional.empty();
    }

    /** Returns the elevation of the ground at a place, metres, the highest where several models know it; empty where none does. */
    public OptionalDouble elevationM(ScenePoint place) {
        FramePoint at = axis.toFrame(new PlanPoint(place.x(), place.y()), 0);
        return fields.stream().flatMap(field -> field.at(at.alongM(), at.rightM()).stream()).mapToDouble(TerrainField.Ground::heightM).max()
                .stream().map(height -> originElevationM + height).findFirst();
    }
}
