package slopewright.checks.internal;

import java.util.Comparator;
import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** The legs keep their distance from the runway edge. */
public final class TFormEdgeRule extends AidRule {

    /** Made by the service loader. */
    public TFormEdgeRule() {
        super("TF-03", "Legs to runway edge", "Every leg stands at the published distance from the runway edge, within its tolerance.",
                Severity.FAIL,
                T_FORMS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue wanted = facts.length("leg-to-edge");
        CitedValue tolerance = facts.length("leg-to-edge-tolerance");
        double half = facts.halfWidthM();
        for (List<UnitAt> side : facts.sides()) {
            UnitAt worst = side.stream().filter(unit -> unit.bar() != 1)
                    .max(Comparator.comparingDouble(unit -> Math.abs(Math.abs(unit.rightM()) - half - wanted.value())))
                    .orElseThrow(() -> Stop.missing("leg units"));
            double distance = Math.abs(worst.rightM()) - half;
            compare(findings, facts.aid(), Measure.within(SettingOut.length(distance, wanted.value()), wanted.value(), tolerance.value(),
                    "m"),
                    Findings.weakest(List.of(wanted.citation(), tolerance.citation())), worst.label() + " stands " + Words.m(distance)
                            + " from the runway edge; " + Words.m(wanted.value()) + " are wanted, within " + Words.m(tolerance.value())
                            + ".",
                    "Move the leg; the system stays symmetrical.");
        }
    }
}
