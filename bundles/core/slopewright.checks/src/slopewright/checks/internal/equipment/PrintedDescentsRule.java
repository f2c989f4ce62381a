package slopewright.checks.internal.equipment;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.PrintedDescent;
import slopewright.siting.ElementNames;
import slopewright.siting.descent.DescentForm;

/**
 * The table of speeds and descents that is printed on a unit gives the slopes that they make, by the tangent or by the sine, whichever is
 * nearer: to a quarter of a degree, for such tables are printed in half degrees (own band). A warning: the card gives the mark itself, but
 * whoever goes by the plate sets another slope.
 */
public final class PrintedDescentsRule extends AidRule {
    private static final double SAME_DEG = 0.25;

    /** Made by the service loader. */
    public PrintedDescentsRule() {
        super("EQUIP-15", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        EquipmentType type = facts.aid().getEquipment();
        if (type == null || type.getPrintedDescents().isEmpty()) {
            throw Stop.notApplicable(Message.of("EQUIP-15.none"));
        }
        for (PrintedDescent printed : type.getPrintedDescents()) {
            guarded(facts.aid(), outcomes, () -> compare(facts, type, printed, outcomes));
        }
    }

    private static void compare(AidFacts facts, EquipmentType type, PrintedDescent printed, OutcomeCollector outcomes) {
        double speed = AidFacts.need(printed.getSpeedKt(), Message.of("missing.EQUIP-15", ElementNames.of(type)));
        double descent = AidFacts.need(printed.getDescentFtmin(), Message.of("missing.EQUIP-15", ElementNames.of(type)));
        double slope = AidFacts.need(printed.getSlopeDeg(), Message.of("missing.EQUIP-15", ElementNames.of(type)));
        double tangent = DescentForm.TANGENT.angleDeg(speed, descent);
        double sine = DescentForm.SINE.angleDeg(speed, descent);
        boolean bySine = Math.abs(slope - sine) < Math.abs(slope - tangent);
        outcomes.about(facts.aid()).measured(Measure.within(slope, bySine ? sine : tangent, SAME_DEG, "deg"))
                .saying("compared", Words.quantity(speed, Notation.KNOTS), Words.quantity(descent, Notation.FEET_PER_MINUTE),
                        Words.degrees(slope), Words.degrees(tangent), Words.degrees(Math.abs(slope - tangent)), Words.degrees(sine),
                        Words.degrees(Math.abs(slope - sine))).advising("correct").add();
    }
}
