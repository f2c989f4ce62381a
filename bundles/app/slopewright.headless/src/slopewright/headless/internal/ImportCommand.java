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
import slopewright.exchange.survey.SurveyFile;
import slopewright.exchange.survey.SurveyHeights;
import slopewright.exchange.survey.SurveyImport;
import slopewright.exchange.survey.SurveyOrigin;
import slopewright.model.Project;
import slopewright.model.io.AtomicFile;
import slopewright.model.io.ProjectFile;

/** Brings a survey file into a project. */
@CommandLine.Command(name = "import", sortOptions = false,
        description = "Bring a survey file into a project and write the project anew; the ending of the file says its format. Where the "
                + "file is faulty nothing is written.")
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
            description = "obstacles (default), ground-levels, or obstacle-block: many points in a file of their own beside the project")
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

    @Option(names = "--horizontal-accuracy-m", paramLabel = "M", converter = NumberWord.Length.class,
            description = "accuracy of places where the file says nothing")
    private Double horizontalM;

    @Option(names = "--vertical-accuracy-m", paramLabel = "M", converter = NumberWord.Length.class,
            description = "accuracy of elevations where the file says nothing")
    private Double verticalM;

    @Option(names = "--vertical-datum", paramLabel = "NAME", description = "vertical datum of the elevations, as the aerodrome names it; "
            + "terrain is taken with it alone, and with its accuracy and its day")
    private String verticalDatum;

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
                heights(), Optional.ofNullable(verticalDatum));
        try {
            SurveyImport.Result result = switch (form) {
                case "obstacles" -> SurveyImport.obstacles(project, survey, origin);
                case "ground-levels" -> SurveyImport.groundLevels(project, survey, origin);
                default -> block(project, origin);
            };
            if (!"obstacle-block".equals(form)) {
                output.write(project);
            }
            tell(result);
        } catch (ExchangeException e) {
            throw new InputException(e.messages());
        }
        return ExitCodes.OK;
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

    private static OptionalDouble accuracy(Double metres) {
        if (metres != null && metres < 0) {
            throw new UsageException("an accuracy is zero or more");
        }
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

    /** Writes the block first and the project that refers to it after; a block that is there already is the same one. */
    private SurveyImport.Result block(Project project, SurveyOrigin origin) throws ExchangeException {
        SurveyImport.Block block = SurveyImport.block(project, survey, origin);
        Path file = folder(output.file()).resolve(block.fileName());
        boolean made = make(file, block.bytes());
        boolean written = false;
        try {
            output.write(project);
            written = true;
        } finally {
            if (made && !written && !isReferredTo(block.fileName())) {
                file.toFile().delete();
            }
        }
        streams().warn("slopewright import: the points are in " + file + "; keep it beside the project");
        return block.result();
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

    private void tell(SurveyImport.Result result) {
        String what = "ground-levels".equals(form) ? "ground levels" : "obstacle-block".equals(form) ? "points" : "obstacles";
        streams().warn("slopewright import: " + result.added() + " " + what + " added");
        if (result.repeated() > 0) {
            streams().warn("slopewright import: " + result.repeated() + " " + what + " skipped, the project has them already");
        }
        result.notes().forEach(note -> streams().warn("slopewright import: " + note));
    }
}
