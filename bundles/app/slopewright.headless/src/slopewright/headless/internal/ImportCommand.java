package slopewright.headless.internal;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.PointClasses;
import slopewright.exchange.survey.SurveyFile;
import slopewright.exchange.survey.SurveyHeights;
import slopewright.exchange.survey.SurveyOrigin;
import slopewright.exchange.survey.SurveyReading;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.io.AtomicFile;
import slopewright.model.io.ProjectFile;

/** Brings a survey file into a project. */
@CommandLine.Command(name = "import", sortOptions = false,
        description = "Bring a survey file into a project and write the project anew; the ending of the file says its format. Where the "
                + "file is faulty nothing is written, unless --good-rows is given.")
final class ImportCommand extends Command {

    /** The endings of the formats that are registered. */
    static final class Endings implements Iterable<String> {

        @Override
        public Iterator<String> iterator() {
            return SurveyFile.endings().iterator();
        }
    }

    private static final List<String> FORMS = List.of("obstacles", "ground-levels", "obstacle-block");

    @Parameters(paramLabel = "SURVEY_FILE", completionCandidates = Endings.class,
            description = "survey file, which ends in .${COMPLETION-CANDIDATES}")
    private Path survey;

    @Option(names = "--into", required = true, paramLabel = "PROJECT", description = "project file to start from")
    private Path into;

    @Mixin
    private OutputOptions output;

    @Option(names = "--as", defaultValue = "obstacles", paramLabel = "FORM",
            description = "obstacles (default; more than 5000 points become a block), ground-levels, or obstacle-block: many points in a "
                    + "file of their own beside the project")
    private String form;

    @Option(names = "--source", paramLabel = "TEXT", description = "where the survey comes from (default the name of its file)")
    private String source;

    @Option(names = "--date", paramLabel = "DAY", converter = DateWord.class, description = "day of the survey, of the form 2026-01-31")
    private LocalDate date;

    @Option(names = "--grid", paramLabel = "EPSG:N",
            description = "coordinate reference of east and north in the file (default that of the project)")
    private String grid;

    @Option(names = "--heights", paramLabel = "MEANING", description = "what an elevation is that the file names no closer, and the third "
            + "number of a position: that of the top, that of the ground, or above-ground, a height. Where it is not given they are tops, "
            + "and what the file leaves open or contradicts is refused")
    private String heights;

    @Option(names = "--ground-m", paramLabel = "M", converter = NumberWord.Length.class,
            description = "with --heights above-ground: elevation of the ground where the file has none")
    private Double groundM;

    @Option(names = "--horizontal-accuracy-m", paramLabel = "M", converter = NumberWord.Accuracy.class,
            description = "accuracy of places where the file says nothing")
    private Double horizontalM;

    @Option(names = "--vertical-accuracy-m", paramLabel = "M", converter = NumberWord.Accuracy.class,
            description = "accuracy of elevations where the file says nothing")
    private Double verticalM;

    @Option(names = "--vertical-datum", paramLabel = "NAME", description = "vertical datum of the elevations, as the aerodrome names it; "
            + "terrain is taken with it alone, and with its accuracy and its day")
    private String verticalDatum;

    @Option(names = "--classes", paramLabel = "LIST", description = "classes of the points that are taken of a cloud, such as 1,3-6 "
            + "(default all but ground, 2 and 20, and noise, 7 and 18)")
    private String classes;

    @Option(names = "--good-rows", description = "take what is sound, name what is refused and exit with 1; without it a faulty file is "
            + "refused as a whole")
    private boolean goodRows;

    @Override
    public Integer call() {
        if (!FORMS.contains(form)) {
            throw new UsageException("--as takes " + String.join(", ", FORMS) + ", not '" + form + "'");
        }
        output.ending(List.of(ProjectFile.EXTENSION));
        output.check();
        Project project = ProjectFiles.load(into);
        refuseToLoseFiles(project);
        SurveyOrigin origin = new SurveyOrigin(source == null ? survey.getFileName().toString() : source,
                Optional.ofNullable(date).map(LocalDate::toString), Optional.ofNullable(grid), accuracy(horizontalM), accuracy(verticalM),
                heights(), Optional.ofNullable(verticalDatum), classes());
        try {
            SurveyReading reading = SurveyReading.of(project, survey, origin, Optional.empty(),
                    SurveyReading.Form.values()[FORMS.indexOf(form)]);
            reading.refuseFaults(goodRows);
            reading.addTo(project);
            write(project, reading);
            tell(reading);
            return reading.refusedCount() == 0 ? ExitCodes.OK : ExitCodes.FINDINGS;
        } catch (ExchangeException e) {
            throw InputException.of(e);
        }
    }

    private SurveyHeights heights() {
        SurveyHeights.Meaning meaning = heights == null ? SurveyHeights.Meaning.AS_STATED
                : SurveyHeights.Meaning.find(heights).filter(found -> found != SurveyHeights.Meaning.AS_STATED)
                        .orElseThrow(() -> new UsageException("--heights takes top, ground or above-ground, not '" + heights + "'"));
        if (groundM != null && meaning != SurveyHeights.Meaning.ABOVE_GROUND) {
            throw new UsageException("--ground-m goes with --heights above-ground");
        }
        return new SurveyHeights(meaning, groundM == null ? OptionalDouble.empty() : OptionalDouble.of(groundM));
    }

    private PointClasses classes() {
        try {
            return classes == null ? PointClasses.STANDING : PointClasses.parse(classes);
        } catch (IllegalArgumentException e) {
            throw new UsageException("--classes: " + e.getMessage());
        }
    }

    private static OptionalDouble accuracy(Double metres) {
        return metres == null ? OptionalDouble.empty() : OptionalDouble.of(metres);
    }

    /** A project names the files beside it without their folder. */
    private void refuseToLoseFiles(Project project) {
        boolean refers = !project.getSurveyBlocks().isEmpty()
                || project.getAerodrome() != null && !project.getAerodrome().getBackgroundImages().isEmpty();
        if (refers && !folder(into).equals(folder(output.file()))) {
            throw new UsageException(into + " refers to files beside it; write the new project into the same folder");
        }
    }

    private static Path folder(Path file) {
        return file.toAbsolutePath().normalize().getParent();
    }

    /** Writes a block first and the project that refers to it after; a block that is there already is the same one. */
    private void write(Project project, SurveyReading reading) {
        Optional<byte[]> bytes = reading.blockBytes();
        if (bytes.isEmpty()) {
            output.write(project);
            return;
        }
        if (output.isStandardOutput()) {
            throw new UsageException("so many points are kept in a file beside the project; name one with -o");
        }
        String name = ((SurveyBlock) reading.elements().get(0)).getPath();
        Path file = folder(output.file()).resolve(name);
        boolean made = make(file, bytes.get());
        boolean written = false;
        try {
            output.write(project);
            written = true;
        } finally {
            if (made && !written && !isReferredTo(name)) {
                file.toFile().delete();
            }
        }
        streams().warn("slopewright import: the points are in " + file + "; keep it beside the project");
    }

    /** Makes the file of a block, and returns whether it was not there before; another import of the same points may make it meanwhile. */
    private static boolean make(Path file, byte[] bytes) {
        try {
            try {
                AtomicFile.create(file, bytes);
                return true;
            } catch (FileAlreadyExistsException e) {
                if (!Arrays.equals(Files.readAllBytes(file), bytes)) {
                    throw new UsageException(file + " is there already and holds something else; nothing was written");
                }
                return false;
            }
        } catch (IOException e) {
            throw FileOutput.failed(file, e);
        }
    }

    /** Returns whether another import has made a project of this name that needs the block. */
    private boolean isReferredTo(String blockName) {
        try {
            return Files.exists(output.file()) && Files.readString(output.file()).contains(blockName);
        } catch (IOException e) {
            return true;
        }
    }

    private void tell(SurveyReading reading) {
        String what = "ground-levels".equals(form) ? "ground levels" : reading.points().isPresent() || "obstacle-block".equals(form)
                ? "points" : "obstacles";
        streams().warn("slopewright import: " + reading.count() + " " + what + " added");
        if (reading.repeated() > 0) {
            streams().warn("slopewright import: " + reading.repeated() + " " + what + " skipped, the project has them already");
        }
        reading.refused().forEach(line -> streams().warn("slopewright import: refused: " + line.english()));
        if (reading.refusedCount() > reading.refused().size()) {
            streams().warn("slopewright import: refused: " + (reading.refusedCount() - reading.refused().size()) + " more");
        }
        reading.notes().forEach(note -> streams().warn("slopewright import: " + note.english()));
    }
}
