package slopewright.checks.internal.row;

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

/** Rows on both sides change together. */
public final class RowBothSidesRule extends AidRule {

    /** Made by the service loader. */
    public RowBothSidesRule() {
        super("ROW-10", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        List<List<UnitAt>> sides = facts.sides();
        if (sides.size() < 2) {
            findings.notApplicable(facts.aid(), "The units stand on one side.");
            return;
        }
        CitedValue alike = facts.value("both-sides-difference-min");
        CitedValue accuracy = facts.value("setting-accuracy-min");
        if (sides.get(0).size() != sides.get(1).size()) {
            decide(findings, facts.aid(), false, alike.citation(), "The sides have " + sides.get(0).size() + " and " + sides.get(1).size()
                    + " units.",
                    "Give both as many.");
            return;
        }
        double limit = alike.value() + accuracy.value();
        double worst = 0;
        String where = "";
        for (int i = 0; i < sides.get(0).size(); i++) {
            double difference = Angles.degToMinutes(Math.abs(sides.get(0).get(i).settingDeg() - sides.get(1).get(i).settingDeg()));
            if (difference >= worst) {
                worst = difference;
                where = sides.get(0).get(i).label() + " and " + sides.get(1).get(i).label();
            }
        }
        compare(findings, facts.aid(), Measure.atMost(worst, limit, "min"),
                OutcomeCollector.weakest(List.of(alike.citation(), accuracy.citation())),
                where + " differ by " + Words.min(worst) + "; they are set alike within the accuracy of setting, " + Words.min(limit) + ".",
                "Set both to the same angle.");
    }
}
