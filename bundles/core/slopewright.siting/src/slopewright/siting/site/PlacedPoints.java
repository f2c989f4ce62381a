package slopewright.siting.site;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.atomic.AtomicReferenceArray;

import slopewright.geometry.FramePoint;
import slopewright.geometry.PointCells;
import slopewright.geometry.PointTiles;

/**
 * Survey points in a frame, brought into it tile by tile as they are asked for: of most tiles a circle around them says enough. What stands
 * where does not depend on who asked first: it is where {@link SurveyPoints#toFrame} puts it, to the last bit. Safe for many threads at
 * once.
 */
public final class PlacedPoints {

    /** What is not farther away is drawn out by less than {@link PointOrder#MOST_STRETCH} where the frame lays the Earth flat. */
    private static final double FARTHEST_M = 500_000;

    private final PointTiles tiles;
    private final AtomicReferenceArray<SurveyPoints.InFrame> brought;
    private final Source source;
    private final AtomicReference<SurveyPoints.InFrame> all;

    /** Where a point stands. */
    private interface Source {

        /** Puts the places of some points, in the order of their indices. */
        void put(int[] indices, SurveyPoints.InFrame into);

        /** Returns the places of all points. */
        SurveyPoints.InFrame all();
    }

    private PlacedPoints(PointTiles tiles, Source source) {
        this.tiles = tiles;
        this.source = source;
        brought = new AtomicReferenceArray<>(tiles.count());
        all = new AtomicReference<>();
    }

    /** Takes points that are in their frame already; the arrays are shared. */
    public static PlacedPoints of(SurveyPoints.InFrame places) {
        return new PlacedPoints(new PointTiles(places.alongM(), places.rightM(), places.heightM()), new Source() {
            @Override
            public void put(int[] indices, SurveyPoints.InFrame into) {
                gather(places.alongM(), indices, into.alongM());
                gather(places.rightM(), indices, into.rightM());
                gather(places.heightM(), indices, into.heightM());
            }

            @Override
            public SurveyPoints.InFrame all() {
                return places;
            }
        });
    }

    /**
     * Takes points into a frame.
     *
     * @param order the points
     * @param frame the frame
     * @throws slopewright.siting.SitingException where the points are on a plane and the aerodrome is not, or the other way round
     */
    public static PlacedPoints of(PointOrder order, SiteFrame frame) {
        SurveyPoints points = order.points();
        Optional<FrameMap> map = points.plane() || frame.isPlane() ? Optional.empty() : order.map(frame);
        Optional<PointTiles> circles = map.flatMap(known -> circles(order, frame, known));
        if (circles.isEmpty()) {
            return of(points.toFrame(frame));
        }
        FrameMap known = map.get();
        return new PlacedPoints(circles.get(), new Source() {
            @Override
            public void put(int[] indices, SurveyPoints.InFrame into) {
                gather(points.east(), indices, into.alongM());
                gather(points.north(), indices, into.rightM());
                gather(points.elevationM(), indices, into.heightM());
                known.map(into.alongM(), into.rightM());
                lower(into.heightM(), frame.originElevationM());
            }

            @Override
            public SurveyPoints.InFrame all() {
                return points.toFrame(frame);
            }
        });
    }

    /**
     * Circles around the tiles, whose radius no frame changes. Empty where a tile is so far away that the frame draws it out.
     */
    private static Optional<PointTiles> circles(PointOrder order, SiteFrame frame, FrameMap map) {
        PointCells cells = order.cells();
        double[] along = new double[cells.count()];
        double[] right = new double[cells.count()];
        double[] top = new double[cells.count()];
        for (int tile = 0; tile < top.length; tile++) {
            along[tile] = cells.y(tile).middle();
            right[tile] = cells.x(tile).middle();
            top[tile] = cells.top(tile);
        }
        map.map(along, right);
        lower(top, frame.originElevationM());
        double[] radius = order.radiiM();
        for (int tile = 0; tile < top.length; tile++) {
            double farthest = FARTHEST_M - radius[tile];
            if (!(farthest > 0 && along[tile] * along[tile] + right[tile] * right[tile] < farthest * farthest)) {
                return Optional.empty();
            }
        }
        return Optional.of(PointTiles.within(cells, along, right, radius, top));
    }

    private static void lower(double[] heights, double byM) {
        for (int i = 0; i < heights.length; i++) {
            heights[i] = heights[i] - byM;
        }
    }

    /** Returns the tiles that the points are put together in. */
    public PointTiles tiles() {
        return tiles;
    }

    /** Returns the places of the points of one tile, in the order in which they stand in it; the arrays are shared. */
    public SurveyPoints.InFrame around(int tile) {
        SurveyPoints.InFrame known = brought.get(tile);
        if (known == null) {
            known = places(tiles.indices(tile));
            brought.set(tile, known);
        }
        return known;
    }

    /** Returns the places of all points, in their order; the arrays are shared and must not be changed. */
    public SurveyPoints.InFrame all() {
        SurveyPoints.InFrame known = all.get();
        if (known == null) {
            known = source.all();
            all.set(known);
        }
        return known;
    }

    /** Returns the place of a point. */
    public FramePoint point(int index) {
        SurveyPoints.InFrame one = places(new int[] {index});
        return new FramePoint(one.alongM()[0], one.rightM()[0], one.heightM()[0]);
    }

    private SurveyPoints.InFrame places(int[] indices) {
        int count = indices.length;
        SurveyPoints.InFrame places = new SurveyPoints.InFrame(new double[count], new double[count], new double[count]);
        source.put(indices, places);
        return places;
    }

    /** One column at a time: what is fetched from far apart is waited for together then, and not point by point. */
    private static void gather(double[] column, int[] indices, double[] into) {
        for (int at = 0; at < indices.length; at++) {
            into[at] = column[indices[at]];
        }
    }
}
