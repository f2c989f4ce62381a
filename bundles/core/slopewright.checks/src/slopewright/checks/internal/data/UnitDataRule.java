package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Missing;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;

/** Every light unit stands somewhere and is set to something. */
public final class UnitDataRule extends AidRule {

    /** Made by the service loader. */
    public UnitDataRule() {
        super("DATA-04", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        Missing missing = new Missing();
        boolean lit = Families.find(facts.family())
                .filter(family -> family.displayForm() == IndicatorFamily.DisplayForm.LIGHTS).isPresent();
        for (LightUnit unit : facts.aid().getUnits()) {
            String of = " of " + Projects.label(unit);
            missing.unless(unit.getAlongM() != null, "place along the runway" + of);
            missing.unless(unit.getRightM() != null, "place to the side" + of);
            missing.unless(unit.getLensElevationM() != null, "lens elevation" + of);
            missing.unless(unit.getSettingDeg() != null, "setting" + of);
            missing.unless(!lit || !unit.getTransitions().isEmpty(), "sectors" + of);
        }
        missing.unless(!facts.aid().getUnits().isEmpty(), "light units");
        Missing.report(findings, facts.aid(), missing.names(), "Every unit has its place, level, setting and sectors.");
    }
}
