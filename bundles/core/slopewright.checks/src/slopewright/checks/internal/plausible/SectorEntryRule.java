package slopewright.checks.internal.plausible;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.LightColour;
import slopewright.model.LightState;
import slopewright.model.Transition;
import slopewright.siting.SectorEdge;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;

/**
 * A dark sector has no colour and is off, and a light one has a colour and is not. Where the layout prints the angles at which a unit
 * changes its light, from its setting, the unit changes there, to a tenth of a degree, which is what rounding and the sight of a sharp edge
 * leave (own band). Severity fail: a pilot sees the light of another sector.
 */
public final class SectorEntryRule extends AidRule {
    private static final double SAME_DEG = 0.1;

    /** Made by the service loader. */
    public SectorEntryRule() {
        super("DATA-57", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        boolean printed = !facts.indicator().has(Trait.SECTORS_BY_MAKE);
        List<UnitPlan> plan = printed ? facts.wantedAtUnits().units() : List.of();
        boolean any = false;
        for (UnitAt unit : facts.units()) {
            List<Transition> transitions = unit.unit().getTransitions();
            for (Transition transition : transitions) {
                boolean below = isWhole(transition.getBelowColour(), transition.getBelowState());
                boolean above = isWhole(transition.getAboveColour(), transition.getAboveState());
                if (!below || !above) {
                    any = true;
                    outcomes.about(transition).met(false).saying("half", unit.name()).advising("correct").add();
                }
            }
            List<SectorEdge> edges = plan.stream().filter(planned -> planned.id().equals(unit.unit().getLabel())).findFirst()
                    .map(UnitPlan::edges).orElse(List.of());
            double setting = plan.stream().filter(planned -> planned.id().equals(unit.unit().getLabel())).findFirst()
                    .map(UnitPlan::settingDeg).orElse(0.0);
            if (edges.size() == transitions.size()) {
                any |= !edges.isEmpty();
                for (int i = 0; i < edges.size(); i++) {
                    compare(unit, transitions.get(i), edges.get(i).angleDeg() - setting, outcomes);
                }
            }
        }
        if (!any) {
            throw Stop.notApplicable(Message.of("data.nothing-to-compare"));
        }
    }

    private static boolean isWhole(LightColour colour, LightState state) {
        return (colour == LightColour.NONE) == (state == LightState.OFF);
    }

    private static void compare(UnitAt unit, Transition transition, double wanted, OutcomeCollector outcomes) {
        if (transition.getOffsetDeg() != null) {
            outcomes.about(transition).measured(Measure.within(transition.getOffsetDeg(), wanted, SAME_DEG, "deg"))
                    .saying("offset", unit.name(), Words.deg(transition.getOffsetDeg()), Words.deg(wanted), Words.deg(SAME_DEG))
                    .advising("correct").add();
        }
    }
}
