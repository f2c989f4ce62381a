package slopewright.edit;

import java.util.Collection;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.Proposals;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.UnitPlan;
import slopewright.standards.RuleSet;

/** Sets every unit of an aid to the angle that a rule set has for it and leaves the units where they stand. */
public final class SetRuleSettings extends RecordedEdit {

    private static final double STEPS_PER_DEG = 1e6;

    private final ApproachAid aid;
    private final RuleSet rules;

    private SetRuleSettings(ApproachAid aid, RuleSet rules) {
        super("Set to the rule's angles");
        this.aid = aid;
        this.rules = rules;
    }

    /**
     * Sets the units of an aid.
     *
     * @param aid   an aid of a project
     * @param rules the rule set
     * @return the edit; carrying it out throws a {@link SitingException} where the angles cannot be worked out, and an
     *         {@link EditException} where the aid has other units than the rule set lays out
     */
    public static SetRuleSettings of(ApproachAid aid, RuleSet rules) {
        return new SetRuleSettings(aid, rules);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return aid.getUnits();
    }

    @Override
    protected void apply() {
        Siting siting = Proposals.solve(aid, rules);
        Map<String, Double> settings = siting.units().stream().collect(Collectors.toMap(UnitPlan::id, UnitPlan::settingDeg, (a, b) -> a));
        for (LightUnit unit : aid.getUnits()) {
            Double setting = settings.get(String.valueOf(unit.getLabel()));
            if (setting == null) {
                throw new EditException(Message.said("edit.no-such-unit", unit.getLabel()));
            }
            unit.setSettingDeg(Math.round(setting * STEPS_PER_DEG) / STEPS_PER_DEG);
        }
    }
}
