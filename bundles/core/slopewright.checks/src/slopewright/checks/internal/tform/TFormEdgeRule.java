package slopewright.checks.internal.tform;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * The legs keep their distance from the runway edge. Severity fail: an aeroplane that leaves the runway strikes a unit that stands
 * nearer.
 */
public final class TFormEdgeRule extends AidRule {

    /** Made by the service loader. */
    public TFormEdgeRule() {
        super("TF-03", Severity.FAIL, Trait.LEGS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue wanted = facts.length("leg-to-edge");
        CitedValue tolerance = facts.length("leg-to-edge-tolerance");
        double half = facts.halfWidthM();
        for (List<UnitAt> side : facts.sides()) {
            List<UnitAt> legs = side.stream().filter(unit -> unit.bar() != 1).toList();
            if (legs.isEmpty()) {
                throw Stop.missing(Message.of("missing.leg-units"));
            }
            Worst<UnitAt> worst = Worst.of(legs,
                    unit -> Measure.within(Math.abs(unit.rightM()) - half, wanted.value(), tolerance.value(), "m"));
            double distance = Math.abs(worst.item().rightM()) - half;
            outcomes.about(facts.aid()).measured(worst.measure()).resting(wanted, tolerance)
                    .saying("distance", worst.item().name(), Words.m(distance), Words.m(wanted.value()), Words.m(tolerance.value()))
                    .advising("move")
                    .step("edge-distance", Words.mm(Math.abs(worst.item().rightM())), Words.mm(half), Words.mm(distance)).add();
        }
    }
}
