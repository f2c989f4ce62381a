package slopewright.exchange.survey;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.exchange.ExchangeException;
import slopewright.model.GroundLevel;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.site.SurveyPoints;

/**
 * What a survey file would bring into a project, worked out without changing it: what is sound, and line by line what is refused, so that
 * one bad row never loses the good ones. What is taken of it is added by whoever asked.
 */
public final class SurveyReading {

    /** What the shapes of a file become. */
    public enum Form {
        /** Obstacles, or a block of points where there are more than {@link SurveyImport#MOST_ELEMENTS}, or where it is terrain. */
        OBSTACLES,
        /** Ground levels. */
        GROUND_LEVELS,
        /** One block of points. */
        BLOCK
    }

    /** So many refused lines are named; the rest is counted. */
    private static final int MOST_NAMED = 500;

    private final Project project;
    private final Path file;
    private final SurveyOrigin origin;
    private final Optional<TableForm> table;
    private final List<Identified> elements = new ArrayList<>();
    private final List<String> refused = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private Optional<byte[]> blockBytes = Optional.empty();
    private Optional<SurveyPoints> points = Optional.empty();
    private Optional<String> ending = Optional.empty();
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
            notes.addAll(SurveyFile.read(file, table, new Lenient(maker, sink)));
        } catch (ExchangeException e) {
            ending = Optional.of(e.getMessage());
            e.messages().forEach(this::refuse);
        }
        if (form == Form.BLOCK && collector.count() > 0) {
            byte[] bytes = SurveyImport.bytes(collector, file);
            SurveyBlock block = SurveyImport.element(collector, bytes, file, origin);
            if (SurveyImport.isRepeated(project, block)) {
                repeated = collector.count();
            } else {
                points = Optional.of(collector.points());
                elements.add(block);
                blockBytes = Optional.of(bytes);
            }
        }
    }

    /** Takes the sound shapes and names the others. */
    private final class Lenient implements SurveyFile.Sink {

        private final ShapeElements maker;
        private final SurveyFile.Sink sink;

        Lenient(ShapeElements maker, SurveyFile.Sink sink) {
            this.maker = maker;
            this.sink = sink;
        }

        @Override
        public void accept(SurveyShape shape) {
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
        public boolean isNear(double latitudeDeg, double longitudeDeg) {
            return maker.isNear(latitudeDeg, longitudeDeg);
        }

        @Override
        public void refused(ExchangeException fault) {
            fault.messages().forEach(SurveyReading.this::refuse);
        }
    }

    private void refuse(String message) {
        refusedCount++;
        if (refused.size() < MOST_NAMED && !refused.contains(message)) {
            refused.add(message);
        }
    }

    private void obstacle(ShapeElements maker, SurveyShape shape) throws ExchangeException {
        if (elements.size() + repeated >= SurveyImport.MOST_ELEMENTS || shape.text(SurveyShape.Fact.REACH).isPresent()) {
            throw new Many();
        }
        Obstacle found = maker.obstacle(shape);
        List<Obstacle> all = maker.aerodrome().getObstacles();
        if (all.stream().anyMatch(known -> SurveyImport.isSame(found, known))) {
            repeated++;
            return;
        }
        all.stream().filter(known -> SurveyImport.isSameThing(found, known)).findFirst()
                .ifPresent(known -> notes.add(Projects.label(found) + ", top at " + found.getTopElevationM() + " m, is added beside "
                        + known.getId() + " of the same name and place, top at " + known.getTopElevationM() + " m"));
        elements.add(found);
    }

    private void levels(ShapeElements maker, SurveyShape shape) throws ExchangeException {
        if (elements.size() + repeated >= SurveyImport.MOST_ELEMENTS) {
            throw new ExchangeException(file.toString(), shape.line(), "is one too many: at most " + SurveyImport.MOST_ELEMENTS
                    + " ground levels are taken of one file");
        }
        for (GroundLevel found : maker.groundLevels(shape)) {
            boolean known = maker.aerodrome().getGroundLevels().stream()
                    .anyMatch(level -> level.getPlace() != null && SurveyImport.isSame(found.getPlace(), level.getPlace()));
            if (known) {
                repeated++;
            } else {
                elements.add(found);
            }
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
    public List<String> refused() {
        return List.copyOf(refused);
    }

    /** Returns what was skipped, or is to be looked at. */
    public List<String> notes() {
        return List.copyOf(notes);
    }

    /** Returns why the file could not be read to its end, so that nobody knows what else it holds; empty where it was. */
    public Optional<String> ending() {
        return ending;
    }
}
