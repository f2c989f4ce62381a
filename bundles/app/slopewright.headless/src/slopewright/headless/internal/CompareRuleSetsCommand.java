package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.compare.OutcomePairs;
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
        ruleSets.forEach(name -> pairs.add(name, Checks.run(project, Optional.of(name)).outcomes()));
        List<OutcomePairs.Row> rows = pairs.rows().stream().filter(row -> all || differs(row, ruleSets.size())).toList();
        if (json) {
            Json.print(json(ruleSets, rows), streams().out);
        } else {
            print(ruleSets, rows);
        }
        return ExitCodes.OK;
    }

    private static ObjectNode json(List<String> ruleSets, List<OutcomePairs.Row> rows) {
        ObjectNode node = Json.object();
        ArrayNode sets = node.putArray("ruleSets");
        ruleSets.forEach(sets::add);
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

    private void print(List<String> ruleSets, List<OutcomePairs.Row> rows) {
        for (OutcomePairs.Row row : rows) {
            streams().say(row.rule() + "  " + row.path());
            for (String ruleSet : ruleSets) {
                Outcome outcome = row.outcomes().get(ruleSet);
                streams().sayf("    %-12s %s", ruleSet, outcome == null ? "says nothing" : text(outcome));
            }
        }
        streams().sayf("%d outcomes differ between %d rule sets", rows.size(), ruleSets.size());
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
