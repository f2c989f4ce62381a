package slopewright.checks.internal.row;

import java.util.Comparator;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The beams of a row run parallel. */
public final class RowAzimuthRule extends AidRule {

    /** Made by the service loader. */
    public RowAzimuthRule() {
        super("ROW-14", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue limit = facts.angle("azimuth-tolerance");
        UnitAt worst = facts.units().stream().max(Comparator.comparingDouble(RowAzimuthRule::off)).orElseThrow();
        double off = off(worst);
        compare(findings, facts.aid(), Measure.atMost(off, limit.value(), "deg"), limit.citation(),
                worst.label() + " points " + Words.degrees(off) + " off the axis; " + Words.degrees(limit.value()) + " are allowed.",
                "Turn it parallel to the axis.");
    }

    private static double off(UnitAt unit) {
        return Math.abs(unit.need(unit.unit().getAzimuthOffsetDeg(), "azimuth"));
    }
}
