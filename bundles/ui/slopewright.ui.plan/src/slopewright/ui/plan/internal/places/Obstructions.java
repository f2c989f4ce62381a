package slopewright.ui.plan.internal.places;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import slopewright.drawing.scene.ScenePoint;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.evaluation.terrain.TerrainField;
import slopewright.geometry.FramePoint;
import slopewright.model.Identified;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.document.PickedPoint;

/** How everything that stands in a plan stands against the obstacle surfaces, as one evaluation of the project says. */
public final class Obstructions {

    /** So many penetrating points of a block are drawn for each surface. */
    private static final int MOST_POINTS = 400;

    private final PlanPlaces places;
    private final ProjectEvaluation evaluation;
    private final Map<Identified, Obstruction> worst = new LinkedHashMap<>();
    private final Map<Identified, Uncompared> uncompared = new LinkedHashMap<>();
    private final List<ScenePoint> pointsAbove = new ArrayList<>();
    private Optional<PlanTerrain> terrain;

    /**
     * Reads an evaluation.
     *
     * @param places     where things lie
     * @param evaluation the evaluation
     */
    public Obstructions(PlanPlaces places, ProjectEvaluation evaluation) {
        this.places = places;
        this.evaluation = evaluation;
        for (AidEvaluation aid : evaluation.aids()) {
            aid.obstacles().value().ifPresent(comparison -> take(aid, comparison));
        }
    }

    private void take(AidEvaluation aid, SurfaceComparison comparison) {
        comparison.inside().forEach(inside -> worst.merge(inside.element(), new Obstruction(inside, aid), Obstruction::worse));
        comparison.uncompared().forEach(open -> uncompared.putIfAbsent(open.element(), open));
        Optional<PlanAxis> axis = places.axis(aid.host());
        boolean isAbove = comparison.inside().stream().anyMatch(inside -> inside.surveyBlock().isPresent() && inside.isPenetrating());
        if (axis.isPresent() && isAbove) {
            for (FramePoint point : aid.surroundings().orThrow().pointsAbove(comparison.surface(), MOST_POINTS)) {
                pointsAbove.add(PlanPlaces.point(axis.get().toPlane(point)));
            }
        }
    }

    /** Returns the evaluation that was read. */
    public ProjectEvaluation evaluation() {
        return evaluation;
    }

    /** Returns how an obstacle or a block stands against the surface that it is worst for, empty where it lies outside all of them. */
    public Optional<Obstruction> of(Identified element) {
        return Optional.ofNullable(worst.get(element));
    }

    /** Returns why an obstacle or a block could not be compared, empty where it could. */
    public Optional<Uncompared> uncompared(Identified element) {
        return Optional.ofNullable(uncompared.get(element));
    }

    /** Returns what could not be compared with some surface, in the order of the project. */
    public List<Uncompared> uncompared() {
        return List.copyOf(uncompared.values());
    }

    /** Returns the blocks of survey points as they stand worst. */
    public List<Obstruction> blocks() {
        return worst.values().stream().filter(obstruction -> obstruction.comparison().surveyBlock().isPresent()).toList();
    }

    /** Returns where a governing point lies, empty where the frame of its aid does not lie on the plane. */
    public Optional<ScenePoint> place(Obstruction obstruction) {
        return places.axis(obstruction.aid().host()).map(axis -> PlanPlaces.point(axis.toPlane(obstruction.comparison().worst().point())));
    }

    /** Returns survey points that stand above an obstacle surface: of each block and surface so many that they are seen. */
    public List<ScenePoint> pointsAbove() {
        return pointsAbove;
    }

    /** Returns the models of the terrain as they lie in the plan; empty where there are none. */
    public Optional<PlanTerrain> terrain() {
        if (terrain == null) {
            terrain = PlanTerrain.of(places, evaluation);
        }
        return terrain;
    }

    /** The blocks of survey points that are drawn as such, and the axis in which they stand; empty where there are none. */
    private Optional<Map.Entry<PlanAxis, List<Surroundings.Block>>> drawn() {
        for (AidEvaluation aid : evaluation.aids()) {
            Optional<PlanAxis> axis = places.axis(aid.host());
            List<Surroundings.Block> blocks = aid.surroundings().value().map(Surroundings::blocks).orElse(List.of()).stream()
                    .filter(block -> !TerrainField.isTerrain(block.block())).toList();
            if (axis.isPresent() && !blocks.isEmpty()) {
                return Optional.of(Map.entry(axis.get(), blocks));
            }
        }
        return Optional.empty();
    }

    /** Returns the points of all blocks that could be read but the terrain, as they lie in the plan, x and y alternating, metres. */
    public float[] surveyPoints() {
        return drawn().map(found -> surveyPoints(found.getKey(), found.getValue())).orElse(new float[0]);
    }

    /** Returns which point of which block is the one with a number among {@link #surveyPoints()}, from 0. */
    public Optional<PickedPoint> surveyPoint(int number) {
        int index = number;
        for (Surroundings.Block block : drawn().map(Map.Entry::getValue).orElse(List.of())) {
            if (index < block.points().count()) {
                return Optional.of(new PickedPoint(block.block().getId(), index));
            }
            index -= block.points().count();
        }
        return Optional.empty();
    }

    /** Returns where a point of a block lies; empty where it is not drawn. */
    public Optional<ScenePoint> place(PickedPoint picked) {
        return drawn().flatMap(found -> found.getValue().stream()
                .filter(block -> picked.blockId().equals(block.block().getId()) && picked.index() < block.points().count()).findFirst()
                .map(block -> PlanPlaces.point(found.getKey().toPlane(block.points().point(picked.index())))));
    }

    private static float[] surveyPoints(PlanAxis axis, List<Surroundings.Block> blocks) {
        int count = blocks.stream().mapToInt(block -> block.points().count()).sum();
        float[] found = new float[2 * count];
        int next = 0;
        for (Surroundings.Block block : blocks) {
            double[] along = block.points().places().alongM();
            double[] right = block.points().places().rightM();
            for (int i = 0; i < along.length; i++) {
                ScenePoint point = PlanPlaces.point(axis, along[i], right[i]);
                found[next++] = (float) point.x();
                found[next++] = (float) point.y();
            }
        }
        return found;
    }
}
