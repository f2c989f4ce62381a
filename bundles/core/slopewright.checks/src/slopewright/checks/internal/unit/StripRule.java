package slopewright.checks.internal.unit;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Runway;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;

/**
 * What stands in the runway strip gives way, whatever the rule set says of units elsewhere. The strip is that which was entered, half
 * its width to each side and as far beyond one end of the runway as beyond the other. Severity fail: the strip is there for aeroplanes
 * that leave the runway.
 */
public final class StripRule extends AidRule {
    /** Made by the service loader. */
    public StripRule() {
        super("UNIT-08", Severity.FAIL);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        Runway runway = facts.runway().orElseThrow();
        Argument name = ElementNames.of(runway);
        double half = AidFacts.need(runway.getStripWidthM(), Message.of("missing.strip-width", name)) / 2;
        double length = AidFacts.need(runway.getStripLengthM(), Message.of("missing.strip-length", name));
        double beyond = (length - AidFacts.need(runway.getLengthM(), Message.of("missing.runway-length", name))) / 2;
        double from = -beyond - (facts.end().getDisplacedThresholdM() == null ? 0 : facts.end().getDisplacedThresholdM());
        List<UnitAt> within = facts.units().stream().filter(unit -> Math.abs(unit.rightM()) <= half && unit.alongM() >= from
                && unit.alongM() <= from + length).toList();
        List<Argument> rigid = within.stream().filter(unit -> !AidFacts.need(unit.unit().getFrangible(),
                Message.of("missing.frangible", unit.name()))).map(UnitAt::name).toList();
        outcomes.about(facts.aid()).met(rigid.isEmpty())
                .saying(!rigid.isEmpty() ? "rigid" : within.isEmpty() ? "outside" : "frangible", Words.list(rigid), Words.m(half))
                .advising("mount").add();
    }
}
