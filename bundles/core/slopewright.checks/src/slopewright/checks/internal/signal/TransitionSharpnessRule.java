package slopewright.checks.internal.signal;

import java.util.List;
import java.util.OptionalDouble;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Transition;
import slopewright.siting.ElementNames;
import slopewright.siting.SectorEdge;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;

/**
 * The change from one colour to the next is as sharp as the rule set wants it, and no wider in the layout than the equipment makes it.
 * Severity fail: a blurred change is a band in which the signal says nothing.
 */
public final class TransitionSharpnessRule extends AidRule {
    /** Made by the service loader. */
    public TransitionSharpnessRule() {
        super("SIG-02", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue sharpness = facts.value("transition-width-min");
        List<UnitPlan> wanted = facts.wantedAtUnits().units();
        for (UnitAt unit : facts.units()) {
            guarded(unit.unit(), outcomes, () -> compare(facts, unit, sharpness, wanted, outcomes));
        }
    }

    private static void compare(AidFacts facts, UnitAt unit, CitedValue sharpness, List<UnitPlan> wanted,
            OutcomeCollector outcomes) {
        List<Transition> transitions = unit.unit().getTransitions().stream().filter(TransitionSharpnessRule::isOfTwoLights).toList();
        if (transitions.isEmpty()) {
            outcomes.notApplicable(unit.unit(), Message.of("SIG-02.no-change", unit.name()));
            return;
        }
        for (Transition transition : transitions) {
            double width = UnitAt.need(transition.getWidthMinutes(), Message.of("missing.transition-width", unit.name()));
            double limit = limitMin(unit, transition, wanted).orElse(sharpness.value());
            OptionalDouble equipment = equipmentWidth(facts);
            if (width < 0 || equipment.isPresent() && width < equipment.getAsDouble() - Measure.ANGLE_DEG) {
                outcomes.about(transition).met(false).saying(width < 0 ? "negative" : "sharper", unit.name(), Words.min(width),
                        Words.min(equipment.orElse(0)),
                        facts.aid().getEquipment() == null ? unit.name() : ElementNames.of(facts.aid().getEquipment()))
                        .advising("enter").add();
                continue;
            }
            outcomes.about(transition).measured(Measure.atMost(width, limit, "min")).resting(sharpness)
                    .saying("width", unit.name(), Words.min(width), Words.min(limit)).advising("replace").add();
        }
    }

    /** A family may have one change that is wider than the others, as the dark amber of a tri-colour unit. */
    private static OptionalDouble limitMin(UnitAt unit, Transition transition, List<UnitPlan> wanted) {
        return wanted.stream().filter(plan -> plan.bar() == unit.bar()).flatMap(plan -> plan.edges().stream())
                .filter(edge -> edge.below().colour().name().equals(transition.getBelowColour().getName())
                        && edge.above().colour().name().equals(transition.getAboveColour().getName()))
                .mapToDouble(SectorEdge::widthMinutes).findFirst();
    }

    /** A cut-off to the dark is no change of colour; its sharpness is not printed. */
    private static boolean isOfTwoLights(Transition transition) {
        return transition.getBelowColour() != slopewright.model.LightColour.NONE
                && transition.getAboveColour() != slopewright.model.LightColour.NONE;
    }

    private static OptionalDouble equipmentWidth(AidFacts facts) {
        Double width = facts.aid().getEquipment() == null ? null : facts.aid().getEquipment().getTransitionMinutes();
        return width == null ? OptionalDouble.empty() : OptionalDouble.of(width);
    }
}
