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

/** Each leg unit is moved for its own level difference. */
public final class TFormLevelRule extends AidRule {

    /** Made by the service loader. */
    public TFormLevelRule() {
        super("TF-08", Severity.FAIL, Trait.LEGS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue tolerance = facts.value("spacing-tolerance-percent");
        double worst = Double.NEGATIVE_INFINITY;
        double value = 0;
        double limit = 0;
        String text = "";
        for (List<UnitAt> side : facts.sides()) {
            double bar = TFormLeg.barLevelM(facts, side);
            for (TFormLeg leg : TFormLeg.of(facts, side)) {
                double nominal = leg.nominalM(facts);
                double tan = Angles.tanDeg(leg.unit().settingDeg());
                double wanted = bar + (leg.up() ? -nominal : nominal);
                double off = Math.abs(leg.levelM() - wanted) * tan;
                double allowed = nominal * tolerance.value() / 100 * tan;
                if (off - allowed > worst) {
                    worst = off - allowed;
                    value = off;
                    limit = allowed;
                    text = "The cut-off of " + leg.unit().label() + " passes " + Words.m(leg.levelM() * tan) + " over the threshold; "
                            + Words.m(wanted * tan) + " are wanted, within " + Words.m(allowed) + ".";
                }
            }
        }
        compare(findings, facts.aid(), Measure.atMost(value, limit, "m"), tolerance.citation(), text,
                "Move the unit by its level difference times the cotangent of its cut-off.");
    }
}
