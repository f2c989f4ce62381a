package slopewright.checks.internal;

import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.geometry.Angles;
import slopewright.standards.CitedValue;

/** Neighbouring units differ by what makes the sectors. */
public final class RowDifferencesRule extends AidRule {

    /** Made by the service loader. */
    public RowDifferencesRule() {
        super("ROW-08", "Differences of the settings",
                "Neighbouring units differ in their setting as the rule set has it, within twice the accuracy of setting; each unit is set"
                + " higher than"
                        + " the next one outward.", Severity.FAIL, ROWS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue accuracy = facts.value("setting-accuracy-min");
        RowSettings wanted = RowSettings.of(facts);
        for (List<UnitAt> side : facts.sides()) {
            for (int i = 1; i < side.size(); i++) {
                double difference = Angles.degToMinutes(side.get(i - 1).settingDeg() - side.get(i).settingDeg());
                double right = Angles.degToMinutes(wanted.deg(i - 1, side.size()) - wanted.deg(i, side.size()));
                compare(findings, side.get(i).unit(), Measure.within(difference, right, 2 * accuracy.value(), "min"),
                        Findings.weakest(List.of(wanted.citation(), accuracy.citation())),
                        side.get(i - 1).label() + " is set " + Words.min(difference) + " higher than " + side.get(i).label() + "; "
                                + Words.min(right)
                                + " are wanted, within " + Words.min(2 * accuracy.value()) + ".", "Correct both settings.");
            }
        }
    }
}
