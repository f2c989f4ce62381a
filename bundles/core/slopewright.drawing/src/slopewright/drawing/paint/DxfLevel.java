package slopewright.drawing.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.ScenePoint;
import slopewright.model.Obstacle;

/**
 * A point at its true height in a drawing exchange file: the origin of the frame, or the top of an obstacle within the surface where it
 * stands highest against it.
 *
 * @param layer      ink whose layer it lies on
 * @param elevationM elevation in the vertical datum of the aerodrome, metres, as it was surveyed
 * @param place      where it is in the plan
 */
public record DxfLevel(Ink layer, double elevationM, ScenePoint place) {

    /** Refuses missing parts. */
    public DxfLevel {
        Objects.requireNonNull(layer);
        Objects.requireNonNull(place);
    }

    /** Returns the origin and the tops of the obstacles within the surface; obstacles without a top elevation have none. */
    public static List<DxfLevel> of(DrawnAid drawn) {
        List<DxfLevel> levels = new ArrayList<>(List.of(new DxfLevel(Ink.AXIS, drawn.frame().originElevationM(), new ScenePoint(0, 0))));
        drawn.comparison().ifPresent(compared -> compared.inside().forEach(found -> found.obstacle().map(Obstacle::getTopElevationM)
                .ifPresent(top -> levels.add(new DxfLevel(Ink.OBSTACLE, top, new ScenePoint(found.worst().point().alongM(),
                        -found.worst().point().rightM()))))));
        return levels;
    }
}
