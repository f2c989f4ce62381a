package slopewright.checks.internal.eye;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.geometry.Lengths;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AeroplaneGroup;
import slopewright.siting.ElementNames;
import slopewright.siting.Trait;
import slopewright.standards.CrossingHeightTable;

/**
 * Where height groups stand for wheel clearance, the most demanding one that uses the runway governs (JO 6850.2B as quoted): the
 * group of the aid is at least that of each aeroplane, and the lowest on-slope signal crosses the threshold no lower than that group lets
 * it. Another rule compares the signal of a row with the group that was chosen, on both sides; here the choice is compared with the
 * aeroplanes, and the signal of any other indicator crosses no lower than the choice lets it. Severity fail: the
 * wheels of a larger aeroplane strike what lies before the threshold.
 */
public final class DemandingGroupRule extends AidRule {

    /** Made by the service loader. */
    public DemandingGroupRule() {
        super("EYE-06", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        CrossingHeightTable table = facts.rules().crossingHeight()
                .orElseThrow(() -> Stop.notApplicable(Message.of("EYE-03.no-groups", facts.rules().descriptor().name())));
        List<AeroplaneGroup> aeroplanes = facts.host().getRegularGroups();
        if (aeroplanes.isEmpty()) {
            throw Stop.missing(Message.of("missing.aeroplane-groups"));
        }
        Integer chosen = facts.aid().getHeightGroup();
        if (chosen != null && !facts.indicator().has(Trait.ROW)) {
            table.group(chosen).ifPresent(group -> chosen(facts, group, table, outcomes));
        }
        for (AeroplaneGroup aeroplane : aeroplanes) {
            guarded(facts.aid(), outcomes, () -> compare(facts, aeroplane, table, outcomes));
        }
    }

    private static void chosen(AidFacts facts, CrossingHeightTable.Group group, CrossingHeightTable table, OutcomeCollector outcomes) {
        double least = Lengths.feetToMetres(group.crossingHeightFt() - group.belowFt());
        double meht = facts.laid().mehtM();
        outcomes.about(facts.aid()).measured(Measure.atLeast(meht, least, "m")).citing(table.citation())
                .steps(MinimumEyeHeight.steps(facts.laid()))
                .saying("chosen", Words.mFt(meht), Words.count(group.number()), Words.mFt(least)).advising("move").add();
    }

    private static void compare(AidFacts facts, AeroplaneGroup aeroplane, CrossingHeightTable table, OutcomeCollector outcomes) {
        Argument name = ElementNames.of(aeroplane);
        double height = AidFacts.need(aeroplane.getStaticCockpitToWheelM(), Message.of("missing.cockpit-to-wheel-of", name));
        CrossingHeightTable.Group needed = table.groups().stream()
                .filter(group -> Measure.atMost(height, Lengths.feetToMetres(group.cockpitToWheelFt()), "m").isMet()).findFirst()
                .orElse(table.groups().get(table.groups().size() - 1));
        Integer chosen = facts.aid().getHeightGroup();
        if (chosen != null) {
            outcomes.about(facts.aid()).measured(Measure.atLeast(chosen, needed.number(), "")).citing(table.citation())
                    .saying("group", Words.count(chosen), name, Words.mFt(height), Words.count(needed.number())).advising("choose").add();
        }
        double least = Lengths.feetToMetres(needed.crossingHeightFt() - needed.belowFt());
        double meht = facts.laid().mehtM();
        outcomes.about(facts.aid()).measured(Measure.atLeast(meht, least, "m")).citing(table.citation())
                .steps(MinimumEyeHeight.steps(facts.laid()))
                .saying("crossing", Words.mFt(meht), name, Words.mFt(height), Words.count(needed.number()), Words.mFt(least))
                .advising("move").add();
    }
}
