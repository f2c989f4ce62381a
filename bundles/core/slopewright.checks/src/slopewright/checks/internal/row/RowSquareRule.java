package slopewright.checks.internal.row;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** A row stands square to the runway. Severity fail: units behind each other show their angles from different places. */
public final class RowSquareRule extends AidRule {

    /** Made by the service loader. */
    public RowSquareRule() {
        super("ROW-13", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue limit = facts.length("bar-square-tolerance");
        double mean = facts.units().stream().mapToDouble(UnitAt::alongM).average().orElseThrow();
        Worst<UnitAt> worst = Worst.of(facts.units(), unit -> Measure.atMost(Math.abs(unit.alongM() - mean), limit.value(), "m"));
        outcomes.about(facts.aid()).measured(worst.measure()).resting(limit)
                .saying("off", worst.item().name(), Words.mm(worst.measure().value()), Words.mm(limit.value())).advising("align").add();
    }
}
