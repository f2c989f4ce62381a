package slopewright.exchange.survey;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.locationtech.proj4j.Proj4jException;

import slopewright.exchange.ExchangeException;
import slopewright.geometry.Decimals;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.GroundLevel;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.siting.SitingException;
import slopewright.siting.site.AerodromePlaces;
import slopewright.siting.site.GridTurn;
import slopewright.siting.site.SiteFrame;

/** Makes model elements of the shapes of one survey file. */
final class ShapeElements {

    /** A year is written to a tenth. */
    private static final double SAME_EPOCH_YEARS = 0.1;
    /** What a file says that this program wrote for an aerodrome that names none. */
    private static final String NOT_KNOWN = "not known";
    private static final double LOWEST_M = -500;
    private static final double HIGHEST_M = 9000;
    private static final double FARTHEST_M = 100_000;
    private static final double KILOMETRE_M = 1000;
    private static final double METRES_PER_DEGREE = 111_200;

    private final Path file;
    private final SurveyOrigin origin;
    private final Aerodrome aerodrome;
    private final AerodromePlaces places;
    private final Optional<AerodromePlaces> grid;
    private Optional<GridTurn> turn = Optional.empty();
    private final Set<String> taken = new HashSet<>();
    private final Map<String, Long> lines = new HashMap<>();

    ShapeElements(Project project, Path file, SurveyOrigin origin) throws ExchangeException {
        this.file = file;
        this.origin = origin;
        aerodrome = project.getAerodrome();
        if (aerodrome == null) {
            throw new ExchangeException(file.toString(), 0, Message.of("survey-file.no-aerodrome"));
        }
        refuseOtherDatum();
        try {
            places = AerodromePlaces.of(aerodrome);
            grid = origin.grid().map(ShapeElements::grid);
        } catch (SitingException e) {
            throw new ExchangeException(file.toString(), 0, Message.said("survey-file.no-place", e));
        }
        Ids.elements(project).forEach(element -> taken.add(element.getId()));
    }

    private static AerodromePlaces grid(String reference) {
        Aerodrome elsewhere = SlopewrightFactory.eINSTANCE.createAerodrome();
        elsewhere.setCoordinateReference(reference);
        return AerodromePlaces.of(elsewhere);
    }

    Aerodrome aerodrome() {
        return aerodrome;
    }

    boolean isPlane() {
        return places.isPlane();
    }

    SurveyOrigin origin() {
        return origin;
    }

    ExchangeException fault(SurveyShape shape, Message reason) {
        Optional<String> name = shape.text(SurveyShape.Fact.ID).or(() -> shape.text(SurveyShape.Fact.NAME));
        return new ExchangeException(file.toString(), shape.line(),
                name.map(text -> Message.said("survey-file.of-shape", text, reason)).orElse(reason));
    }

    OptionalDouble number(SurveyShape shape, SurveyShape.Fact fact) throws ExchangeException {
        Optional<String> text = shape.text(fact);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Decimals.parse(text.get()));
        } catch (IllegalArgumentException e) {
            throw fault(shape, Message.said("survey-file.of-column", fact.label(), e));
        }
    }

    private double checked(SurveyShape shape, double elevationM) throws ExchangeException {
        if (!(elevationM >= LOWEST_M && elevationM <= HIGHEST_M)) {
            throw fault(shape, Message.said("survey-file.no-such-elevation", elevationM));
        }
        return elevationM;
    }

    private StatedHeights stated(SurveyShape shape) throws ExchangeException {
        Optional<String> named = shape.text(SurveyShape.Fact.VERTICAL_DATUM).filter(this::isOtherDatum);
        if (named.isPresent()) {
            throw fault(shape, otherDatum(named.get()));
        }
        return new StatedHeights(number(shape, SurveyShape.Fact.TOP_ELEVATION), number(shape, SurveyShape.Fact.ELEVATION),
                number(shape, SurveyShape.Fact.HEIGHT), number(shape, SurveyShape.Fact.GROUND_ELEVATION), shape.elevationsM());
    }

    /** Returns how high a shape stands; what its file says is reconciled, or refused. */
    TopHeights tops(SurveyShape shape) throws ExchangeException {
        StatedHeights stated = stated(shape);
        try {
            TopHeights found = TopHeights.of(stated, origin.heights());
            checked(shape, found.topM());
            return found;
        } catch (StatedHeights.Fault e) {
            throw fault(shape, e.reason());
        }
    }

    void refuseTerrain(SurveyShape shape) throws ExchangeException {
        if (shape.text(SurveyShape.Fact.REACH).isPresent()) {
            throw new ExchangeException(file.toString(), 0, Message.said("survey-file.terrain", "--as obstacle-block"));
        }
    }

    /** Of a model of the terrain nothing is assumed: without its accuracy, its day and its datum no place of it can be judged. */
    void refuseTerrainThatIsNotDescribed() throws ExchangeException {
        List<String> missing = new ArrayList<>();
        if (origin.horizontalAccuracyM().isEmpty()) {
            missing.add("--horizontal-accuracy-m");
        }
        if (origin.verticalAccuracyM().isEmpty()) {
            missing.add("--vertical-accuracy-m");
        }
        if (origin.date().isEmpty()) {
            missing.add("--date");
        }
        if (origin.verticalDatum().isEmpty()) {
            missing.add("--vertical-datum");
        }
        if (!missing.isEmpty()) {
            throw new ExchangeException(file.toString(), 0, Message.said("survey-file.terrain-missing", missing));
        }
    }

    /** Elevations in another vertical datum are elevations of nothing here, whatever stands on them. */
    private void refuseOtherDatum() throws ExchangeException {
        String own = aerodrome.getVerticalDatum();
        if (origin.verticalDatum().isPresent() && (own == null || !own.strip().equals(origin.verticalDatum().get().strip()))) {
            throw new ExchangeException(file.toString(), 0, Message.said("survey-file.datum", origin.verticalDatum().get(), datum(own)));
        }
    }

    /** A file calls its datum as it likes: where that is not the name that the aerodrome has for it, somebody has to say that it is. */
    void refuseOtherDatum(String named) throws ExchangeException {
        if (isOtherDatum(named)) {
            throw new ExchangeException(file.toString(), 0, otherDatum(named));
        }
    }

    /** Says where coordinates of a file hold for another epoch than those of the aerodrome: the ground moves centimetres a year. */
    Optional<Message> otherEpoch(double year) {
        Double own = aerodrome.getCoordinateEpoch();
        return own != null && Math.abs(own - year) < SAME_EPOCH_YEARS ? Optional.empty()
                : Optional.of(own == null ? Message.said("survey-file.epoch-none", year)
                        : Message.said("survey-file.epoch-other", year, own));
    }

    private boolean isOtherDatum(String named) {
        String own = aerodrome.getVerticalDatum();
        return !named.isBlank() && !named.equals(NOT_KNOWN) && origin.verticalDatum().isEmpty()
                && (own == null || !letters(own).equals(letters(named)));
    }

    private Message otherDatum(String named) {
        return Message.said("survey-file.other-datum", named, datum(aerodrome.getVerticalDatum()));
    }

    /** Returns the vertical datum in which elevations are taken of which nobody says in which they are. */
    Argument ownDatum() {
        return datum(aerodrome.getVerticalDatum());
    }

    private static Argument datum(String own) {
        return own == null ? Message.of("survey-file.datum-none") : Words.name("'" + own + "'");
    }

    private static String letters(String name) {
        return name.replaceAll("[^\\p{L}\\p{N}]", "").toLowerCase(Locale.ROOT);
    }

    /** What a file says of its own grid is not to be overruled by what is said of it. */
    void refuseOtherReference(String reference) throws ExchangeException {
        String taken = origin.grid().orElse(aerodrome.getCoordinateReference() == null ? "WGS84" : aerodrome.getCoordinateReference());
        if (!taken.strip().equalsIgnoreCase(reference)) {
            throw new ExchangeException(file.toString(), 0, Message.said("survey-file.other-grid", reference, taken.strip()));
        }
    }

    /** Metres of a grid that neither the file names nor whoever imports it are metres of any grid. */
    void refuseNoReference() throws ExchangeException {
        if (origin.grid().isEmpty() && !places.isPlane()) {
            throw new ExchangeException(file.toString(), 0, Message.of("survey-file.no-grid"));
        }
    }

    Obstacle obstacle(SurveyShape shape) throws ExchangeException {
        refuseTerrain(shape);
        Obstacle obstacle = SlopewrightFactory.eINSTANCE.createObstacle();
        obstacle.setKind(ObstacleKind.valueOf(shape.kind().name()));
        id(shape).ifPresent(obstacle::setId);
        obstacle.setName(shape.text(SurveyShape.Fact.NAME).or(() -> shape.text(SurveyShape.Fact.ID)).orElse(null));
        TopHeights tops = tops(shape);
        obstacle.setTopElevationM(tops.topM());
        for (int i = 0; i < shape.vertices().size(); i++) {
            Place place = place(shape, shape.vertices().get(i));
            place.setElevationM(tops.positionsM().isPresent() ? Double.valueOf(checked(shape, tops.positionsM().get()[i])) : null);
            obstacle.getPlaces().add(place);
        }
        obstacle.setHorizontalAccuracyM(accuracyM(shape, SurveyShape.Fact.HORIZONTAL_ACCURACY, origin.horizontalAccuracyM()));
        obstacle.setVerticalAccuracyM(accuracyM(shape, SurveyShape.Fact.VERTICAL_ACCURACY, origin.verticalAccuracyM()));
        obstacle.setSource(shape.text(SurveyShape.Fact.SOURCE).orElse(origin.source()));
        obstacle.setDate(date(shape));
        return obstacle;
    }

    List<GroundLevel> groundLevels(SurveyShape shape) throws ExchangeException {
        StatedHeights stated = stated(shape);
        double[] elevations;
        try {
            elevations = GroundHeights.of(stated, origin.heights(), shape.vertices().size());
        } catch (StatedHeights.Fault e) {
            throw fault(shape, e.reason());
        }
        List<GroundLevel> levels = new ArrayList<>();
        Optional<String> id = id(shape);
        for (int i = 0; i < elevations.length; i++) {
            GroundLevel level = SlopewrightFactory.eINSTANCE.createGroundLevel();
            if (shape.kind() == SurveyShape.Kind.POINT) {
                id.ifPresent(level::setId);
            }
            Place place = place(shape, shape.vertices().get(i));
            place.setElevationM(checked(shape, elevations[i]));
            level.setPlace(place);
            level.setSource(shape.text(SurveyShape.Fact.SOURCE).orElse(origin.source()));
            level.setDate(date(shape));
            levels.add(level);
        }
        return levels;
    }

    /** An id of the file becomes that of the element where it is free; two shapes of one file may not have the same. */
    private Optional<String> id(SurveyShape shape) throws ExchangeException {
        Optional<String> id = shape.text(SurveyShape.Fact.ID);
        if (id.isPresent()) {
            Long before = lines.putIfAbsent(id.get(), shape.line());
            if (before != null) {
                throw fault(shape, Message.said("survey-file.same-id", before));
            }
        }
        return id.filter(text -> text.matches("[A-Za-z_][A-Za-z0-9_.-]*")).filter(taken::add);
    }

    Double accuracyM(SurveyShape shape, SurveyShape.Fact fact, OptionalDouble whole) throws ExchangeException {
        OptionalDouble own = number(shape, fact);
        if (own.isPresent() && own.getAsDouble() < 0) {
            throw fault(shape, Message.of("survey-file.negative-accuracy"));
        }
        OptionalDouble found = own.isPresent() ? own : whole;
        double reach = fact == SurveyShape.Fact.HORIZONTAL_ACCURACY ? number(shape, SurveyShape.Fact.REACH).orElse(0) : 0;
        return found.isPresent() ? Double.valueOf(found.getAsDouble() + reach) : null;
    }

    private String date(SurveyShape shape) throws ExchangeException {
        Optional<String> own = shape.text(SurveyShape.Fact.DATE);
        try {
            return own.isPresent() ? LocalDate.parse(own.get()).toString() : origin.date().orElse(null);
        } catch (DateTimeParseException e) {
            throw fault(shape, Message.said("survey-file.no-date", own.get()));
        }
    }

    private Place place(SurveyShape shape, SurveyVertex vertex) throws ExchangeException {
        Place place = unchecked(shape, vertex);
        latLon(shape, place);
        return place;
    }

    /** Returns the place of a position, in coordinates that the aerodrome has. */
    Place unchecked(SurveyShape shape, SurveyVertex vertex) throws ExchangeException {
        boolean brought = shape.grid() && grid.isPresent();
        if (shape.grid() && !brought && !places.hasGrid()) {
            throw fault(shape, Message.of("survey-file.east-north"));
        }
        if ((brought || !shape.grid()) && places.isPlane()) {
            throw fault(shape, Message.of("survey-file.degrees"));
        }
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        if (shape.grid()) {
            place.setEastM(vertex.east());
            place.setNorthM(vertex.north());
        } else {
            place.setLatitudeDeg(vertex.north());
            place.setLongitudeDeg(vertex.east());
        }
        if (brought) {
            SiteFrame.LatLon found = latLon(shape, place, grid.get())
                    .orElseThrow(() -> fault(shape, Message.of("survey-file.local-grid")));
            place = SlopewrightFactory.eINSTANCE.createPlace();
            place.setLatitudeDeg(found.latitudeDeg());
            place.setLongitudeDeg(found.longitudeDeg());
        }
        return place;
    }

    /** Returns latitude and longitude of a position, empty on a local plane. */
    Optional<SiteFrame.LatLon> latLon(SurveyShape shape, Place place) throws ExchangeException {
        return latLon(shape, place, places);
    }

    private Optional<SiteFrame.LatLon> latLon(SurveyShape shape, Place place, AerodromePlaces from) throws ExchangeException {
        try {
            Optional<SiteFrame.LatLon> found = from.latLon(place);
            if (found.isPresent()) {
                refuseFar(shape, found.get());
                if (shape.grid() && turn.isEmpty()) {
                    turn = from.gridTurn(found.get());
                }
            }
            return found;
        } catch (SitingException | Proj4jException e) {
            throw fault(shape, Message.said("survey-file.not-brought", e));
        }
    }

    /** Latitude and longitude that were exchanged, or another grid, put a point far away. */
    private void refuseFar(SurveyShape shape, SiteFrame.LatLon found) throws ExchangeException {
        double away = awayM(found.latitudeDeg(), found.longitudeDeg());
        if (!(away <= FARTHEST_M)) {
            throw fault(shape, Message.said("survey-file.far", Math.round(away / 1000)));
        }
    }

    /** Returns how the grid of the survey lies at the first place of it; empty where it has none. */
    Optional<Message> gridTurn() {
        return turn.map(lies -> Message.of(lies.convergenceDeg() < 0 ? "survey-file.grid-turn-west" : "survey-file.grid-turn-east",
                Words.name(origin.grid().orElse(aerodrome.getCoordinateReference())),
                Words.quantity(Math.abs(lies.convergenceDeg()), Notation.DEGREES), Words.quantity(KILOMETRE_M / lies.scale(),
                        Notation.MILLIMETRES)));
    }

    boolean isNear(double latitudeDeg, double longitudeDeg) {
        return awayM(latitudeDeg, longitudeDeg) <= FARTHEST_M;
    }

    /** Returns whether every place of a box of degrees is near; no where it is not told. */
    boolean isNear(double south, double north, double west, double east) {
        if (aerodrome.getLatitudeDeg() == null || aerodrome.getLongitudeDeg() == null) {
            return true;
        }
        boolean turnsOver = Math.max(Math.abs(west - aerodrome.getLongitudeDeg()), Math.abs(east - aerodrome.getLongitudeDeg())) >= 180;
        return !turnsOver && isNear(south, west) && isNear(south, east) && isNear(north, west) && isNear(north, east);
    }

    /** Returns whether an elevation is one that a top may have, and none that many programs write for one that is not known. */
    boolean isPlainTop(double elevationM) {
        return elevationM >= LOWEST_M && elevationM <= HIGHEST_M
                && (elevationM != 0 || origin.heights().meaning() == SurveyHeights.Meaning.TOP);
    }

    /** Returns how far a place lies from the aerodrome, metres; zero where nobody knows where that is. */
    private double awayM(double latitudeDeg, double longitudeDeg) {
        if (aerodrome.getLatitudeDeg() == null || aerodrome.getLongitudeDeg() == null) {
            return 0;
        }
        double north = latitudeDeg - aerodrome.getLatitudeDeg();
        double east = Math.IEEEremainder(longitudeDeg - aerodrome.getLongitudeDeg(), 360)
                * Math.cos(Math.toRadians(aerodrome.getLatitudeDeg()));
        return Math.hypot(north, east) * METRES_PER_DEGREE;
    }
}
