package slopewright.headless.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import slopewright.exchange.SettingOutSchedule;
import slopewright.model.Project;

/** Writes the setting-out schedule of a project. */
@CommandLine.Command(name = "schedule", description = "Write the setting-out schedule of a project, CSV or XLSX by the ending of the file.")
final class ScheduleCommand extends Command {

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws IOException {
        String ending = output.ending(List.of("csv", "xlsx"));
        output.check();
        Project project = ProjectFiles.load(file);
        output.write("csv".equals(ending) ? SettingOutSchedule.csv(project) : SettingOutSchedule.xlsx(project));
        return ExitCodes.OK;
    }
}
