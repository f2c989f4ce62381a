package slopewright.checks.internal.data;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;

import slopewright.checks.Measure;
import slopewright.checks.Outcome;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.model.util.ValueRange;
import slopewright.siting.ElementNames;

/**
 * Every number lies in the range that such a number can truly have: no accuracy is negative, no length is nothing, no elevation is above
 * the highest mountain. Severity fail: what is computed from such a number is not true, whatever it says.
 */
public final class ValueRangeRule extends ProjectRule {
    private record Ranged(EAttribute attribute, ValueRange range) {
    }

    /** Made by the service loader. */
    public ValueRangeRule() {
        super("DATA-25", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Looked site = evaluation.keepOfSite(id(), () -> look(evaluation.siteElements()));
        Looked aids = look(evaluation.aidElements());
        outcomes.addAll(site.outside());
        outcomes.addAll(aids.outside());
        int compared = site.compared() + aids.compared();
        if (compared > 0 && site.outside().isEmpty() && aids.outside().isEmpty()) {
            outcomes.about(evaluation.project()).met(true).saying("within", Words.count(compared)).add();
        }
    }

    /** How many numbers of some elements were looked at, and what was said of those outside their range. */
    private record Looked(int compared, List<Outcome> outside) {
    }

    private Looked look(List<Identified> elements) {
        OutcomeCollector outcomes = new OutcomeCollector(this);
        Map<EClass, List<Ranged>> known = new HashMap<>();
        int compared = 0;
        for (Identified element : elements) {
            for (Ranged ranged : known.computeIfAbsent(element.eClass(), ValueRangeRule::ranged)) {
                if (element.eGet(ranged.attribute()) instanceof Number number) {
                    compared++;
                    if (!ranged.range().contains(number.doubleValue())) {
                        outside(element, ranged.range(), number.doubleValue(), outcomes);
                    }
                }
            }
        }
        return new Looked(compared, outcomes.outcomes());
    }

    private static List<Ranged> ranged(EClass type) {
        return type.getEAllAttributes().stream()
                .flatMap(attribute -> ValueRange.of(type, attribute).map(range -> new Ranged(attribute, range)).stream()).toList();
    }

    private static void outside(Identified element, ValueRange range, double value, OutcomeCollector outcomes) {
        OutcomeCollector.Entry entry = outcomes.about(element);
        if (Double.isNaN(value)) {
            entry.met(false);
        } else {
            entry.measured(Measure.between(value, range.least(), range.most(), "").strict());
        }
        entry.saying("outside", ElementNames.of(element), Words.term("feature." + range.key()), Words.number(value),
                Words.number(range.least()), Words.number(range.most())).advising("correct").add();
    }
}
