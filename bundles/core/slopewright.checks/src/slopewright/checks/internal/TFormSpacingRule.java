package slopewright.checks.internal;

import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** The legs keep their spacing. */
public final class TFormSpacingRule extends AidRule {

    /** Made by the service loader. */
    public TFormSpacingRule() {
        super("TF-02", "Spacing along the legs",
                "The distances from the wing bar to the first leg units and from each leg unit to the next, reduced to level ground, are"
                + " the published"
                        + " ones within their tolerance.", Severity.FAIL, T_FORMS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue tolerance = facts.value("spacing-tolerance-percent");
        CitedValue first = facts.length("leg-first-offset");
        CitedValue next = facts.length("leg-spacing");
        for (List<UnitAt> side : facts.sides()) {
            double bar = TFormLeg.barLevelM(facts, side);
            double worst = -1;
            String text = "";
            double before = bar;
            for (TFormLeg leg : TFormLeg.of(facts, side)) {
                before = leg.number() == 1 ? bar : before;
                double wanted = leg.number() == 1 ? first.value() : next.value();
                double off = Math.abs(Math.abs(leg.levelM() - before) - wanted) / wanted * 100;
                if (off > worst) {
                    worst = off;
                    text = leg.unit().label() + " stands " + Words.m(Math.abs(leg.levelM() - before)) + " from its neighbour; "
                            + Words.m(wanted)
                            + " are wanted, within " + Words.number(tolerance.value()) + " %.";
                }
                before = leg.levelM();
            }
            compare(findings, facts.aid(), Measure.atMost(worst, tolerance.value(), "%"),
                    Findings.weakest(List.of(tolerance.citation(), first.citation(), next.citation())), text, "Move the unit.");
        }
    }
}
