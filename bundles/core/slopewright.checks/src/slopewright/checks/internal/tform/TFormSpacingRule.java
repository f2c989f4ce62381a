package slopewright.checks.internal.tform;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The legs keep their spacing. */
public final class TFormSpacingRule extends AidRule {

    /** Made by the service loader. */
    public TFormSpacingRule() {
        super("TF-02", Severity.FAIL, Trait.LEGS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
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
                    OutcomeCollector.weakest(List.of(tolerance.citation(), first.citation(), next.citation())), text, "Move the unit.");
        }
    }
}
