package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.checks.compare.OutcomePairs;
import slopewright.evaluation.MadeFrom;
import slopewright.messages.MessageRenderer;
import slopewright.model.Project;
import slopewright.standards.RuleSets;

/** Checks the same layout under several rule sets and lists what differs, side by side. */
@CommandLine.Command(name = "compare-rule-sets", sortOptions = false,
        description = "Check the same layout under each rule set and list where the outcomes differ, side by side.")
final class CompareRuleSetsCommand extends Command {

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--rule-sets", split = ",", paramLabel = "KEY", description = "rule sets to compare; all where it is not given")
    private List<String> names = List.of();

    @Option(names = "--all", description = "list outcomes that agree too")
    private boolean all;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    private static boolean differs(OutcomePairs.Row row, int ruleSets) {
        return row.outcomes().size() < ruleSets
                || row.outcomes().values().stream().map(CompareRuleSetsCommand::essence).distinct().count() > 1;
    }

    private static String essence(Outcome outcome) {
        return outcome.verdict() + " " + outcome.result() + " " + number(outcome.limit().orElse(Double.NaN)) + " "
                + number(outcome.value().orElse(Double.NaN));
    }

    @Override
    public Integer call() {
        List<String> ruleSets = !names.isEmpty() ? names.stream().distinct().toList()
                : RuleSets.all().stream().map(rules -> rules.key() + ":" + rules.edition()).toList();
        ruleSets.forEach(name -> ProjectFiles.rules(Optional.of(name)));
        Project project = ProjectFiles.load(file);
        OutcomePairs pairs = new OutcomePairs();
        Map<String, CheckResult> results = new LinkedHashMap<>();
        for (String name : ruleSets) {
            results.put(name, Checks.run(project, Optional.of(name)));
            pairs.add(name, results.get(name).outcomes());
        }
        List<OutcomePairs.Row> rows = pairs.rows().stream().filter(row -> all || differs(row, ruleSets.size())).toList();
        if (json) {
            ObjectNode document = json(results, rows);
            ObjectNode made = Json.object(MadeFrom.of(project, ProjectFiles.rules(project, Optional.of(ruleSets.get(0)))));
            made.remove("ruleSet");
            document.set("madeFrom", made);
            Json.print(document, streams().out);
        } else {
            print(results, rows);
        }
        return ExitCodes.OK;
    }

    private static ObjectNode json(Map<String, CheckResult> results, List<OutcomePairs.Row> rows) {
        ObjectNode node = Json.object();
        ArrayNode sets = node.putArray("ruleSets");
        results.keySet().forEach(sets::add);
        ObjectNode counts = node.putObject("counts");
        results.forEach((name, result) -> {
            ObjectNode under = counts.putObject(name);
            result.counts().forEach((verdict, count) -> under.put(verdict.key(), count));
        });
        ArrayNode list = node.putArray("differences");
        for (OutcomePairs.Row row : rows) {
            ObjectNode entry = list.addObject();
            entry.put("rule", row.rule());
            entry.put("element", row.element());
            ObjectNode outcomes = entry.putObject("outcomes");
            row.outcomes().forEach((ruleSet, outcome) -> {
                ObjectNode under = outcomes.putObject(ruleSet);
                under.put("verdict", outcome.verdict().key());
                under.put("outcome", outcome.result().name());
                Json.put(under, "value", outcome.value());
                Json.put(under, "limit", outcome.limit());
                under.put("unit", outcome.unit());
                under.put("citation", outcome.citation().map(citation -> citation.text().english()).orElse(null));
                under.put("provenance", outcome.citation().map(citation -> citation.provenance().key()).orElse(null));
            });
        }
        return node;
    }

    private void print(Map<String, CheckResult> results, List<OutcomePairs.Row> rows) {
        streams().sayf("%d outcomes differ between %d rule sets", rows.size(), results.size());
        results.forEach((name, result) -> streams().sayf("    %-12s %d not met, %d to clear up", name, result.counts()
                .get(Verdict.NOT_MET), result.counts().get(Verdict.TO_CLEAR_UP)));
        for (OutcomePairs.Row row : rows) {
            streams().say(row.rule() + "  " + row.path());
            for (String ruleSet : results.keySet()) {
                Outcome outcome = row.outcomes().get(ruleSet);
                streams().sayf("    %-12s %s", ruleSet, outcome == null ? "says nothing" : text(outcome));
            }
        }
    }

    private static String text(Outcome outcome) {
        String numbers = outcome.value().isEmpty() ? "" : " " + number(outcome.value().getAsDouble()) + " against "
                + number(outcome.limit().orElse(Double.NaN)) + " " + outcome.unit();
        return MessageRenderer.of(Locale.ENGLISH).write(outcome.verdict().term()) + numbers
                + outcome.citation().map(citation -> "  (" + citation.text() + " [" + citation.provenance().key() + "])").orElse("");
    }

    private static String number(double value) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, "%.3f", value) : "-";
    }
}
