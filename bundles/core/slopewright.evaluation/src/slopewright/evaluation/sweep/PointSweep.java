package slopewright.evaluation.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

import slopewright.evaluation.obstacles.SurveyField;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.siting.site.PlacedPoints;
import slopewright.siting.site.PointIndex;
import slopewright.siting.site.SiteFrame;
import slopewright.siting.site.SurveyPoints;

/**
 * Points that many surfaces are held against, each comparison with the figures of a survey block of the same points in a project of its
 * own, to the last bit. What one comparison costs grows with the points around it and not with all of them. Safe for many threads at once.
 */
public final class PointSweep {

    private static final int ALONG_AN_EDGE = 16;

    private final PointIndex index;
    private final double horizontalM;
    private final double verticalM;

    /**
     * Makes ready.
     *
     * @param points      the points, latitudes and longitudes
     * @param horizontalM radius in which the true place of each may lie, metres, zero or more
     * @param verticalM   by how much each may stand higher, metres, zero or more
     */
    public PointSweep(SurveyPoints points, double horizontalM, double verticalM) {
        index = new PointIndex(points);
        this.horizontalM = horizontalM;
        this.verticalM = verticalM;
    }

    /**
     * Points against one surface.
     *
     * @param covered   whether the surface lies within the box of all points; beyond it nobody knows what stands there
     * @param inside    how many lie under or over it
     * @param above     how many stand above it, their accuracy on the safe side
     * @param governing the one that stands highest against it, counted from zero; -1 where none lies inside
     * @param marginM   by how much that one stays below, metres, its accuracy on the safe side; empty where none lies inside
     */
    public record Result(boolean covered, int inside, int above, int governing, OptionalDouble marginM) {
    }

    /** Returns all points. */
    public SurveyPoints points() {
        return index.points();
    }

    /**
     * Compares the points with a surface.
     *
     * @param frame   frame of a runway end, not on a local plane
     * @param surface the surface in it
     */
    public Result compare(SiteFrame frame, ProtectionSurface surface) {
        PointIndex.Near near = index.near(frame, edge(surface), horizontalM);
        SurveyField field = new SurveyField(chosen(near.indices()), PlacedPoints.of(near.places()), horizontalM, verticalM);
        SurveyField.Result found = field.compare(surface);
        return new Result(near.covered(), found.inside(), found.above(), found.worst() < 0 ? -1 : near.indices()[found.worst()],
                found.governing().map(worst -> OptionalDouble.of(-worst.excessM())).orElseGet(OptionalDouble::empty));
    }

    private SurveyPoints chosen(int[] indices) {
        SurveyPoints all = index.points();
        return new SurveyPoints(false, IntStream.of(indices).mapToDouble(i -> all.north()[i]).toArray(),
                IntStream.of(indices).mapToDouble(i -> all.east()[i]).toArray(),
                IntStream.of(indices).mapToDouble(i -> all.elevationM()[i]).toArray(), List.of());
    }

    private static List<FramePoint> edge(ProtectionSurface surface) {
        List<FramePoint> corners = surface.corners();
        List<FramePoint> edge = new ArrayList<>();
        for (int side = 0; side < corners.size(); side++) {
            FramePoint from = corners.get(side);
            FramePoint to = corners.get((side + 1) % corners.size());
            for (int i = 0; i < ALONG_AN_EDGE; i++) {
                double share = i / (double) ALONG_AN_EDGE;
                edge.add(new FramePoint(from.alongM() + share * (to.alongM() - from.alongM()),
                        from.rightM() + share * (to.rightM() - from.rightM()), 0));
            }
        }
        return edge;
    }
}
