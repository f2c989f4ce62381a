package slopewright.checks.internal.obstacle;

import java.util.Comparator;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.GlidePathAid;

/**
 * Units keep out of the critical area of the glide path antenna: a rectangle that was entered with its source, from the antenna towards
 * the approach, half its width to each side of the antenna. Where none was entered, units on the other side of the runway are clear of
 * it, and of units on its own side nobody knows. Severity fail: a disturbed electronic glide path leads below the slope without any sign
 * of it.
 */
public final class AntennaAreaRule extends AidRule {

    /** Made by the service loader. */
    public AntennaAreaRule() {
        super("OBS-05", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        GlidePathAid path = facts.end().getGlidePath();
        if (path == null) {
            throw Stop.notApplicable(Message.of("outcome.no-glide-path"));
        }
        double right = AidFacts.need(path.getAntennaRightM(), Message.of("missing.antenna-right"));
        if (path.getCriticalAreaLengthM() == null && path.getCriticalAreaWidthM() == null) {
            withoutArea(facts, right, outcomes);
            return;
        }
        double along = AidFacts.need(path.getAntennaAlongM(), Message.of("missing.antenna-along"));
        double length = AidFacts.need(path.getCriticalAreaLengthM(), Message.of("missing.critical-area-length"));
        double width = AidFacts.need(path.getCriticalAreaWidthM(), Message.of("missing.critical-area-width"));
        String source = path.getCriticalAreaSource();
        AidFacts.need(source == null || source.isBlank() ? null : source, Message.of("missing.critical-area-source"));
        UnitAt nearest = facts.units().stream()
                .min(Comparator.comparingDouble(unit -> outsideM(unit, along, right, length, width))).orElseThrow();
        double outside = outsideM(nearest, along, right, length, width);
        outcomes.about(facts.aid()).measured(Measure.atLeast(outside, 0, "m").strict())
                .saying(outside < 0 ? "inside" : "outside", nearest.name(), Words.margin(Math.abs(outside)),
                        Words.name(source), Words.m(length),
                        Words.m(width))
                .advising("confirm").add();
    }

    private static void withoutArea(AidFacts facts, double antennaRightM, OutcomeCollector outcomes) {
        Argument sameSide = Words.list(facts.units().stream().filter(unit -> unit.rightM() < 0 == antennaRightM < 0).map(UnitAt::name)
                .toList());
        if (facts.units().stream().anyMatch(unit -> unit.rightM() < 0 == antennaRightM < 0)) {
            throw Stop.missing(Message.of("missing.critical-area"), Message.of("OBS-05.same-side", sameSide));
        }
        outcomes.about(facts.aid()).met(true).saying("other-side").add();
    }

    /** Returns how far a unit stands outside the area, negative by how far inside. */
    private static double outsideM(UnitAt unit, double alongM, double rightM, double lengthM, double widthM) {
        double ahead = Math.max(unit.alongM() - alongM, alongM - lengthM - unit.alongM());
        double beside = Math.abs(unit.rightM() - rightM) - widthM / 2;
        return ahead <= 0 && beside <= 0 ? Math.max(ahead, beside) : Math.hypot(Math.max(ahead, 0), Math.max(beside, 0));
    }
}
