package slopewright.checks.internal.field;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.siting.descent.DescentForm;

/**
 * Air speed, wind and speed over the ground fit each other: the part of the air speed over the ground, less the headwind, is the ground
 * speed. Three entries to whole knots may be off by one and a half together; two are allowed (own band). Severity fail: the slope is
 * worked out from one of them, and is wrong where that one is.
 */
public final class SpeedsRule extends AidRule {
    private static final double SAME_KT = 2;

    /** Made by the service loader. */
    public SpeedsRule() {
        super("FIELD-03", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        ApproachAid aid = facts.aid();
        Double air = aid.getAirSpeedKt();
        if (air == null || aid.getGroundSpeedKt() == null && aid.getWindKt() == null) {
            throw Stop.notApplicable(Message.of("data.nothing-to-compare"));
        }
        double overGround = aid.getDescentFtmin() == null ? air
                : Math.sqrt(Math.max(0, air * air - Math.pow(aid.getDescentFtmin() / DescentForm.FEET_A_MINUTE_PER_KNOT, 2)));
        if (aid.getGroundSpeedKt() == null) {
            double left = overGround - aid.getWindKt();
            outcomes.about(aid).measured(Measure.atLeast(left, 0, "kt").strict()).saying(left > 0 ? "left" : "none-left", kt(air), kt(aid
                    .getWindKt()), kt(left)).advising("correct").add();
            return;
        }
        double ground = aid.getGroundSpeedKt();
        if (aid.getWindKt() == null && Math.abs(ground - overGround) > SAME_KT) {
            throw Stop.missing(Message.of("missing.wind"), Message.of("FIELD-03.no-wind", kt(air), kt(ground)));
        }
        double made = overGround - (aid.getWindKt() == null ? 0 : aid.getWindKt());
        outcomes.about(aid).measured(Measure.within(ground, made, SAME_KT, "kt"))
                .saying(aid.getWindKt() == null ? "still-air" : "compared", kt(air), kt(made), kt(ground),
                        kt(aid.getWindKt() == null ? 0 : aid.getWindKt())).advising("correct").add();
    }

    private static Argument kt(double knots) {
        return Words.quantity(knots, Notation.KNOTS);
    }
}
