package slopewright.exchange.survey;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.exchange.ExchangeException;
import slopewright.model.Aerodrome;
import slopewright.model.GroundLevel;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Ids;
import slopewright.siting.site.SurveyPoints;

/**
 * Brings the shapes of survey files into a project: as obstacles, as ground levels, or as one block of points that is kept beside it.
 * A file is read to its end before anything changes; where it is faulty the project stays as it was.
 */
public final class SurveyImport {

    /** The most elements that one file may add; more belong into a block. */
    public static final int MOST_ELEMENTS = 5000;

    private static final double SAME_DEG = 1e-8;
    private static final double SAME_M = 1e-3;

    private SurveyImport() {
    }

    /**
     * What an import did.
     *
     * @param added    number of elements or points that were added
     * @param repeated number of shapes that the project had already, with the same name and place; they were passed over
     * @param notes    what else was passed over, and why
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
        List<String> notes = SurveyFile.read(file, shape -> {
            refuseTooMany(file, fresh.size());
            fresh.add(maker.obstacle(shape));
        });
        refuseNone(file, fresh.size(), notes);
        List<Obstacle> all = maker.aerodrome().getObstacles();
        List<Obstacle> added = fresh.stream().filter(one -> all.stream().noneMatch(other -> isSame(one, other))).toList();
        all.addAll(added);
        Ids.assign(project);
        return new Result(added.size(), fresh.size() - added.size(), notes);
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
        List<String> notes = SurveyFile.read(file, shape -> {
            fresh.addAll(maker.groundLevels(shape));
            refuseTooMany(file, fresh.size() - 1);
        });
        refuseNone(file, fresh.size(), notes);
        List<GroundLevel> all = maker.aerodrome().getGroundLevels();
        List<GroundLevel> added = fresh.stream().filter(one -> all.stream().noneMatch(other -> other.getPlace() != null
                && isSame(one.getPlace(), other.getPlace()))).toList();
        all.addAll(added);
        Ids.assign(project);
        return new Result(added.size(), fresh.size() - added.size(), notes);
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
        PointCollector points = new PointCollector(new ShapeElements(project, file, origin));
        List<String> notes = SurveyFile.read(file, points);
        refuseNone(file, points.count(), notes);
        SurveyPoints all = points.points();
        byte[] bytes;
        try {
            bytes = all.bytes();
        } catch (IllegalArgumentException e) {
            throw new ExchangeException(file.toString(), 0, e.getMessage());
        }
        String hash = SurveyPoints.sha256(bytes);
        String stem = file.getFileName().toString().replaceAll("\\.[^.]*$", "").replaceAll("[^\\p{L}\\p{N}_-]", "-");
        SurveyBlock block = SlopewrightFactory.eINSTANCE.createSurveyBlock();
        block.setName(file.getFileName().toString());
        block.setKind("obstacles");
        block.setPath(stem + "-" + hash.substring(0, 12) + "." + SurveyPoints.EXTENSION);
        block.setSha256(hash);
        block.setPointCount(all.count());
        block.setSource(origin.source());
        block.setDate(origin.date().orElse(null));
        block.setHorizontalAccuracyM(points.horizontalAccuracyM());
        block.setVerticalAccuracyM(points.verticalAccuracyM());
        boolean repeated = project.getSurveyBlocks().stream().anyMatch(one -> hash.equals(one.getSha256()));
        if (!repeated) {
            project.getSurveyBlocks().add(block);
            Ids.assign(project);
        }
        return new Block(block.getPath(), bytes, new Result(repeated ? 0 : all.count(), repeated ? all.count() : 0, notes));
    }

    /** The order of the places does not count: a ring may start anywhere and run either way. */
    private static boolean isSame(Obstacle one, Obstacle other) {
        return Optional.ofNullable(one.getName()).equals(Optional.ofNullable(other.getName())) && one.getKind() == other.getKind()
                && one.getPlaces().size() == other.getPlaces().size()
                && one.getPlaces().stream().allMatch(place -> other.getPlaces().stream().anyMatch(there -> isSame(place, there)));
    }

    private static boolean isSame(Place one, Place other) {
        return isNear(one.getLatitudeDeg(), other.getLatitudeDeg(), SAME_DEG) && isNear(one.getLongitudeDeg(), other.getLongitudeDeg(),
                SAME_DEG)
                && isNear(one.getEastM(), other.getEastM(), SAME_M) && isNear(one.getNorthM(), other.getNorthM(), SAME_M);
    }

    private static boolean isNear(Double one, Double other, double within) {
        return one == null || other == null ? one == other : Math.abs(one - other) <= within;
    }

    /** Returns the aerodrome of a project. */
    static Aerodrome aerodrome(Project project, Path file) throws ExchangeException {
        if (project.getAerodrome() == null) {
            throw new ExchangeException(file.toString(), 0, "can not be placed: the project has no aerodrome");
        }
        return project.getAerodrome();
    }
}
