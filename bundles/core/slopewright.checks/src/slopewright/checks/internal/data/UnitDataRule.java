package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Missing;
import slopewright.evaluation.AidLayouts;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.model.LightUnit;
import slopewright.siting.ElementNames;
import slopewright.siting.IndicatorFamily;

/** Every light unit stands somewhere and is set to something. A warning: what rests on a missing number is not evaluated. */
public final class UnitDataRule extends AidRule {
    /** Made by the service loader. */
    public UnitDataRule() {
        super("DATA-04", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Missing missing = new Missing();
        boolean lit = facts.indicator().displayForm() == IndicatorFamily.DisplayForm.LIGHTS;
        for (LightUnit unit : facts.aid().getUnits()) {
            Argument name = ElementNames.of(unit);
            missing.unless(unit.getAlongM() != null, "missing.unit-along", name);
            missing.unless(unit.getRightM() != null, "missing.unit-right", name);
            missing.unless(unit.getLensElevationM() != null, "missing.unit-lens-elevation", name);
            missing.unless(unit.getSettingDeg() != null, "missing.unit-setting", name);
            missing.unless(AidLayouts.bar(unit).isPresent(), "missing.unit-bar", name);
            missing.unless(!lit || !unit.getTransitions().isEmpty(), "missing.unit-sectors", name);
        }
        missing.unless(!facts.aid().getUnits().isEmpty(), "missing.units-of", ElementNames.of(facts.aid()));
        missing.report(facts.aid(), outcomes, Message.of("DATA-04.complete"));
    }
}
