package slopewright.headless.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.model.Project;
import slopewright.report.PaperSize;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.report.ReportTemplate;
import slopewright.report.Reports;

/** Writes the report of a project. */
@CommandLine.Command(name = "report", sortOptions = false,
        description = "Write the report of a project, PDF or HTML by the ending of the file.")
final class ReportCommand extends Command {

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Mixin
    private UnitsOption units;

    @Mixin
    private OutputOptions output;

    @Mixin
    private LanguageOption language;

    @Option(names = "--rule-set", paramLabel = "KEY", description = "rule set instead of the project's own")
    private String ruleSet;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "date to print; today where it is not given")
    private String date;

    @Option(names = "--paper", defaultValue = "a4", paramLabel = "SIZE", description = "a4 (default) or letter")
    private PaperSize paper;

    @Option(names = "--template", paramLabel = "DIR", description = {"folder with any of cover.html, report.html, running.html, "
            + "sign-off.html, style.css, logo.png, logo.jpg, logo.svg; the built-in ones stand in for the rest. Fragments are well-formed "
            + "XHTML with placeholders such as {{project.name}} and {{cautions}}; nothing outside the folder is read"})
    private Path template;

    @Option(names = "--no-annexes", description = "leave out the lists of what is met and confirmed; the report says so and counts them")
    private boolean noAnnexes;

    @Option(names = "--since", paramLabel = "OLDER", description = "project file of the version handed over before; the report says what "
            + "changed in its results")
    private Path older;

    @Option(names = "--weights", paramLabel = "WEIGHTS", description = "how much each criterion counts by which families are "
            + "compared, 0 to 5, such as rules=3,load=0; see compare")
    private String weights;

    @Override
    public Integer call() {
        String ending = output.ending(List.of("pdf", "html"));
        output.check();
        if (ruleSet != null) {
            ProjectFiles.rules(Optional.of(ruleSet));
        }
        ReportTemplate look = template(template);
        Project project = ProjectFiles.load(file);
        ReportOptions options = new ReportOptions(checkedDate(date), paper, look, language.language()).withAnnexes(!noAnnexes)
                .in(units.units()).weighing(CompareCommand.weights(weights));
        try {
            output.write(Reports.write(project, Optional.ofNullable(ruleSet), older == null ? options : options.since(ProjectFiles.load(
                    older)), Reports.Format.valueOf(ending.toUpperCase(Locale.ROOT))));
        } catch (IllegalArgumentException | ReportException e) {
            throw new InputException(file + ": " + e.getMessage());
        }
        return ExitCodes.OK;
    }

    /** Returns the template of a folder, the built-in one where none was given. */
    static ReportTemplate template(Path folder) {
        try {
            return folder == null ? ReportTemplate.builtIn() : ReportTemplate.read(folder);
        } catch (ReportException e) {
            throw new InputException("template " + e.getMessage());
        }
    }

    /** Returns a date to print, today where none was given. */
    static String checkedDate(String given) {
        try {
            return given == null ? LocalDate.now().toString() : LocalDate.parse(given).toString();
        } catch (DateTimeParseException e) {
            throw new UsageException("--date takes a date such as 2026-06-01, not '" + given + "'");
        }
    }
}
