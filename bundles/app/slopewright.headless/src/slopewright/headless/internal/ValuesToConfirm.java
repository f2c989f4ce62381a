package slopewright.headless.internal;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import slopewright.checks.RestingValues;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Lists what no rule set has from a text that was read, by the weight that it has in verdicts: where to begin to confirm. */
final class ValuesToConfirm {

    private record Row(Citation citation, String number, int verdicts) {
    }

    private ValuesToConfirm() {
    }

    /** Returns the page, line by line; every rule set is weighed with all projects, checked under it without their confirmations. */
    static List<String> list(List<Project> projects) {
        List<String> lines = new ArrayList<>(List.of("# Values to confirm", "",
                "Made by `slopewright rule-sets --to-confirm`; the number of verdicts is that of the projects named there, without their",
                "own confirmations. A value with 0 carries no verdict of theirs.", ""));
        for (RuleSet rules : RuleSets.all()) {
            List<Row> rows = rows(rules, projects);
            long all = rules.values().size() + rules.choices().size() + rules.tableCitations().stream().distinct().count();
            lines.add("## " + rules.key() + ":" + rules.edition());
            lines.add("");
            lines.add(rows.size() + " of " + all + " values, choices and tables.");
            lines.add("");
            lines.add("| verdicts | value | as held | class | source |");
            lines.add("| ---: | --- | --- | --- | --- |");
            rows.forEach(row -> lines.add("| " + row.verdicts() + " | `" + row.citation().key() + "` | " + row.number() + " | "
                    + row.citation().provenance().key() + " | " + row.citation().text().english().replace("|", "\\|") + " |"));
            lines.add("");
        }
        lines.remove(lines.size() - 1);
        return lines;
    }

    private static List<Row> rows(RuleSet rules, List<Project> projects) {
        Map<String, Integer> weights = weights(rules, projects);
        List<Row> rows = new ArrayList<>();
        for (CitedValue value : rules.values()) {
            add(rows, weights, value.citation(), trimmed(value.printed()) + " " + value.printedUnit());
        }
        rules.choices().forEach(choice -> add(rows, weights, choice.citation(), choice.word().key()));
        rules.tableCitations().stream().distinct().forEach(citation -> add(rows, weights, citation, "table"));
        rows.sort(Comparator.comparingInt(Row::verdicts).reversed().thenComparing(row -> row.citation().key()));
        return rows;
    }

    private static void add(List<Row> rows, Map<String, Integer> weights, Citation citation, String number) {
        if (citation.provenance().needsConfirmation()) {
            rows.add(new Row(citation, number, weights.getOrDefault(citation.key(), 0)));
        }
    }

    private static Map<String, Integer> weights(RuleSet rules, List<Project> projects) {
        Map<String, Integer> weights = new HashMap<>();
        String name = rules.key() + ":" + rules.edition();
        for (Project project : projects) {
            project.getConfirmations().clear();
            RestingValues.of(List.of(ProjectEvaluation.of(project, Optional.of(name)))).stream()
                    .filter(value -> value.rules().key().equals(rules.key()) && value.rules().edition().equals(rules.edition()))
                    .forEach(value -> weights.merge(value.key(), value.restsOnIt(), Integer::sum));
        }
        return weights;
    }

    private static String trimmed(double number) {
        return new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
    }
}
