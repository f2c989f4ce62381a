package slopewright.checks.internal.field;

import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Missing;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.portable.DeckMotion;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Helipad;
import slopewright.standards.CitedValue;

/**
 * On a deck that moves, what is left of the motion is no more than the rule set lets the beam move, or than half the on-slope sector where
 * it says nothing: beyond that an eye on the slope sees another sector. Motion of a pad that is said not to float contradicts itself; of a
 * pad of which nobody says whether it floats it is to be cleared up, and so is one that floats without any motion. Severity
 * fail: the signal says on slope where it is not.
 */
public final class MovingDeckRule extends AidRule {
    /** Made by the service loader. */
    public MovingDeckRule() {
        super("FIELD-06", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Helipad pad = facts.helipad();
        if (pad.getFloating() != null && !DeckMotion.isFloating(facts.host())) {
            throw Stop.notApplicable(Message.of("FIELD-06.firm"));
        }
        if (Boolean.FALSE.equals(pad.getFloating())) {
            outcomes.about(facts.aid()).met(false).saying("contradiction").advising("say").add();
            return;
        }
        Missing missing = new Missing();
        missing.unless(pad.getFloating() != null, "missing.deck-floating");
        if (DeckMotion.isFloating(facts.host())) {
            boolean moves = DeckMotion.isEntered(pad);
            missing.unless(moves && pad.getDeckPitchDeg() != null, "missing.deck-pitch");
            missing.unless(moves && pad.getDeckRollDeg() != null, "missing.deck-roll");
            missing.unless(pad.getDeckHeadingDeg() != null, "missing.deck-heading");
        }
        Optional<DeckMotion> motion = DeckMotion.of(facts.host(), facts.aid().getEquipment());
        if (motion.isEmpty() || pad.getFloating() == null) {
            missing.report(facts.aid(), outcomes, Message.of("FIELD-06.firm"));
            return;
        }
        double tilt = motion.get().tiltMin();
        double half = Angles.degToMinutes(facts.laid().slopeDeg() - facts.laid().lowestOnSlopeDeg());
        Optional<CitedValue> limit = facts.find("floating-deck-beam-deg");
        double allowed = limit.map(value -> Angles.degToMinutes(value.value())).orElse(half);
        OutcomeCollector.Entry entry = outcomes.about(facts.aid()).measured(Measure.atMost(tilt, allowed, "min"));
        limit.ifPresent(value -> entry.resting(value));
        entry.saying(motion.get().held() ? "held" : "moving", Words.min(tilt), Words.min(allowed),
                Words.min(Math.max(0, 2 * (half - tilt))), Words.min(2 * half)).advising("stabilise").add();
    }
}
