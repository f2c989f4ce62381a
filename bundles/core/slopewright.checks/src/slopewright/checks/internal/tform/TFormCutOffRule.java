package slopewright.checks.internal.tform;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The cut-offs of the legs go in steps from the slope. */
public final class TFormCutOffRule extends AidRule {

    /** Made by the service loader. */
    public TFormCutOffRule() {
        super("TF-05", Severity.FAIL, Trait.LEGS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue up = facts.angle("fly-up-step");
        CitedValue down = facts.angle("fly-down-step");
        CitedValue accuracy = facts.value("setting-accuracy-min");
        double slope = facts.laid().slopeDeg();
        double worst = -1;
        String text = "";
        for (List<UnitAt> side : facts.sides()) {
            for (TFormLeg leg : TFormLeg.of(facts, side)) {
                double wanted = leg.cutOffDeg(facts, slope);
                double off = Angles.degToMinutes(Math.abs(leg.unit().settingDeg() - wanted));
                if (off > worst) {
                    worst = off;
                    text = leg.unit().label() + " cuts off at " + Words.deg(leg.unit().settingDeg()) + "; the slope of " + Words.deg(slope)
                            + " gives "
                            + Words.deg(wanted) + ", within " + Words.min(accuracy.value()) + ".";
                }
            }
        }
        compare(findings, facts.aid(), Measure.atMost(worst, accuracy.value(), "min"),
                OutcomeCollector.weakest(List.of(up.citation(), down.citation(), accuracy.citation())), text, "Set it again.");
    }
}
