package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.drawing.DrawnAid;
import slopewright.drawing.PilotScene;
import slopewright.drawing.PlanScene;
import slopewright.drawing.Scene;
import slopewright.drawing.SectionScene;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Lengths;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.report.Drawings;
import slopewright.report.ReportException;
import slopewright.siting.SitingException;
import slopewright.siting.aid.AidLayouts;
import slopewright.standards.RuleSet;

/** Writes one drawing of an approach aid. */
@CommandLine.Command(name = "draw", sortOptions = false,
        description = "Write a drawing of an approach aid: SVG, DXF, PDF or PNG by the ending of the file.")
final class DrawCommand extends Command {

    private static final double DEFAULT_VIEW_M = 1500;

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--view", required = true, paramLabel = "VIEW", description = "plan, surface, section or pilot")
    private String view;

    @Option(names = "--aid", paramLabel = "ID", description = "approach aid, by id or name; may be left out where there is one")
    private String aid;

    @Option(names = "--rule-set", paramLabel = "KEY", description = "rule set instead of the aid's or project's own")
    private String ruleSet;

    @Option(names = "--along-m", paramLabel = "M",
            description = "pilot's eye; on the slope 1500 m before the threshold where it is not given")
    private String along;

    @Option(names = "--right-m", defaultValue = "0", paramLabel = "M", description = "pilot's eye")
    private String right;

    @Option(names = "--height-m", paramLabel = "M", description = "pilot's eye; on the slope where it is not given")
    private String height;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() {
        String ending = output.ending(List.of("svg", "dxf", "pdf", "png"));
        if (!List.of("plan", "surface", "section", "pilot").contains(view)) {
            throw new UsageException("--view takes plan, surface, section or pilot, not '" + view + "'");
        }
        output.check();
        Project project = ProjectFiles.load(file);
        ApproachAid chosen = chosen(project);
        try {
            RuleSet rules = ProjectFiles.rules(project, Optional.ofNullable(ruleSet).or(() -> Optional.ofNullable(chosen.getRuleSetKey())));
            DrawnAid drawn = DrawnAid.of(chosen, AidLayouts.asLaid(chosen, rules));
            output.write(Drawings.write(scene(drawn), Drawings.Format.valueOf(ending.toUpperCase(Locale.ROOT))));
        } catch (SitingException e) {
            throw new UsageException("approach aid " + chosen.getId() + ": " + e.getMessage());
        } catch (ReportException e) {
            throw new InputException(file + ": " + e.getMessage());
        }
        return ExitCodes.OK;
    }

    private ApproachAid chosen(Project project) {
        if (aid != null) {
            return ProjectFiles.aid(project, aid);
        }
        List<ApproachAid> all = Projects.aids(project);
        if (all.size() != 1) {
            throw new UsageException("the project has " + all.size() + " approach aids; name one with --aid: "
                    + String.join(", ", all.stream().map(one -> one.getId() + " (" + one.getName() + ")").toList()));
        }
        return all.get(0);
    }

    private Scene scene(DrawnAid drawn) {
        return switch (view) {
            case "plan" -> PlanScene.layout(drawn);
            case "surface" -> PlanScene.surface(drawn);
            case "section" -> SectionScene.of(drawn);
            default -> PilotScene.of(drawn, eye(drawn));
        };
    }

    private FramePoint eye(DrawnAid drawn) {
        double place = along == null ? -DEFAULT_VIEW_M : length("--along-m", along);
        FramePoint onSlope = PilotScene.eyeOnSlope(drawn, -place);
        return new FramePoint(place, length("--right-m", right), height == null ? onSlope.heightM() : length("--height-m", height));
    }

    private static double length(String option, String text) {
        try {
            return Lengths.parse(text);
        } catch (IllegalArgumentException e) {
            throw new UsageException(option + ": " + e.getMessage());
        }
    }
}
