package slopewright.ui.plan.internal.places;

import java.util.List;
import java.util.function.Consumer;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

import slopewright.drawing.scene.ScenePoint;
import slopewright.model.Obstacle;
import slopewright.ui.diagram.WorldBox;

/** Finds the obstacles in a box of the plan without going through all of them. All are added before the first question. */
public final class ObstacleIndex {

    /**
     * An obstacle where it lies on the plan.
     *
     * @param obstacle the obstacle
     * @param box      the smallest box around its places, metres
     */
    public record Entry(Obstacle obstacle, WorldBox box) {

        /** Returns the middle of it. */
        public ScenePoint middle() {
            return new ScenePoint((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
        }
    }

    private final HPRtree tree = new HPRtree();

    /**
     * Adds an obstacle.
     *
     * @param obstacle the obstacle
     * @param places   where it lies; without any it is not kept
     */
    public void add(Obstacle obstacle, List<ScenePoint> places) {
        WorldBox.around(places).ifPresent(box -> tree.insert(envelope(box), new Entry(obstacle, box)));
    }

    /** Returns how many there are. */
    public int size() {
        return tree.size();
    }

    /** Passes on each obstacle whose box meets a box, once. */
    public void query(WorldBox box, Consumer<Entry> found) {
        tree.query(envelope(box), item -> found.accept((Entry) item));
    }

    private static Envelope envelope(WorldBox box) {
        return new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY());
    }
}
