package slopewright.checks.internal.equipment;

import slopewright.checks.Measure;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.standards.CitedValue;

/** A unit that is tilted goes dark before it shows another slope. Severity fail: what it shows meanwhile is a false slope. */
public final class TiltCutOffRule extends EquipmentRule {
    /** Made by the service loader. */
    public TiltCutOffRule() {
        super("EQUIP-05", Severity.FAIL);
    }

    @Override
    CitedValue limit(AidFacts facts) {
        return facts.angle("tilt-switch-off");
    }

    @Override
    Number number(AidFacts facts, EquipmentType type) {
        return type.getTiltCutOffDeg();
    }

    @Override
    Measure compare(double value, double limit) {
        return Measure.atMost(value, limit, "deg");
    }

    @Override
    Argument written(double value) {
        return Words.degrees(value);
    }
}
