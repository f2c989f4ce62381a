package slopewright.checks.internal.equipment;

import slopewright.checks.Measure;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.standards.CitedValue;

/**
 * The beam reaches as far to each side as the printed intensities do. Severity fail: a pilot beside a narrower beam sees no signal, or
 * only half of a row.
 */
public final class AzimuthCoverageRule extends EquipmentRule {
    /** Made by the service loader. */
    public AzimuthCoverageRule() {
        super("EQUIP-10", Severity.FAIL);
    }

    @Override
    CitedValue limit(AidFacts facts) {
        return facts.angle("azimuth-coverage");
    }

    @Override
    Number number(AidFacts facts, EquipmentType type) {
        return type.getBeamWidthDeg();
    }

    @Override
    Measure compare(double value, double limit) {
        return Measure.atLeast(value / 2, limit, "deg");
    }

    @Override
    Argument written(double value) {
        return Words.degrees(value);
    }
}
