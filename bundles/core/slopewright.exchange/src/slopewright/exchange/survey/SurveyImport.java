package slopewright.exchange.survey;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import slopewright.exchange.ExchangeException;
import slopewright.model.Aerodrome;
import slopewright.model.GroundLevel;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.site.SurveyPoints;

/**
 * Brings the shapes of survey files into a project: as obstacles, as ground levels, or as one block of points that is kept beside it.
 * A file is read to its end before anything changes; where it is faulty the project stays as it was.
 */
public final class SurveyImport {

    /** The most elements that one file may add; more belong into a block. */
    public static final int MOST_ELEMENTS = 5000;

    private static final int MOST_FAULTS = 20;
    private static final double SAME_DEG = 1e-8;
    private static final double SAME_M = 1e-3;

    private SurveyImport() {
    }

    /**
     * What an import did.
     *
     * @param added    number of elements or points that were added
     * @param repeated number of shapes that the project had already, with the same name and place; they were skipped
     * @param notes    what else was skipped, and why
     */
    public record Result(int added, int repeated, List<String> notes) {

        /** Copies the notes. */
        public Result {
            notes = List.copyOf(notes);
        }
    }

    /**
     * A block of points.
     *
     * @param fileName name of its file, which is to lie beside the project
     * @param bytes    what the file holds
     * @param result   what the import did
     */
    public record Block(String fileName, byte[] bytes, Result result) {
    }

    /**
     * Adds the shapes of a file as obstacles.
     *
     * @param project the project; changed only where the whole file is sound
     * @param file    the survey file
     * @param origin  what is said of the survey as a whole
     * @return what was done
     * @throws ExchangeException where the file is faulty or does not fit the project; the message names file, line and reason
     */
    public static Result obstacles(Project project, Path file, SurveyOrigin origin) throws ExchangeException {
        ShapeElements maker = new ShapeElements(project, file, origin);
        List<Obstacle> fresh = new ArrayList<>();
        List<String> notes = read(file, maker, fresh, shape -> fresh.add(maker.obstacle(shape)));
        refuseNone(file, fresh.size(), notes);
        List<Obstacle> all = maker.aerodrome().getObstacles();
        List<Obstacle> added = fresh.stream().filter(found -> all.stream().noneMatch(known -> isSame(found, known))).toList();
        List<String> said = new ArrayList<>(notes);
        added.forEach(found -> all.stream().filter(known -> isSameThing(found, known)).findFirst()
                .ifPresent(known -> said.add(Projects.label(found) + ", top at " + found.getTopElevationM() + " m, is added beside "
                        + known.getId() + " of the same name and place, top at " + known.getTopElevationM()
                        + " m; remove the one that is wrong")));
        all.addAll(added);
        Ids.assign(project);
        return new Result(added.size(), fresh.size() - added.size(), said);
    }

    /**
     * Adds the positions of a file as ground levels; each position of a line or an area is one.
     *
     * @param project as for obstacles
     * @param file    as for obstacles
     * @param origin  as for obstacles
     * @return what was done
     * @throws ExchangeException as for obstacles
     */
    public static Result groundLevels(Project project, Path file, SurveyOrigin origin) throws ExchangeException {
        ShapeElements maker = new ShapeElements(project, file, origin);
        List<GroundLevel> fresh = new ArrayList<>();
        List<String> notes = read(file, maker, fresh, shape -> fresh.addAll(maker.groundLevels(shape)));
        refuseNone(file, fresh.size(), notes);
        List<GroundLevel> all = maker.aerodrome().getGroundLevels();
        List<GroundLevel> added = fresh.stream().filter(found -> all.stream().noneMatch(known -> known.getPlace() != null
                && isSame(found.getPlace(), known.getPlace()))).toList();
        all.addAll(added);
        Ids.assign(project);
        return new Result(added.size(), fresh.size() - added.size(), notes);
    }

    /** Takes sound shapes, and names every shape that is of no use up to a limit; one is enough for the file to be refused. */
    private record Strict(Path file, ShapeElements maker, List<?> fresh, SurveyFile.Sink sink, List<ExchangeException> faults)
            implements SurveyFile.Sink {

        @Override
        public void accept(SurveyShape shape) throws ExchangeException {
            refuseTooMany(file, fresh.size());
            try {
                sink.accept(shape);
            } catch (ExchangeException e) {
                if (faults.isEmpty() || !faults.get(0).getMessage().equals(e.getMessage())) {
                    faults.add(e); // what is wrong with the file as a whole is said once
                }
                if (faults.size() == MOST_FAULTS) {
                    throw ExchangeException.of(faults);
                }
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
    }

    /** Reads a file to its end. */
    private static List<String> read(Path file, ShapeElements maker, List<?> fresh, SurveyFile.Sink sink) throws ExchangeException {
        List<ExchangeException> faults = new ArrayList<>();
        List<String> notes = List.of();
        try {
            notes = SurveyFile.read(file, new Strict(file, maker, fresh, sink, faults));
        } catch (ExchangeException e) {
            if (faults.isEmpty() || faults.size() == MOST_FAULTS) {
                throw e;
            }
            faults.add(e);
        }
        if (!faults.isEmpty()) {
            throw ExchangeException.of(faults);
        }
        return notes;
    }

    private static void refuseNone(Path file, int count, List<String> notes) throws ExchangeException {
        if (count == 0) {
            throw new ExchangeException(file.toString(), 0, "holds nothing to import" + (notes.isEmpty() ? "" : ": " + String.join(", ",
                    notes)));
        }
    }

    private static void refuseTooMany(Path file, int count) throws ExchangeException {
        if (count >= MOST_ELEMENTS) {
            throw new ExchangeException(file.toString(), 0, "holds more than " + MOST_ELEMENTS
                    + " shapes; import points in such numbers as a block");
        }
    }

    /**
     * Makes one block of points of a file and adds its reference to the project.
     *
     * @param project as for obstacles
     * @param file    as for obstacles; it must hold points only
     * @param origin  as for obstacles
     * @return the block; whoever asked for it writes its file
     * @throws ExchangeException as for obstacles
     */
    public static Block block(Project project, Path file, SurveyOrigin origin) throws ExchangeException {
        ShapeElements maker = new ShapeElements(project, file, origin);
        PointCollector points = new PointCollector(maker);
        List<String> notes = read(file, maker, List.of(), points);
        refuseNone(file, points.count(), notes);
        byte[] bytes = bytes(points, file);
        SurveyBlock block = element(points, bytes, file, origin);
        boolean repeated = isRepeated(project, block);
        if (!repeated) {
            project.getSurveyBlocks().add(block);
            Ids.assign(project);
        }
        return new Block(block.getPath(), bytes, new Result(repeated ? 0 : points.count(), repeated ? points.count() : 0, notes));
    }

    /** Returns what the file of a block holds. */
    static byte[] bytes(PointCollector points, Path file) throws ExchangeException {
        try {
            return points.points().bytes();
        } catch (IllegalArgumentException e) {
            throw new ExchangeException(file.toString(), 0, e.getMessage());
        }
    }

    /** Makes the element that refers to a block, which belongs to no project yet. */
    static SurveyBlock element(PointCollector points, byte[] bytes, Path file, SurveyOrigin origin) {
        String hash = SurveyPoints.sha256(bytes);
        String stem = file.getFileName().toString().replaceAll("\\.[^.]*$", "").replaceAll("[^\\p{L}\\p{N}_-]", "-");
        SurveyBlock block = SlopewrightFactory.eINSTANCE.createSurveyBlock();
        block.setName(file.getFileName().toString());
        block.setKind("obstacles");
        block.setPath(stem + "-" + hash.substring(0, 12) + "." + SurveyPoints.EXTENSION);
        block.setSha256(hash);
        block.setPointCount(points.count());
        block.setSource(origin.source());
        block.setDate(origin.date().orElse(null));
        block.setHorizontalAccuracyM(points.horizontalAccuracyM());
        block.setVerticalAccuracyM(points.verticalAccuracyM());
        return block;
    }

    /** Returns whether a project has the points of a block already. */
    static boolean isRepeated(Project project, SurveyBlock block) {
        return project.getSurveyBlocks().stream().anyMatch(known -> block.getSha256().equals(known.getSha256()));
    }

    /** The order of the places does not count: a ring may start anywhere and run either way. */
    static boolean isSameThing(Obstacle found, Obstacle known) {
        return Objects.equals(found.getName(), known.getName()) && found.getKind() == known.getKind()
                && found.getPlaces().size() == known.getPlaces().size()
                && found.getPlaces().stream().allMatch(place -> known.getPlaces().stream().anyMatch(there -> isSamePlace(place, there)));
    }

    /** What has another height is another statement, and is kept. */
    static boolean isSame(Obstacle found, Obstacle known) {
        return isSameThing(found, known) && isNear(found.getTopElevationM(), known.getTopElevationM(), SAME_M)
                && found.getPlaces().stream().allMatch(place -> known.getPlaces().stream().anyMatch(there -> isSame(place, there)));
    }

    static boolean isSame(Place found, Place known) {
        return isSamePlace(found, known) && isNear(found.getElevationM(), known.getElevationM(), SAME_M);
    }

    private static boolean isSamePlace(Place found, Place known) {
        return isNear(found.getLatitudeDeg(), known.getLatitudeDeg(), SAME_DEG)
                && isNear(found.getLongitudeDeg(), known.getLongitudeDeg(), SAME_DEG) && isNear(found.getEastM(), known.getEastM(), SAME_M)
                && isNear(found.getNorthM(), known.getNorthM(), SAME_M);
    }

    private static boolean isNear(Double found, Double known, double within) {
        return found == null || known == null ? found == known : Math.abs(found - known) <= within;
    }

    /** Returns the aerodrome of a project. */
    static Aerodrome aerodrome(Project project, Path file) throws ExchangeException {
        if (project.getAerodrome() == null) {
            throw new ExchangeException(file.toString(), 0, "cannot be placed: the project has no aerodrome");
        }
        return project.getAerodrome();
    }
}
