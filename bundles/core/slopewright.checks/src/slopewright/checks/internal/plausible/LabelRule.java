package slopewright.checks.internal.plausible;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Words;
import slopewright.siting.UnitPlan;

/**
 * The units of an aid have labels of their own; where they are called as the layout calls them, each stands where the layout has it. A
 * warning: the label says on paper which unit is set to which angle; the units themselves have rules of their own.
 */
public final class LabelRule extends AidRule {
    /** Made by the service loader. */
    public LabelRule() {
        super("DATA-48", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        List<UnitPlan> plan = facts.wantedAtUnits().units();
        Set<String> known = plan.stream().map(UnitPlan::id).collect(Collectors.toSet());
        List<UnitAt> units = facts.units();
        boolean ours = units.stream().anyMatch(unit -> known.contains(unit.unit().getLabel()));
        Set<String> seen = new HashSet<>();
        boolean sound = true;
        for (UnitAt unit : units) {
            String label = unit.unit().getLabel();
            String wanted = ours ? nearest(unit, plan).id() : String.valueOf(label);
            String fault = label == null || label.isBlank() ? "none" : !seen.add(label) ? "twice" : wanted.equals(label) ? "" : "other";
            if (!fault.isEmpty()) {
                sound = false;
                outcomes.about(unit.unit()).met(false).saying(fault, unit.name(), Words.name(wanted)).advising("correct").add();
            }
        }
        if (sound) {
            outcomes.about(facts.aid()).met(true).saying("sound").add();
        }
    }

    private static UnitPlan nearest(UnitAt unit, List<UnitPlan> plan) {
        UnitPlan best = plan.get(0);
        double least = Double.MAX_VALUE;
        for (UnitPlan planned : plan) {
            double apart = Math.hypot(planned.place().alongM() - unit.alongM(), planned.place().rightM() - unit.rightM());
            if (planned.bar() == unit.bar() && apart < least) {
                least = apart;
                best = planned;
            }
        }
        return best;
    }
}
