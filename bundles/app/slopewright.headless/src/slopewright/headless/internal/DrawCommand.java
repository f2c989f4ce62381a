package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import slopewright.checks.Checks;
import slopewright.drawing.View;
import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.pilot.PilotScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.sheet.SheetFormat;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Lengths;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.report.Drawings;
import slopewright.report.ReportException;
import slopewright.siting.SitingException;

/** Writes one drawing of an approach aid. */
@CommandLine.Command(name = "draw", sortOptions = false,
        description = "Write a drawing of an approach aid on drawing paper: SVG, DXF, PDF or PNG by the ending of the file.")
final class DrawCommand extends Command {

    private static final double RUNWAY_VIEW_M = 1500;
    private static final double HELIPAD_VIEW_M = 300;

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--view", required = true, paramLabel = "VIEW",
            description = "plan, section, near, detail, surface, pilot, signals, directions, location, circuit, light or mounting")
    private String view;

    @Option(names = "--aid", paramLabel = "ID", description = "approach aid, by id or name; may be left out where there is one")
    private String aid;

    @Option(names = "--rule-set", paramLabel = "KEY", description = "rule set instead of the aid's or project's own")
    private String ruleSet;

    @Option(names = "--paper", defaultValue = "A4", paramLabel = "SIZE",
            description = "A4 (default), A3, A2, A1, A0, letter, ANSI-B, ANSI-C, ANSI-D or ANSI-E")
    private String paper;

    @Option(names = "--scale", paramLabel = "1:N", description = "scale; the largest usual one that fits where it is not given")
    private String scale;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "date to print; today where it is not given")
    private String date;

    @Option(names = "--daylight", defaultValue = "dusk", paramLabel = "LIGHT", description = "day, dusk or night in a pilot's view")
    private String daylight;

    @Option(names = "--along-m", paramLabel = "M",
            description = "pilot's eye; on the slope 1500 m before a threshold or 300 m before a hover point where it is not given")
    private String along;

    @Option(names = "--right-m", defaultValue = "0", paramLabel = "M", description = "pilot's eye")
    private String right;

    @Option(names = "--height-m", paramLabel = "M", description = "pilot's eye; on the slope where it is not given")
    private String height;

    @Mixin
    private LanguageOption language;

    @Mixin
    private UnitsOption units;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() {
        String ending = output.ending(List.of("svg", "dxf", "pdf", "png"));
        View wanted = View.find(view).orElseThrow(() -> new UsageException("--view takes "
                + String.join(", ", Arrays.stream(View.values()).map(View::key).toList()) + ", not '" + view + "'"));
        SheetFormat size = word("--paper", paper, SheetFormat.values(), SheetFormat::key);
        Daylight light = word("--daylight", daylight, Daylight.values(), each -> each.name().toLowerCase(Locale.ROOT));
        int ratio = ratio(scale);
        String printed = ReportCommand.checkedDate(date);
        output.check();
        Project project = ProjectFiles.load(file);
        ApproachAid chosen = chosen(project);
        try {
            ProjectFiles.requireRules(project, chosen, Optional.ofNullable(ruleSet));
            ProjectEvaluation all = ProjectFiles.evaluation(project, Optional.ofNullable(ruleSet));
            AidEvaluation evaluation = all.aid(chosen);
            ProjectFiles.standing(evaluation);
            DrawnAid drawn = DrawnAid.of(evaluation, units.units().renderer(language.language()));
            output.write(Drawings.write(new Drawings.Subject(drawn, wanted, eye(drawn), light),
                    new Drawings.Layout(size, ratio, MadeFrom.of(project, evaluation.rules()), printed,
                            language.language(), Optional.of(new Drawings.Checked(all, Checks.run(all, rule -> true)))),
                    Drawings.Format.valueOf(ending.toUpperCase(Locale.ROOT))));
        } catch (SitingException e) {
            throw new UsageException("approach aid " + chosen.getId() + ": " + e.getMessage());
        } catch (IllegalArgumentException e) {
            throw new UsageException(e.getMessage());
        } catch (ReportException e) {
            throw new InputException(file + ": " + e.getMessage());
        }
        return ExitCodes.OK;
    }

    private static <T> T word(String option, String given, T[] values, Function<T, String> name) {
        return Arrays.stream(values).filter(value -> name.apply(value).equalsIgnoreCase(given)).findFirst()
                .orElseThrow(() -> new UsageException(option + " takes " + String.join(", ", Arrays.stream(values).map(name).toList())
                        + ", not '" + given + "'"));
    }

    /** Reads the number N of a scale; zero where none was given. */
    private static int ratio(String given) {
        if (given == null) {
            return 0;
        }
        String number = given.startsWith("1:") ? given.substring(2) : given;
        if (!number.matches("[1-9][0-9]{0,6}")) {
            throw new UsageException("--scale takes a scale such as 1:500, not '" + given + "'");
        }
        return Integer.parseInt(number);
    }

    private ApproachAid chosen(Project project) {
        if (aid != null) {
            return ProjectFiles.aid(project, aid);
        }
        List<ApproachAid> all = Projects.aids(project);
        if (all.size() != 1) {
            throw new UsageException("the project has " + all.size() + " approach aids; name one with --aid: "
                    + String.join(", ", all.stream().map(each -> each.getId() + " (" + each.getName() + ")").toList()));
        }
        return all.get(0);
    }

    private FramePoint eye(DrawnAid drawn) {
        double place = along == null ? -(drawn.host() instanceof RunwayEnd ? RUNWAY_VIEW_M : HELIPAD_VIEW_M) : length("--along-m", along);
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
