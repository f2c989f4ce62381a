package slopewright.checks.internal.row;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The beams of a row run parallel. Severity fail: beside a unit that is turned away the pattern is that of another slope. */
public final class RowAzimuthRule extends AidRule {

    /** Made by the service loader. */
    public RowAzimuthRule() {
        super("ROW-14", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue limit = facts.angle("azimuth-tolerance");
        Worst<UnitAt> worst = Worst.of(facts.units(), unit -> Measure.atMost(offDeg(unit), limit.value(), "deg"));
        outcomes.about(facts.aid()).measured(worst.measure()).resting(limit)
                .saying("off", worst.item().name(), Words.degrees(worst.measure().value()), Words.degrees(limit.value()))
                .advising("turn").add();
    }

    private static double offDeg(UnitAt unit) {
        return Math.abs(UnitAt.need(unit.unit().getAzimuthOffsetDeg(), Message.of("missing.unit-azimuth", unit.name())));
    }
}
