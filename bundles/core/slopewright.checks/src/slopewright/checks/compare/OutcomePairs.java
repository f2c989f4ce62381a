package slopewright.checks.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import slopewright.checks.Outcome;
import slopewright.messages.Argument;
import slopewright.messages.Message;

/**
 * Brings outcomes of several checks together that say the same thing. One rule may say several things about one element: of an obstacle
 * for each indicator, of an indicator for each aeroplane group. Those belong together that say the same of the same, then those that name
 * the same; what is left over follows in its order, for what governs an indicator may be another thing than before.
 */
public final class OutcomePairs {
    private static final List<Function<Outcome, Object>> LIKENESS = List.of(outcome -> outcome.message().key() + names(outcome),
            OutcomePairs::names, outcome -> "");

    private final List<Row> rows = new ArrayList<>();
    private final Map<String, List<Row>> byElement = new LinkedHashMap<>();

    /**
     * One thing that is said.
     *
     * @param rule     id of the rule
     * @param element  id of the element
     * @param path     the element for people
     * @param outcomes the outcome of each check that has one, by the name of the check
     */
    public record Row(String rule, String element, Argument path, Map<String, Outcome> outcomes) {

        private boolean isLike(Outcome other, Function<Outcome, Object> likeness) {
            return outcomes.values().stream().map(likeness).anyMatch(likeness.apply(other)::equals);
        }
    }

    /**
     * Takes the outcomes of one check.
     *
     * @param check    name of the check, another each time
     * @param outcomes its outcomes
     */
    public void add(String check, List<Outcome> outcomes) {
        Map<String, List<Outcome>> fresh = new LinkedHashMap<>();
        outcomes.forEach(outcome -> fresh.computeIfAbsent(outcome.rule() + " " + outcome.elementId(), any -> new ArrayList<>())
                .add(outcome));
        fresh.forEach((element, found) -> take(check, byElement.computeIfAbsent(element, any -> new ArrayList<>()), found));
    }

    private void take(String check, List<Row> known, List<Outcome> found) {
        List<Outcome> left = new ArrayList<>(found);
        for (Function<Outcome, Object> likeness : LIKENESS) {
            for (Outcome outcome : List.copyOf(left)) {
                known.stream().filter(row -> !row.outcomes().containsKey(check) && row.isLike(outcome, likeness)).findFirst()
                        .ifPresent(row -> {
                            row.outcomes().put(check, outcome);
                            left.remove(outcome);
                        });
            }
        }
        left.forEach(outcome -> begin(known, outcome).outcomes().put(check, outcome));
    }

    private Row begin(List<Row> known, Outcome outcome) {
        Row row = new Row(outcome.rule(), outcome.elementId(), outcome.elementPath(), new LinkedHashMap<>());
        known.add(row);
        rows.add(row);
        return row;
    }

    /** Returns everything that was said, in the order in which it was first said. */
    public List<Row> rows() {
        return List.copyOf(rows);
    }

    /** Returns what an outcome names, in its order. */
    private static List<String> names(Outcome outcome) {
        List<String> names = new ArrayList<>();
        collect(outcome.message(), names);
        return names;
    }

    private static void collect(Argument argument, List<String> names) {
        if (argument instanceof Argument.Name name) {
            names.add(name.text());
        } else if (argument instanceof Argument.Series series) {
            series.items().forEach(item -> collect(item, names));
        } else if (argument instanceof Message message) {
            message.arguments().forEach(item -> collect(item, names));
        }
    }
}
