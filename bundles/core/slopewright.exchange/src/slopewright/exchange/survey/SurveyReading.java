package slopewright.exchange.survey;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

import slopewright.evaluation.terrain.TerrainField;
import slopewright.exchange.ExchangeException;
import slopewright.messages.Message;
import slopewright.messages.Reasoned;
import slopewright.model.GroundLevel;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.site.SurveyPoints;

/**
 * What a survey file would bring into a project, worked out without changing it: what is sound, and line by line what is refused, so that
 * one bad row never loses the good ones. What is taken of it is added by whoever asked.
 */
public final class SurveyReading {

    /** The most obstacles or ground levels that one file may add; more obstacles become a block. */
    public static final int MOST_ELEMENTS = 5000;

    /** What the shapes of a file become. */
    public enum Form {
        /** Obstacles, or a block of points where there are more than {@link SurveyReading#MOST_ELEMENTS}, or where it is terrain. */
        OBSTACLES,
        /** Ground levels. */
        GROUND_LEVELS,
        /** One block of points. */
        BLOCK
    }

    /** So many faults are told of a file that is refused as a whole. */
    private static final int MOST_TOLD = 20;

    /** So many refused lines are named; the rest is counted. */
    private static final int MOST_NAMED = 500;

    private final Project project;
    private final Path file;
    private final SurveyOrigin origin;
    private final Optional<TableForm> table;
    private final List<Identified> elements = new ArrayList<>();
    private final Set<Message> refused = new LinkedHashSet<>();
    private final List<Message> notes = new ArrayList<>();
    private Optional<byte[]> blockBytes = Optional.empty();
    private Optional<SurveyPoints> points = Optional.empty();
    private Optional<Message> ending = Optional.empty();
    private final Map<Integer, Long> leftOut = new TreeMap<>();
    private boolean datumSaid;
    private int refusedCount;
    private int repeated;

    /** Ends the reading of obstacles where they are a matter for a block. */
    private static final class Many extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private SurveyReading(Project project, Path file, SurveyOrigin origin, Optional<TableForm> table) {
        this.project = project;
        this.file = file;
        this.origin = origin;
        this.table = table;
    }

    /**
     * Reads a file.
     *
     * @param project a project, which stays as it is; what is read becomes no part of it
     * @param file    the survey file
     * @param origin  what is said of the survey as a whole
     * @param table   how it is read where it is a table; empty where its header says so in the words of this program
     * @param form    what its shapes become
     * @return what there is in it
     * @throws ExchangeException where the file does not fit the project at all; the message names file and reason
     */
    public static SurveyReading of(Project project, Path file, SurveyOrigin origin, Optional<TableForm> table, Form form)
            throws ExchangeException {
        SurveyReading reading = new SurveyReading(project, file, origin, table);
        if (form != Form.OBSTACLES) {
            reading.read(form);
            return reading;
        }
        try {
            reading.read(form);
            return reading;
        } catch (Many e) {
            SurveyReading block = new SurveyReading(project, file, origin, table);
            block.read(Form.BLOCK);
            return block;
        }
    }

    private void read(Form form) throws ExchangeException {
        ShapeElements maker = new ShapeElements(project, file, origin);
        PointCollector collector = new PointCollector(maker);
        SurveyFile.Sink sink = switch (form) {
            case OBSTACLES -> shape -> obstacle(maker, shape);
            case GROUND_LEVELS -> shape -> levels(maker, shape);
            case BLOCK -> collector;
        };
        try {
            notes.addAll(SurveyFile.read(file, table, new Lenient(maker, sink, form)));
        } catch (ExchangeException e) {
            ending = Optional.of(e.reason());
            e.messages().forEach(this::refuse);
        }
        leftOut.forEach((pointClass, count) -> notes.add(Message.said("survey-file.points-left-out", count, pointClass)));
        maker.gridTurn().ifPresent(notes::add);
        if (!datumSaid && origin.verticalDatum().isEmpty() && (collector.count() > 0 || !elements.isEmpty())) {
            notes.add(Message.said("survey-file.datum-not-said", maker.ownDatum()));
        }
        if (form == Form.BLOCK && collector.count() > 0) {
            SurveyPoints found = collector.points();
            byte[] bytes = bytes(found);
            SurveyBlock block = element(collector, bytes);
            if (Sameness.isRepeated(project, block)) {
                repeated = collector.count();
            } else {
                points = Optional.of(found);
                project.getSurveyBlocks().stream().filter(known -> block.getSha256().equals(known.getSha256())).findFirst()
                        .ifPresent(known -> notes.add(Message.said("survey-file.same-points", Projects.label(known), known.getKind())));
                elements.add(block);
                blockBytes = Optional.of(bytes);
            }
        }
    }

    private byte[] bytes(SurveyPoints points) throws ExchangeException {
        try {
            return points.bytes();
        } catch (IllegalArgumentException e) {
            throw new ExchangeException(file.toString(), 0, Reasoned.of(e));
        }
    }

    /** Makes the element that refers to a block, which belongs to no project yet. */
    private SurveyBlock element(PointCollector points, byte[] bytes) {
        String hash = SurveyPoints.sha256(bytes);
        String stem = file.getFileName().toString().replaceAll("\\.[^.]*$", "").replaceAll("[^\\p{L}\\p{N}_-]", "-");
        SurveyBlock block = SlopewrightFactory.eINSTANCE.createSurveyBlock();
        block.setName(file.getFileName().toString());
        block.setKind(points.isTerrain() ? TerrainField.KIND : "obstacles");
        block.setPath(stem + "-" + hash.substring(0, 12) + "." + SurveyPoints.EXTENSION);
        block.setSha256(hash);
        block.setPointCount(points.count());
        block.setSource(leftOut.isEmpty() ? origin.source() : origin.source() + " (without points of the classes "
                + leftOut.keySet().stream().map(String::valueOf).collect(Collectors.joining(", ")) + ")");
        block.setDate(origin.date().orElse(null));
        block.setHorizontalAccuracyM(points.horizontalAccuracyM());
        block.setVerticalAccuracyM(points.verticalAccuracyM());
        return block;
    }

    /** Takes the sound shapes and names the others. */
    private final class Lenient implements SurveyFile.Sink {

        private final ShapeElements maker;
        private final SurveyFile.Sink sink;
        private final Form form;

        Lenient(ShapeElements maker, SurveyFile.Sink sink, Form form) {
            this.form = form;
            this.maker = maker;
            this.sink = sink;
        }

        @Override
        public void accept(SurveyShape shape) throws ExchangeException {
            if (form == Form.GROUND_LEVELS) {
                maker.refuseTerrain(shape); // what is true of the whole file is said once, not of each of its millions of cells
            }
            datumSaid |= shape.text(SurveyShape.Fact.VERTICAL_DATUM).isPresent();
            try {
                sink.accept(shape);
            } catch (ExchangeException e) {
                refused(e);
            }
        }

        @Override
        public void refers(String reference) throws ExchangeException {
            maker.refuseOtherReference(reference);
        }

        @Override
        public void refersToNothing() throws ExchangeException {
            maker.refuseNoReference();
        }

        @Override
        public void elevationsIn(String name) throws ExchangeException {
            datumSaid |= name != null && !name.isBlank();
            maker.refuseOtherDatum(name);
        }

        @Override
        public void holdsAt(double year) {
            maker.otherEpoch(year).ifPresent(notes::add);
        }

        @Override
        public boolean wantsColumns() {
            return sink.wantsColumns();
        }

        @Override
        public boolean takes(PointColumns columns) {
            return sink.takes(columns);
        }

        @Override
        public boolean takes(int pointClass) {
            boolean taken = origin.classes().contains(pointClass);
            if (!taken) {
                leftOut.merge(pointClass, 1L, Long::sum);
            }
            return taken;
        }

        @Override
        public boolean isNear(double latitudeDeg, double longitudeDeg) {
            return maker.isNear(latitudeDeg, longitudeDeg);
        }

        @Override
        public void refused(ExchangeException fault) {
            fault.messages().forEach(SurveyReading.this::refuse);
        }
    }

    private void refuse(Message message) {
        refusedCount++;
        if (refused.size() < MOST_NAMED) {
            refused.add(message);
        }
    }

    private void obstacle(ShapeElements maker, SurveyShape shape) throws ExchangeException {
        if (elements.size() + repeated >= MOST_ELEMENTS || shape.text(SurveyShape.Fact.REACH).isPresent()) {
            throw new Many();
        }
        Obstacle found = maker.obstacle(shape);
        List<Obstacle> all = maker.aerodrome().getObstacles();
        if (all.stream().anyMatch(known -> Sameness.isSame(found, known))) {
            repeated++;
            return;
        }
        all.stream().filter(known -> Sameness.isSameThing(found, known)).findFirst()
                .ifPresent(known -> notes.add(Message.said("survey-file.beside", Projects.label(found), found.getTopElevationM(),
                        known.getId(), known.getTopElevationM())));
        elements.add(found);
    }

    private void levels(ShapeElements maker, SurveyShape shape) throws ExchangeException {
        if (elements.size() + repeated >= MOST_ELEMENTS) {
            throw new ExchangeException(file.toString(), shape.line(), Message.said("survey-file.levels", MOST_ELEMENTS));
        }
        for (GroundLevel found : maker.groundLevels(shape)) {
            boolean known = maker.aerodrome().getGroundLevels().stream()
                    .anyMatch(level -> level.getPlace() != null && Sameness.isSame(found.getPlace(), level.getPlace()));
            if (known) {
                repeated++;
            } else {
                elements.add(found);
            }
        }
    }

    /**
     * Refuses a file that is faulty, or in which there is nothing.
     *
     * @param goodRows whether what is sound is wanted even where something else is refused; never of a file that was not read to its end
     * @throws ExchangeException with the first faults, each with file, line and reason
     */
    public void refuseFaults(boolean goodRows) throws ExchangeException {
        if (refusedCount > 0 && (!goodRows || ending.isPresent())) {
            throw ExchangeException.of(refused.stream().limit(MOST_TOLD).toList());
        }
        if (count() + repeated == 0) {
            Collection<Message> why = refusedCount > 0 ? refused : notes;
            throw new ExchangeException(file.toString(), 0, why.isEmpty() ? Message.of("survey-file.nothing")
                    : Message.said("survey-file.nothing-because", why));
        }
    }

    /**
     * Adds what was read to a project. The file of a block is written by whoever asks.
     *
     * @param into the project it was read for, or another state of it
     */
    public void addTo(Project into) {
        for (Identified element : elements) {
            if (element instanceof Obstacle obstacle) {
                into.getAerodrome().getObstacles().add(obstacle);
            } else if (element instanceof GroundLevel level) {
                into.getAerodrome().getGroundLevels().add(level);
            } else {
                into.getSurveyBlocks().add((SurveyBlock) element);
            }
        }
        Ids.assign(into);
    }

    /** Returns what would be added: obstacles, ground levels, or one survey block. */
    public List<Identified> elements() {
        return List.copyOf(elements);
    }

    /** Returns what the file of the block holds, which is to lie beside the project; empty where none is added. */
    public Optional<byte[]> blockBytes() {
        return blockBytes.map(byte[]::clone);
    }

    /** Returns how many obstacles, ground levels or points would be added. */
    public int count() {
        return points.map(SurveyPoints::count).orElse(elements.size());
    }

    /** Returns the points of the block that would be added, empty where none is. */
    public Optional<SurveyPoints> points() {
        return points;
    }

    /** Returns how many the project has already. */
    public int repeated() {
        return repeated;
    }

    /** Returns how many parts of the file are refused. */
    public int refusedCount() {
        return refusedCount;
    }

    /** Returns what is refused, each with file, line and reason; of very many the first. */
    public List<Message> refused() {
        return List.copyOf(refused);
    }

    /** Returns what was skipped, or is to be looked at. */
    public List<Message> notes() {
        return List.copyOf(notes);
    }

    /** Returns why the file could not be read to its end, so that nobody knows what else it holds; empty where it was. */
    public Optional<Message> ending() {
        return ending;
    }
}
