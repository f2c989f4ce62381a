package slopewright.checks.internal;

import java.util.Comparator;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** The beams of a row run parallel. */
public final class RowAzimuthRule extends AidRule {

    /** Made by the service loader. */
    public RowAzimuthRule() {
        super("ROW-14", "Azimuth of the beams",
                "The axis of each unit is parallel to the centre line, or to the turned axis of the approach, within the tolerance.",
                Severity.FAIL, ROWS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
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
