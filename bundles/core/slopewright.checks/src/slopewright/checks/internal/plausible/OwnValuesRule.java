package slopewright.checks.internal.plausible;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.standards.CitedValue;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSets;

/**
 * A value of an organisation's own rule set, and a number of a table of its own, is no more than three times that of the nearest shipped
 * edition, no less than a third of it, and of its sign, as for an override (own band: a length in feet is 3.3 times that in metres). Of a
 * rule set without values of its own there is nothing to say. A warning: the value is the organisation's to answer for; one in another unit
 * or with another digit lets everything pass that it should judge.
 */
public final class OwnValuesRule extends ProjectRule {
    private static final double MOST_CHANGE = 3;

    /** Made by the service loader. */
    public OwnValuesRule() {
        super("DATA-63", Severity.WARNING);
    }

    /** A value with what it is to the nearest one of a shipped edition. */
    private record Changed(CitedValue own, CitedValue shipped) {
        double times() {
            return own.value() / shipped.value();
        }

        /** Returns how far it is off, the same for twice and for half; a changed sign is farthest. */
        double farness() {
            return times() > 0 ? Math.abs(Math.log(times())) : Double.POSITIVE_INFINITY;
        }
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        for (AidEvaluation aid : evaluation.aids()) {
            AidRule.guarded(aid.aid(), outcomes, () -> {
                check(aid, outcomes);
                tables(aid, outcomes);
            });
        }
    }

    private static void check(AidEvaluation aid, OutcomeCollector outcomes) {
        List<CitedValue> own = aid.rules().values().stream()
                .filter(value -> value.citation().provenance() == Provenance.ORGANISATION).toList();
        List<Changed> changed = own.stream().map(OwnValuesRule::nearest).flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(Changed::farness).reversed()).toList();
        if (changed.isEmpty()) {
            return;
        }
        List<Changed> far = changed.stream().filter(one -> !measure(one).isMet()).toList();
        (far.isEmpty() ? changed.subList(0, 1) : far).forEach(one -> outcomes.about(aid.aid()).measured(measure(one))
                .saying("compared", Words.name(one.own().key()), Words.number(one.own().value()), Words.name(one.own().unit()),
                        Words.number(one.shipped().value()), Words.number(MOST_CHANGE))
                .advising("compare").add());
    }

    /** A number of an own table with what it is to the nearest one of a shipped table. */
    private record Cell(String name, double own, double shipped) {
        double farness() {
            return own / shipped > 0 ? Math.abs(Math.log(own / shipped)) : Double.POSITIVE_INFINITY;
        }

        Measure measure() {
            return Measure.between(own / shipped, 1 / MOST_CHANGE, MOST_CHANGE, "");
        }
    }

    private static void tables(AidEvaluation aid, OutcomeCollector outcomes) {
        Map<String, Double> own = TableCells.of(aid.rules(), citation -> citation.provenance() == Provenance.ORGANISATION);
        if (own.isEmpty()) {
            return;
        }
        List<Map<String, Double>> shipped = RuleSets.all().stream().map(rules -> TableCells.of(rules, citation -> true)).toList();
        List<Cell> cells = own.entrySet().stream().map(entry -> shipped.stream().map(table -> table.get(entry.getKey()))
                .filter(value -> value != null && value != 0).map(value -> new Cell(entry.getKey(), entry.getValue(), value))
                .min(Comparator.comparingDouble(Cell::farness))).flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(Cell::farness).reversed()).toList();
        List<Cell> far = cells.stream().filter(cell -> !cell.measure().isMet()).toList();
        (far.isEmpty() ? cells.stream().limit(1).toList() : far).forEach(cell -> outcomes.about(aid.aid()).measured(cell.measure())
                .saying("table", Words.name(cell.name()), Words.number(cell.own()), Words.number(cell.shipped()),
                        Words.number(MOST_CHANGE)).advising("compare").add());
    }

    private static Measure measure(Changed one) {
        return Measure.between(one.times(), 1 / MOST_CHANGE, MOST_CHANGE, "");
    }

    private static Optional<Changed> nearest(CitedValue own) {
        return RuleSets.all().stream().map(shipped -> shipped.find(own.key()).orElse(null)).filter(Objects::nonNull)
                .filter(shipped -> shipped.value() != 0).map(shipped -> new Changed(own, shipped))
                .min(Comparator.comparingDouble(Changed::farness));
    }
}
