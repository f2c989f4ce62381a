package slopewright.checks.internal.sector;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.model.MeasuredUnit;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** A heliport indicator switches itself off when it is tilted, and on a floating deck it holds its beam. */
public final class TiltRule extends AidRule {

    /** Made by the service loader. */
    public TiltRule() {
        super("BOX-04", Severity.FAIL, Trait.SECTORS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        boolean floating = !facts.atRunway() && Boolean.TRUE.equals(facts.helipad().getFloating());
        CitedValue limit = facts.angle(floating ? "floating-deck-beam" : "tilt-switch-off");
        for (UnitAt unit : facts.units()) {
            MeasuredUnit measured = unit.unit().getMeasured();
            if (measured == null || measured.getSettingDeg() == null) {
                if (floating) {
                    throw Stop.missing("measured angle of " + unit.label(),
                            "Not evaluated: the deck floats; measure how well the beam holds its angle"
                            + " while the deck moves by " + Words.degrees(facts.angle("floating-deck-motion").value())
                            + " and enter the worst angle.");
                }
                findings.notApplicable(facts.aid(), "No measured angle was entered.");
                continue;
            }
            double off = Math.abs(measured.getSettingDeg() - unit.settingDeg());
            compare(findings, unit.unit(), Measure.atMost(off, limit.value(), "deg"), limit.citation(), unit.label() + " was measured "
                    + Words.degrees(off) + " off its setting; " + Words.degrees(limit.value()) + (floating ? " are held on a floating deck."
                            : " switch it off."), floating ? "Have the stabilisation mended." : "Level the unit and test its tilt switch.");
        }
    }
}
