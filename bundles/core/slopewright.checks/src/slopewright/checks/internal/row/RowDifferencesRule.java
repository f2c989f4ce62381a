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

/** Neighbouring units differ by what makes the sectors. */
public final class RowDifferencesRule extends AidRule {

    /** Made by the service loader. */
    public RowDifferencesRule() {
        super("ROW-08", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue accuracy = facts.value("setting-accuracy-min");
        RowSettings wanted = RowSettings.of(facts);
        for (List<UnitAt> side : facts.sides()) {
            for (int i = 1; i < side.size(); i++) {
                double difference = Angles.degToMinutes(side.get(i - 1).settingDeg() - side.get(i).settingDeg());
                double right = Angles.degToMinutes(wanted.deg(i - 1, side.size()) - wanted.deg(i, side.size()));
                compare(findings, side.get(i).unit(), Measure.within(difference, right, 2 * accuracy.value(), "min"),
                        OutcomeCollector.weakest(List.of(wanted.citation(), accuracy.citation())),
                        side.get(i - 1).label() + " is set " + Words.min(difference) + " higher than " + side.get(i).label() + "; "
                                + Words.min(right)
                                + " are wanted, within " + Words.min(2 * accuracy.value()) + ".", "Correct both settings.");
            }
        }
    }
}
