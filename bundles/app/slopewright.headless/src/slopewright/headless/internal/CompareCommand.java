package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import slopewright.checks.Verdict;
import slopewright.checks.compare.Criterion;
import slopewright.checks.compare.FamilyVerdicts;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.OperationalContext;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetCell;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.siting.Side;
import slopewright.siting.Siting;

/** Lays out every family on one runway end or helipad. */
@CommandLine.Command(name = "compare", description = "Lay out every family on one runway end or helipad, side by side.")
final class CompareCommand extends Command {

    private static final List<String> COLUMNS = List.of("family", "ruleSet", "fits", "score", "units", "distanceM", "mehtM",
            "nominalEyeHeightM", "wheelClearanceM", "obstacleMarginM", "rangeDayM", "rangeNightM", "leastUnits", "usualUnits", "lampPowerW",
            "loadW", "supply", "brightnessSteps", "batteryHours", "rulesApplied", "remark", "side", "place");

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--end", required = true, paramLabel = "ID", description = "runway end, helipad or approach direction")
    private String end;

    @Option(names = "--rule-set", paramLabel = "KEY",
            description = "rule set of families that it covers; others are laid out under one that does")
    private String ruleSet;

    @Option(names = "--side", paramLabel = "SIDE", description = "left, right or both, seen in the landing direction, or each of them; "
            + "that of what stands there, else left, where it is not given")
    private String side;

    @Option(names = "--weights", paramLabel = "WEIGHTS", description = "how much each criterion of the score counts, 0 to 5, such as "
            + "rules=3,load=0; of rules, wheels, obstacles, eye, units and load, each that is not named counts once")
    private String weights;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Option(names = "--csv", description = "print comma-separated values")
    private boolean csv;

    private Map<Criterion, Integer> weighing;

    @Override
    public Integer call() {
        Project project = ProjectFiles.load(file);
        ProjectEvaluation evaluation = ProjectFiles.evaluation(project, Optional.ofNullable(ruleSet));
        ApproachHost host = ProjectFiles.helipad(project, end);
        weighing = weights(weights);
        List<FamilyVerdicts> families = FamilyVerdicts.of(evaluation, host, sides(), weighing);
        if (json) {
            Json.print(json(families), MadeFrom.of(evaluation), streams().out);
        } else if (csv) {
            csv(families);
        } else {
            print(families);
        }
        return ExitCodes.OK;
    }

    /** Reads weights that a command was given; alike where it was not. */
    static Map<Criterion, Integer> weights(String given) {
        try {
            return Criterion.weights(Objects.requireNonNullElse(given, ""));
        } catch (IllegalArgumentException e) {
            throw new UsageException("--weights: " + e.getMessage());
        }
    }

    private List<Optional<Side>> sides() {
        if (side == null) {
            return List.of(Optional.empty());
        }
        if ("each".equals(side)) {
            return Stream.of(Side.values()).map(Optional::of).toList();
        }
        Optional<Side> named = Stream.of(Side.values()).filter(known -> known.key().equals(side)).findFirst();
        if (named.isEmpty()) {
            throw new UsageException("--side: '" + side + "' is none of left, right, both, each");
        }
        return List.of(named);
    }

    private ObjectNode json(List<FamilyVerdicts> families) {
        ObjectNode node = Json.object();
        node.put("end", end);
        ArrayNode against = node.putArray("place");
        families.stream().findFirst().ifPresent(first -> first.place().reasons().forEach(reason -> against.add(reason.english())));
        ObjectNode counting = node.putObject("weights");
        weighing.forEach((criterion, weight) -> counting.put(criterion.key(), weight));
        ArrayNode list = node.putArray("families");
        for (FamilyVerdicts verdicts : families) {
            Candidate candidate = verdicts.candidate();
            ObjectNode entry = list.addObject();
            entry.put("family", candidate.family().key());
            entry.put("name", candidate.family().name());
            entry.put("ruleSet", candidate.rules().key());
            entry.put("edition", candidate.rules().edition());
            candidate.side().ifPresent(where -> entry.put("side", where.key()));
            entry.put("fits", verdicts.fit() == Candidate.Fit.FITS);
            entry.put("fit", verdicts.fit().key());
            score(verdicts, families).ifPresent(score -> Json.put(entry, "score", score));
            ObjectNode rules = entry.putObject("rules");
            for (Verdict verdict : Verdict.values()) {
                rules.put(verdict.key(), verdicts.count(verdict));
            }
            entry.put("rulesApplied", verdicts.rulesApplied());
            entry.put("reason", text(verdicts.reasons()));
            entry.set("context", context(candidate.context()));
            candidate.siting().ifPresent(siting -> {
                entry.put("units", siting.units().size());
                Json.put(entry, "distanceM", siting.distanceM());
                Json.put(entry, "lowestOnSlopeDeg", siting.lowestOnSlopeDeg());
                Json.put(entry, "eyeHeightOverThresholdM", siting.mehtM());
                Json.put(entry, "nominalEyeHeightM", siting.nominalEyeHeightM());
                Json.put(entry, "wheelClearanceM", siting.wheelClearanceM());
                Json.put(entry, "surfaceSlopeDeg", siting.surface().map(surface -> surface.slopeDeg()).orElse(Double.NaN));
                Json.put(entry, "obstacleMarginM", candidate.obstacleMarginM());
                entry.put("governingObstacle", candidate.governingObstacle());
                Json.put(entry, "rangeDayM", candidate.rangeDayM());
                Json.put(entry, "rangeNightM", candidate.rangeNightM());
                entry.put("rangeNote", text(candidate.range().notes()));
                candidate.standing().ifPresent(standing -> entry.set("standing", standing(standing)));
                entry.put("toConfirm", siting.toConfirm().size());
            });
        }
        return node;
    }

    private static String text(List<Message> sentences) {
        return String.join(" ", sentences.stream().map(Message::english).map(said -> said.endsWith(".") ? said : said + ".").toList());
    }

    /** The same figures of the aid of the family as it stands. */
    private static ObjectNode standing(AidEvaluation standing) {
        ObjectNode node = Json.object();
        node.put("aid", standing.aid().getId());
        standing.siting().value().ifPresent(siting -> {
            Json.put(node, "distanceM", siting.distanceM());
            Json.put(node, "eyeHeightOverThresholdM", siting.mehtM());
            Json.put(node, "wheelClearanceM", siting.wheelClearanceM());
        });
        Json.put(node, "obstacleMarginM", standing.marginM());
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
        node.put("note", text(context.notes()));
        return node;
    }

    private static List<SheetCell> needs(OperationalContext context) {
        Double steps = context.brightnessSteps().isPresent() ? Double.valueOf(context.brightnessSteps().getAsInt()) : null;
        return List.of(count(context.leastUnits()), count(context.usualUnits()), number(context.lampPowerW()), number(context.loadW()),
                SheetCell.text(context.supply()), SheetCell.number(steps, 0, ""), number(context.batteryHours()));
    }

    private static String word(Candidate.Fit fit) {
        return switch (fit) {
            case FITS -> "yes";
            case TO_CLEAR_UP -> "open";
            case DOES_NOT_FIT -> "no";
        };
    }

    /** What it comes to by the weights; empty where it breaks a rule or has no layout. */
    private Optional<Double> score(FamilyVerdicts verdicts, List<FamilyVerdicts> families) {
        return Criterion.score(verdicts.weighed(), families.stream().map(FamilyVerdicts::weighed).toList(), weighing);
    }

    private List<SheetCell> figures(FamilyVerdicts verdicts, List<FamilyVerdicts> families) {
        Candidate candidate = verdicts.candidate();
        Optional<Siting> siting = candidate.siting();
        return List.of(SheetCell.text(candidate.family().key()),
                SheetCell.text(candidate.rules().key() + ":" + candidate.rules().edition()),
                SheetCell.text(word(verdicts.fit())), SheetCell.number(score(verdicts, families).orElse(null), 0, ""),
                siting.map(laid -> count(laid.units().size())).orElse(SheetCell.text("")),
                number(siting.map(Siting::distanceM)), number(siting.map(Siting::mehtM)),
                number(siting.map(Siting::nominalEyeHeightM).orElseGet(OptionalDouble::empty)),
                number(siting.map(Siting::wheelClearanceM).orElseGet(OptionalDouble::empty)), number(candidate.obstacleMarginM()),
                number(candidate.rangeDayM()), number(candidate.rangeNightM()));
    }

    private static SheetCell count(int number) {
        return SheetCell.number((double) number, 0);
    }

    private static SheetCell number(OptionalDouble value) {
        return number(value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty());
    }

    private static SheetCell number(Optional<Double> value) {
        return SheetCell.number(value.orElse(null), 2, "");
    }

    private void csv(List<FamilyVerdicts> families) {
        List<List<SheetCell>> rows = new ArrayList<>();
        for (FamilyVerdicts verdicts : families) {
            Candidate candidate = verdicts.candidate();
            List<SheetCell> row = new ArrayList<>(figures(verdicts, families));
            row.addAll(needs(candidate.context()));
            row.add(count(verdicts.rulesApplied()));
            row.add(SheetCell.text(text(verdicts.reasons())));
            row.add(SheetCell.text(candidate.side().map(Side::key).orElse("")));
            row.add(SheetCell.text(verdicts.place().isClear() ? "" : verdicts.place().rules().english()));
            rows.add(row);
        }
        streams().print(new Sheet("Families", COLUMNS, rows, List.of()));
    }

    private static Object[] texts(List<SheetCell> cells, String last) {
        return Stream.concat(cells.stream().map(cell -> cell.text().isEmpty() ? "-" : cell.text()), Stream.of(last)).toArray();
    }

    private void print(List<FamilyVerdicts> families) {
        families.stream().findFirst().map(first -> first.place().reasons()).filter(reasons -> !reasons.isEmpty())
                .ifPresent(reasons -> streams().say(Message.of("comparison.place", Words.name(text(reasons))).english()));
        String form = "%-20s %-11s %-4s %5s %5s %10s %8s %9s %8s %9s %9s %9s  %s";
        streams().sayf(form, "Family", "Rule set", "Fits", "Score", "Units", "Distance m", "MEHT m", "Nominal m", "Wheel m", "Margin m",
                "Day m", "Night m", "Remark");
        families.forEach(verdicts -> streams().sayf(form, texts(figures(verdicts, families), (verdicts.candidate().side()
                .map(where -> Message.of("comparison.laid-on", Words.term("side." + where.key())).english() + " ").orElse("")
                + text(verdicts.reasons())))));
        streams().say(Criterion.message(weighing).english());
        streams().say(Message.of("comparison.fewer").english());
        streams().say("In the order of the verdicts, then of the scores: what is to be cleared up may score more than what fits and is "
                + "not the better for it.");
        String needed = "%-20s %5s %5s %8s %9s %-22s %5s %9s  %s";
        streams().say("");
        streams().sayf(needed, "What it needs", "Least", "Usual", "Lamp W", "Load W", "Supply", "Steps", "Battery h", "From");
        Set<String> once = new HashSet<>();
        for (FamilyVerdicts verdicts : families) {
            Candidate candidate = verdicts.candidate();
            if (!once.add(candidate.family().key() + candidate.context().leastUnits() + candidate.context().usualUnits())) {
                continue;
            }
            List<SheetCell> row = new ArrayList<>(List.of(SheetCell.text(candidate.family().key())));
            row.addAll(needs(candidate.context()));
            streams().sayf(needed, texts(row, text(candidate.context().notes())));
        }
    }
}
