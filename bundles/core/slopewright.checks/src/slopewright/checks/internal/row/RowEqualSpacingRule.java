package slopewright.checks.internal.row;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The units of a row are equally spaced. Severity fail: uneven units are not read as one bar. */
public final class RowEqualSpacingRule extends AidRule {

    /** Made by the service loader. */
    public RowEqualSpacingRule() {
        super("ROW-05", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue tolerance = facts.length("unit-spacing-equality");
        Comparator<Neighbours> bySpacing = Comparator.comparingDouble(Neighbours::spacingM);
        for (List<UnitAt> side : facts.sides()) {
            List<Neighbours> neighbours = Neighbours.of(side);
            if (neighbours.size() < 2) {
                outcomes.notApplicable(facts.aid(), Message.of("ROW-05.one-spacing", side.get(0).name()));
                continue;
            }
            Neighbours widest = Collections.max(neighbours, bySpacing);
            Neighbours narrowest = Collections.min(neighbours, bySpacing);
            double difference = widest.spacingM() - narrowest.spacingM();
            outcomes.about(facts.aid()).measured(Measure.atMost(difference, tolerance.value(), "m")).resting(tolerance)
                    .saying("difference", Words.m(difference), widest.inner().name(), widest.outer().name(), narrowest.inner().name(),
                            narrowest.outer().name(), Words.m(tolerance.value()))
                    .advising("even").step("difference", Words.mm(widest.spacingM()), Words.mm(narrowest.spacingM()), Words.mm(difference))
                    .add();
        }
    }
}
