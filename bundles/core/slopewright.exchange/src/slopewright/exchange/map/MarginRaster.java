package slopewright.exchange.map;

import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.SurveyField;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/**
 * The obstacle surface of one aid in cells of latitude and longitude on WGS 84, with the least margin of what was compared in each: points
 * of survey blocks and obstacles at their surveyed place, the accuracy on the safe side. A line or an area counts in every cell that it
 * covers as where it governs, so that no cell has more than is there. A cell in which nothing was
 * compared has no number, however near the next one lies: it is not clear, it is not known.
 */
public final class MarginRaster {

    /** How wide cells are where nothing else is asked for, metres. */
    public static final double USUAL_CELL_M = 10;

    /** How wide cells are at most, metres. */
    public static final double MOST_CELL_M = 1000;

    /** So many cells at most. */
    static final int MOST_CELLS = 1 << 24;
    private static final double DEGREE_M = 111_000;
    private static final double MOST_LATITUDE_DEG = 85;
    private static final int PIECES = 64;
    private static final double TURN_DEG = 360;

    private final SiteFrame frame;
    private final ProtectionSurface surface;
    private final double stepM;
    private final double middleDeg;
    private final double latitudeStepDeg;
    private final double longitudeStepDeg;
    private double northDeg = Double.NEGATIVE_INFINITY;
    private double southDeg = Double.POSITIVE_INFINITY;
    private double westDeg = Double.POSITIVE_INFINITY;
    private double eastDeg = Double.NEGATIVE_INFINITY;
    private int columns;
    private float[] marginsM;
    private String about;
    private List<String> notes;

    private MarginRaster(SiteFrame frame, ProtectionSurface surface, double cellM) {
        this.frame = frame;
        this.surface = surface;
        stepM = cellM / 4;
        SiteFrame.LatLon middle = frame.latLon(new FramePoint(0, 0, 0))
                .orElseThrow(() -> new SitingException(Message.of("map.refused.local-plane")));
        if (Math.abs(middle.latitudeDeg()) > MOST_LATITUDE_DEG) {
            throw new SitingException(Message.of("map.raster.pole"));
        }
        middleDeg = middle.longitudeDeg();
        latitudeStepDeg = cellM / DEGREE_M;
        longitudeStepDeg = latitudeStepDeg / Math.cos(Math.toRadians(middle.latitudeDeg()));
    }

    /**
     * Makes the cells.
     *
     * @param aid      the aid, as it stands
     * @param cellM    how wide a cell is, metres, more than zero; up the map within a hundredth, across it at the place of the aid
     * @param made     what they are made from
     * @param renderer the language of what the raster says of itself
     * @throws SitingException where there is no surface, it lies on a local plane or too near to a pole, or
     *                         the cells are too many
     */
    public static MarginRaster of(AidEvaluation aid, double cellM, MadeFrom made, MessageRenderer renderer) {
        SurfaceComparison compared = aid.obstacles().value().orElseThrow(() -> new SitingException(aid.obstacles().reason()
                .orElseGet(() -> Message.of("map.no-surface", ElementNames.of(aid.aid()), Message.of("map.no-surface.rule-set")))));
        MarginRaster raster = begin(aid.frame().orThrow(), compared.surface(), cellM);
        raster.fill(compared, aid.surroundings().orThrow());
        MapWords words = new MapWords(renderer);
        words.note(Message.of("map.raster.about", ElementNames.of(aid.aid()), Words.quantity(cellM, Notation.EXACT)));
        words.note(Message.of("map.design-aid"));
        if (compared.inside().isEmpty()) {
            words.note(Message.of("map.raster.nothing", ElementNames.of(aid.aid())));
        }
        compared.uncompared().forEach(left -> words.note(Message.of("map.not-compared", ElementNames.of(left.element()), left.reason())));
        raster.say(words, made, renderer);
        return raster;
    }

    /**
     * Begins cells in which nothing stands yet, for points that come one after the other; see {@link #take}.
     *
     * @param frame   frame of a runway end or helipad
     * @param surface the surface in it
     * @param cellM   how wide a cell is, metres, more than zero, as above
     * @throws SitingException where the frame lies on a local plane or too near to a pole, or the cells are too many
     */
    public static MarginRaster begin(SiteFrame frame, ProtectionSurface surface, double cellM) {
        MarginRaster raster = new MarginRaster(frame, surface, cellM);
        raster.reach(cellM);
        return raster;
    }

    /**
     * Ends cells that were begun: says what they are.
     *
     * @param what     what the raster holds, and against what
     * @param made     what it is made from
     * @param renderer the language of what the raster says of itself
     */
    public void end(Message what, MadeFrom made, MessageRenderer renderer) {
        MapWords words = new MapWords(renderer);
        words.note(what);
        words.note(Message.of("map.design-aid"));
        say(words, made, renderer);
    }

    private void say(MapWords words, MadeFrom made, MessageRenderer renderer) {
        notes = words.notes();
        about = made.facts(renderer).entrySet().stream().map(fact -> fact.getKey() + ": " + fact.getValue())
                .collect(Collectors.joining("\n")) + "\n" + String.join("\n", notes);
    }

    /** The outline in short pieces, for what is straight in the frame is not on the map; and a cell more on each side. */
    private void reach(double cellM) {
        List<FramePoint> corners = surface.corners();
        for (int i = 0; i < corners.size(); i++) {
            FramePoint from = corners.get(i);
            FramePoint to = corners.get((i + 1) % corners.size());
            for (int piece = 0; piece < PIECES; piece++) {
                double share = (double) piece / PIECES;
                SiteFrame.LatLon place = latLon(new FramePoint(from.alongM() + share * (to.alongM() - from.alongM()),
                        from.rightM() + share * (to.rightM() - from.rightM()), 0));
                northDeg = Math.max(northDeg, place.latitudeDeg());
                southDeg = Math.min(southDeg, place.latitudeDeg());
                westDeg = Math.min(westDeg, place.longitudeDeg());
                eastDeg = Math.max(eastDeg, place.longitudeDeg());
            }
        }
        northDeg += latitudeStepDeg;
        westDeg -= longitudeStepDeg;
        double down = Math.ceil((northDeg - southDeg) / latitudeStepDeg) + 1;
        double across = Math.ceil((eastDeg - westDeg) / longitudeStepDeg) + 1;
        if (down * across > MOST_CELLS) {
            throw new SitingException(Message.of("map.raster.too-fine", Words.quantity(cellM, Notation.EXACT), Words.count(MOST_CELLS)));
        }
        columns = (int) across;
        marginsM = new float[(int) down * columns];
        Arrays.fill(marginsM, Float.NaN);
    }

    /** Latitude, and longitude within half a turn of the middle, so that nothing falls apart where the count of degrees begins anew. */
    private SiteFrame.LatLon latLon(FramePoint point) {
        SiteFrame.LatLon place = frame.latLon(point).orElseThrow();
        return new SiteFrame.LatLon(place.latitudeDeg(), middleDeg + Math.IEEEremainder(place.longitudeDeg() - middleDeg, TURN_DEG));
    }

    private void fill(SurfaceComparison compared, Surroundings around) {
        Set<Identified> vague = around.withoutAccuracy().stream().map(Uncompared::element).collect(Collectors.toSet());
        Map<Identified, SurveyedShape> shapes = new IdentityHashMap<>();
        around.obstacles().placed().forEach(placed -> shapes.put(placed.obstacle(), placed.shape()));
        for (ObstacleComparison one : compared.inside()) {
            Optional<SurveyField> points = around.blocks().stream().filter(block -> block.block() == one.element())
                    .map(Surroundings.Block::points).findFirst();
            if (points.isEmpty()) {
                take(one.worst().point(), one.marginM());
                cover(shapes.get(one.element()), one.marginM());
            } else {
                // of what nobody knows how well it was surveyed only that is certain what stands through at its very place
                points.get().within(surface, (place, exact) -> {
                    if (exact.excessM() > 0 || !vague.contains(one.element())) {
                        take(place, -exact.excessM());
                    }
                });
            }
        }
    }

    /** A line or ring in steps of a quarter of a cell, and an area between its edges in steps of a half, so that no cell is missed. */
    private void cover(SurveyedShape shape, double marginM) {
        List<FramePoint> points = shape.points();
        boolean ring = shape.kind() == SurveyedShape.Kind.AREA;
        for (int i = ring ? 0 : 1; i < points.size(); i++) {
            FramePoint from = points.get((i + points.size() - 1) % points.size());
            FramePoint to = points.get(i);
            double pieces = Math.ceil(Math.hypot(to.alongM() - from.alongM(), to.rightM() - from.rightM()) / stepM);
            for (int piece = 0; piece <= pieces; piece++) {
                double share = pieces == 0 ? 0 : piece / pieces;
                double along = from.alongM() + share * (to.alongM() - from.alongM());
                cover(new FramePoint(along, from.rightM() + share * (to.rightM() - from.rightM()), 0), shape, marginM);
            }
        }
        if (ring) {
            double[] ends = range(points, FramePoint::alongM, shape.horizontalAccuracyM());
            for (double along = ends[0]; along < ends[1]; along += 2 * stepM) {
                coverRow(along, shape, marginM);
            }
        }
    }

    /** Returns from where to where a ring reaches, and no farther than the surface does. */
    private double[] range(List<FramePoint> ring, ToDoubleFunction<FramePoint> axis, double beyondM) {
        DoubleSummaryStatistics own = ring.stream().mapToDouble(axis).summaryStatistics();
        DoubleSummaryStatistics whole = surface.corners().stream().mapToDouble(axis).summaryStatistics();
        return new double[] {Math.max(own.getMin(), whole.getMin() - beyondM), Math.min(own.getMax(), whole.getMax() + beyondM)};
    }

    /** What lies between each two crossings of the ring with a line across the frame. */
    private void coverRow(double alongM, SurveyedShape shape, double marginM) {
        List<FramePoint> ring = shape.points();
        double[] crossings = IntStream.range(0, ring.size()).filter(i -> {
            FramePoint from = ring.get((i + ring.size() - 1) % ring.size());
            return from.alongM() <= alongM != ring.get(i).alongM() <= alongM;
        }).mapToDouble(i -> {
            FramePoint from = ring.get((i + ring.size() - 1) % ring.size());
            double share = (alongM - from.alongM()) / (ring.get(i).alongM() - from.alongM());
            return from.rightM() + share * (ring.get(i).rightM() - from.rightM());
        }).sorted().toArray();
        double[] ends = range(ring, FramePoint::rightM, shape.horizontalAccuracyM());
        for (int pair = 0; pair + 1 < crossings.length; pair += 2) {
            double last = Math.min(ends[1], crossings[pair + 1]);
            for (double right = Math.max(ends[0], crossings[pair]); right < last; right += 2 * stepM) {
                cover(new FramePoint(alongM, right, 0), shape, marginM);
            }
        }
    }

    private void cover(FramePoint place, SurveyedShape shape, double marginM) {
        if (surface.compare(place, shape.horizontalAccuracyM(), 0).isPresent()) {
            take(place, marginM);
        }
    }

    /**
     * Takes the margin of a point under or over the surface, metres, where it is the least of its cell. What lies outside by its accuracy
     * alone counts in the cell at the edge. A number is rounded to the lower side.
     */
    public void take(FramePoint point, double marginM) {
        SiteFrame.LatLon place = latLon(point);
        int row = within((northDeg - place.latitudeDeg()) / latitudeStepDeg, rows());
        int column = within((place.longitudeDeg() - westDeg) / longitudeStepDeg, columns);
        float margin = (float) marginM;
        float safe = margin > marginM ? Math.nextDown(margin) : margin;
        int cell = row * columns + column;
        if (!(marginsM[cell] <= safe)) {
            marginsM[cell] = safe;
        }
    }

    private static int within(double place, int count) {
        return (int) Math.max(0, Math.min(count - 1, Math.floor(place)));
    }

    int rows() {
        return marginsM.length / columns;
    }

    int columns() {
        return columns;
    }

    /** Returns the least margin in a cell, metres; not a number where nothing was compared. */
    float marginM(int row, int column) {
        return marginsM[row * columns + column];
    }

    double northDeg() {
        return northDeg;
    }

    double westDeg() {
        return westDeg;
    }

    double latitudeStepDeg() {
        return latitudeStepDeg;
    }

    double longitudeStepDeg() {
        return longitudeStepDeg;
    }

    /** Returns what a reader must know, one sentence each. */
    public List<String> notes() {
        return notes;
    }

    /** Returns the same and what the raster was made from, in lines. */
    String about() {
        return about;
    }
}
