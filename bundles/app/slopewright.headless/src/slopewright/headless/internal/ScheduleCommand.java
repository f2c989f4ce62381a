package slopewright.headless.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.circuit.LoadSchedule;
import slopewright.exchange.publish.PublishedData;
import slopewright.exchange.settingout.SettingOutSchedule;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetFile;
import slopewright.messages.MessageRenderer;
import slopewright.model.Project;

/** Writes a schedule of a project. */
@CommandLine.Command(name = "schedule", sortOptions = false,
        description = "Write a schedule of a project, CSV or XLSX by the ending of the file: how to set out every unit, the circuits with "
                + "their loads, or the data to publish.")
final class ScheduleCommand extends Command {

    private static final List<String> SHEETS = List.of("setting-out", "circuits", "publish");

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Mixin
    private OutputOptions output;

    @Option(names = "--sheet", defaultValue = "setting-out", paramLabel = "SHEET",
            description = "setting-out (default), circuits or publish")
    private String sheet;

    @Option(names = "--rule-set", paramLabel = "KEY", description = "rule set instead of the aids' or project's own")
    private String ruleSet;

    @Option(names = "--date", paramLabel = "DAY", converter = DateWord.class,
            description = "day for the magnetic variation, of the form 2026-01-31 (default today)")
    private LocalDate date;

    @Mixin
    private LanguageOption language;

    @Override
    public Integer call() throws IOException {
        String ending = output.ending(List.of("csv", "xlsx"));
        output.check();
        if (!SHEETS.contains(sheet)) {
            throw new UsageException("--sheet takes " + String.join(", ", SHEETS) + ", not '" + sheet + "'");
        }
        Project project = ProjectFiles.load(file);
        ProjectEvaluation evaluation = ProjectFiles.evaluation(project, Optional.ofNullable(ruleSet));
        Judged judged = Judged.of(evaluation);
        Sheet table = table(project, evaluation).from(judged.made());
        output.write("csv".equals(ending) ? SheetFile.csv(table) : SheetFile.xlsx(table));
        judged.tell(streams(), "schedule");
        return ExitCodes.OK;
    }

    private Sheet table(Project project, ProjectEvaluation evaluation) {
        MessageRenderer words = MessageRenderer.of(language.language());
        return switch (sheet) {
            case "circuits" -> LoadSchedule.of(project).sheet(words);
            case "publish" -> PublishedData.of(evaluation).sheet(words);
            default -> SettingOutSchedule.of(evaluation, date == null ? LocalDate.now() : date).sheet(words);
        };
    }
}
