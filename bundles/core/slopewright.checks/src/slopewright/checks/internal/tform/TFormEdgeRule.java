package slopewright.checks.internal.tform;

import java.util.Comparator;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The legs keep their distance from the runway edge. */
public final class TFormEdgeRule extends AidRule {

    /** Made by the service loader. */
    public TFormEdgeRule() {
        super("TF-03", Severity.FAIL, Trait.LEGS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue wanted = facts.length("leg-to-edge");
        CitedValue tolerance = facts.length("leg-to-edge-tolerance");
        double half = facts.halfWidthM();
        for (List<UnitAt> side : facts.sides()) {
            UnitAt worst = side.stream().filter(unit -> unit.bar() != 1)
                    .max(Comparator.comparingDouble(unit -> Math.abs(Math.abs(unit.rightM()) - half - wanted.value())))
                    .orElseThrow(() -> Stop.missing("leg units"));
            double distance = Math.abs(worst.rightM()) - half;
            compare(findings, facts.aid(), Measure.within(distance, wanted.value(), tolerance.value(),
                    "m"),
                    OutcomeCollector.weakest(List.of(wanted.citation(), tolerance.citation())), worst.label() + " stands " + Words.m(distance)
                            + " from the runway edge; " + Words.m(wanted.value()) + " are wanted, within " + Words.m(tolerance.value())
                            + ".",
                    "Move the leg; the system stays symmetrical.");
        }
    }
}
