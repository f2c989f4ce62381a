package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.evaluation.comparison.OperationalContext;
import slopewright.model.ApproachHost;
import slopewright.model.Project;

/** Lays out every family on one runway end or helipad. */
@CommandLine.Command(name = "compare", description = "Lay out every family on one runway end or helipad, side by side.")
final class CompareCommand extends Command {

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--end", required = true, paramLabel = "ID", description = "runway end, helipad or approach direction")
    private String end;

    @Option(names = "--rule-set", paramLabel = "KEY",
            description = "rule set of families that it covers; others are laid out under one that does")
    private String ruleSet;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Option(names = "--csv", description = "print comma-separated values")
    private boolean csv;

    @Override
    public Integer call() {
        Project project = ProjectFiles.load(file);
        ProjectEvaluation evaluation = ProjectFiles.evaluation(project, Optional.ofNullable(ruleSet));
        ApproachHost host = ProjectFiles.helipad(project, end);
        List<Candidate> candidates = FamilyComparison.of(evaluation, host);
        if (json) {
            Json.print(json(candidates), streams().out);
        } else if (csv) {
            csv(candidates);
        } else {
            print(candidates);
        }
        return ExitCodes.OK;
    }

    private ObjectNode json(List<Candidate> candidates) {
        ObjectNode node = Json.object();
        node.put("end", end);
        ArrayNode list = node.putArray("families");
        for (Candidate candidate : candidates) {
            ObjectNode one = list.addObject();
            one.put("family", candidate.family().key());
            one.put("name", candidate.family().name());
            one.put("ruleSet", candidate.rules().key());
            one.put("edition", candidate.rules().edition());
            one.put("fits", candidate.fits());
            one.put("reason", candidate.reason());
            one.set("context", context(candidate.context()));
            candidate.siting().ifPresent(siting -> {
                one.put("units", siting.units().size());
                Json.put(one, "distanceM", siting.distanceM());
                Json.put(one, "lowestOnSlopeDeg", siting.lowestOnSlopeDeg());
                Json.put(one, "eyeHeightOverThresholdM", siting.mehtM());
                Json.put(one, "wheelClearanceM", siting.wheelClearanceM());
                Json.put(one, "surfaceSlopeDeg", siting.surface().map(surface -> surface.slopeDeg()).orElse(Double.NaN));
                Json.put(one, "obstacleMarginM", candidate.obstacleMarginM());
                one.put("governingObstacle", candidate.governingObstacle());
                Json.put(one, "rangeDayM", candidate.rangeDayM());
                Json.put(one, "rangeNightM", candidate.rangeNightM());
                one.put("rangeNote", candidate.rangeNote());
                one.put("toConfirm", siting.toConfirm().size());
            });
        }
        return node;
    }

    private static ObjectNode context(OperationalContext context) {
        ObjectNode node = Json.object();
        node.put("leastUnits", context.leastUnits());
        node.put("usualUnits", context.usualUnits());
        Json.put(node, "lampPowerW", context.lampPowerW());
        Json.put(node, "loadW", context.loadW());
        node.put("supply", context.supply());
        context.brightnessSteps().ifPresent(steps -> node.put("brightnessSteps", steps));
        Json.put(node, "batteryHours", context.batteryHours());
        node.put("note", context.note());
        return node;
    }

    private static List<String> needs(OperationalContext context) {
        return List.of(String.valueOf(context.leastUnits()), String.valueOf(context.usualUnits()),
                number(context.lampPowerW().orElse(Double.NaN)), number(context.loadW().orElse(Double.NaN)),
                context.supply().isEmpty() ? "-" : context.supply(),
                context.brightnessSteps().isPresent() ? String.valueOf(context.brightnessSteps().getAsInt()) : "-",
                number(context.batteryHours().orElse(Double.NaN)));
    }

    private static List<String> cells(Candidate candidate) {
        List<String> cells = new ArrayList<>(List.of(candidate.family().key(), candidate.rules().key() + ":" + candidate.rules()
                .edition()));
        if (candidate.siting().isEmpty()) {
            cells.addAll(List.of("-", "-", "-", "-", "-", "-", "-", candidate.reason()));
            return cells;
        }
        var siting = candidate.siting().get();
        cells.add(String.valueOf(siting.units().size()));
        cells.add(number(siting.distanceM()));
        cells.add(number(siting.mehtM()));
        cells.add(number(siting.wheelClearanceM().orElse(Double.NaN)));
        cells.add(number(candidate.obstacleMarginM().orElse(Double.NaN)));
        cells.add(number(candidate.rangeDayM().orElse(Double.NaN)));
        cells.add(number(candidate.rangeNightM().orElse(Double.NaN)));
        cells.add(candidate.reason());
        return cells;
    }

    private static String number(double value) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, "%.2f", value) : "-";
    }

    private void csv(List<Candidate> candidates) {
        streams().out.print("family,ruleSet,units,distanceM,eyeHeightM,wheelClearanceM,obstacleMarginM,rangeDayM,rangeNightM,"
                + "leastUnits,usualUnits,lampPowerW,loadW,supply,brightnessSteps,batteryHours,remark\n");
        for (Candidate candidate : candidates) {
            List<String> cells = cells(candidate);
            cells.addAll(cells.size() - 1, needs(candidate.context()));
            streams().out.print(Csv.line(cells));
        }
    }

    private void print(List<Candidate> candidates) {
        String form = "%-20s %-11s %5s %10s %8s %8s %9s %9s %9s  %s%n";
        streams().out.printf(form, "Family", "Rule set", "Units", "Distance m", "Eye m", "Wheel m", "Margin m", "Day m", "Night m",
                "Remark");
        candidates.forEach(candidate -> streams().out.printf(form, cells(candidate).toArray()));
        String needed = "%-20s %5s %5s %8s %9s %-22s %5s %9s  %s%n";
        streams().out.printf("%n" + needed, "What it needs", "Least", "Usual", "Lamp W", "Load W", "Supply", "Steps", "Battery h", "From");
        for (Candidate candidate : candidates) {
            List<String> row = new ArrayList<>(List.of(candidate.family().key()));
            row.addAll(needs(candidate.context()));
            row.add(candidate.context().note());
            streams().out.printf(needed, row.toArray());
        }
    }
}
