package slopewright.exchange.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.exchange.ExchangeException;
import slopewright.messages.Message;
import slopewright.model.Place;
import slopewright.siting.site.SiteFrame;
import slopewright.siting.site.SurveyPoints;

/** Collects the points of a file in flat arrays. The accuracies of the block are the worst that any point has. */
final class PointCollector implements SurveyFile.Sink {

    private static final int FIRST = 1024;

    private final ShapeElements elements;
    private final List<String> ids = new ArrayList<>();
    private List<String> packed = List.of();
    private double[] north = new double[FIRST];
    private double[] east = new double[FIRST];
    private double[] elevation = new double[FIRST];
    private int count;
    private boolean named;
    private Double horizontalM;
    private Double verticalM;
    private boolean unknownHorizontal;
    private boolean unknownVertical;
    private boolean terrain;

    PointCollector(ShapeElements elements) {
        this.elements = elements;
    }

    @Override
    public void accept(SurveyShape shape) throws ExchangeException {
        if (shape.kind() != SurveyShape.Kind.POINT) {
            throw elements.fault(shape, Message.of("survey-file.no-point"));
        }
        if (count == SurveyPoints.MOST_POINTS) {
            throw elements.fault(shape, Message.said("survey-file.point-too-many", SurveyPoints.MOST_POINTS));
        }
        if (count == 0 && shape.text(SurveyShape.Fact.REACH).isPresent()) {
            elements.refuseTerrainThatIsNotDescribed();
            terrain = elements.number(shape, SurveyShape.Fact.REACH).orElse(0) > 0;
        }
        double top = elements.tops(shape).topM();
        SurveyVertex vertex = shape.vertices().get(0);
        Place place = elements.unchecked(shape, vertex);
        Optional<SiteFrame.LatLon> where = elements.latLon(shape, place);
        if (count == north.length) {
            north = Arrays.copyOf(north, 2 * count);
            east = Arrays.copyOf(east, 2 * count);
            elevation = Arrays.copyOf(elevation, 2 * count);
        }
        north[count] = where.map(SiteFrame.LatLon::latitudeDeg).orElse(vertex.north());
        east[count] = where.map(SiteFrame.LatLon::longitudeDeg).orElse(vertex.east());
        elevation[count] = top;
        count++;
        String id = shape.text(SurveyShape.Fact.ID).or(() -> shape.text(SurveyShape.Fact.NAME)).orElse("");
        named |= !id.isEmpty();
        ids.add(id);
        Double across = elements.accuracyM(shape, SurveyShape.Fact.HORIZONTAL_ACCURACY, elements.origin().horizontalAccuracyM());
        Double up = elements.accuracyM(shape, SurveyShape.Fact.VERTICAL_ACCURACY, elements.origin().verticalAccuracyM());
        unknownHorizontal |= across == null;
        unknownVertical |= up == null;
        horizontalM = worse(horizontalM, across);
        verticalM = worse(verticalM, up);
    }

    @Override
    public boolean wantsColumns() {
        SurveyHeights.Meaning meaning = elements.origin().heights().meaning();
        return count == 0 && !elements.isPlane() && (meaning == SurveyHeights.Meaning.AS_STATED || meaning == SurveyHeights.Meaning.TOP);
    }

    @Override
    public boolean takes(PointColumns columns) {
        if (columns.count() > SurveyPoints.MOST_POINTS || !isFit(columns)) {
            return false;
        }
        count = columns.count();
        north = columns.north();
        east = columns.east();
        elevation = columns.topM();
        horizontalM = worst(columns.horizontalM(), elements.origin().horizontalAccuracyM());
        verticalM = worst(columns.verticalM(), elements.origin().verticalAccuracyM());
        unknownHorizontal = horizontalM == null;
        unknownVertical = verticalM == null;
        packed = columns.ids().<List<String>>map(names -> names).orElse(List.of());
        named = packed.stream().anyMatch(id -> !id.isEmpty());
        return true;
    }

    private boolean isFit(PointColumns columns) {
        double[] box = {90, -90, 180, -180};
        for (int i = 0; i < columns.count(); i++) {
            box[0] = Math.min(box[0], columns.north()[i]);
            box[1] = Math.max(box[1], columns.north()[i]);
            box[2] = Math.min(box[2], columns.east()[i]);
            box[3] = Math.max(box[3], columns.east()[i]);
            if (!elements.isPlainTop(columns.topM()[i])) {
                return false;
            }
        }
        return elements.isNear(box[0], box[1], box[2], box[3]);
    }

    /** Returns the worst accuracy, null where that of one point is not known. */
    private Double worst(Optional<double[]> column, OptionalDouble whole) {
        Double worst = null;
        for (int i = 0; i < (column.isPresent() ? count : 1); i++) {
            double own = column.isPresent() ? column.get()[i] : Double.NaN;
            double found = Double.isNaN(own) ? whole.orElse(Double.NaN) : own;
            if (Double.isNaN(found)) {
                return null;
            }
            worst = worst == null || found > worst ? Double.valueOf(found) : worst;
        }
        return worst;
    }

    private static Double worse(Double before, Double found) {
        return before == null ? found : found == null ? before : Double.valueOf(Math.max(before, found));
    }

    int count() {
        return count;
    }

    /** Returns whether the points are the cells of a model of the terrain. */
    boolean isTerrain() {
        return terrain;
    }

    /** Returns the worst accuracy, null where that of one point is not known. */
    Double horizontalAccuracyM() {
        return unknownHorizontal ? null : horizontalM;
    }

    /** Returns the worst accuracy, null where that of one point is not known. */
    Double verticalAccuracyM() {
        return unknownVertical ? null : verticalM;
    }

    SurveyPoints points() {
        return new SurveyPoints(elements.isPlane(), Arrays.copyOf(north, count), Arrays.copyOf(east, count),
                Arrays.copyOf(elevation, count), !named ? List.of() : packed.isEmpty() ? ids : packed);
    }
}
