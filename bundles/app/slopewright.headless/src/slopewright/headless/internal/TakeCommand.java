package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import slopewright.evaluation.ProjectRules;
import slopewright.evaluation.landing.TakenDirection;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;

/** Takes a landing direction and slope that the directions say are clear. */
@CommandLine.Command(name = "take", sortOptions = false,
        description = "Turn the approach of an indicator at a helipad to a landing direction and lay it out anew for a slope.")
final class TakeCommand extends Command {

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--aid", required = true, paramLabel = "ID", description = "approach aid in the file, by id or name")
    private String aid;

    @Option(names = "--bearing-deg", required = true, paramLabel = "DEG", converter = NumberWord.class,
            description = "true landing direction")
    private double bearingDeg;

    @Option(names = "--slope-deg", required = true, paramLabel = "DEG", converter = NumberWord.class, description = "slope of the approach")
    private double slopeDeg;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() {
        output.ending(List.of(ProjectFile.EXTENSION));
        output.check();
        if (!(bearingDeg >= 0 && bearingDeg <= 360)) {
            throw new UsageException("--bearing-deg must lie between 0 and 360");
        }
        Project project = ProjectFiles.load(file);
        ApproachAid found = ProjectFiles.aid(project, aid);
        TakenDirection.take(found, bearingDeg, slopeDeg, ProjectRules.of(project, found, Optional.empty()));
        Ids.assign(project);
        output.write(project);
        return ExitCodes.OK;
    }
}
