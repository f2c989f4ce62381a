package slopewright.checks.internal.row;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.geometry.Angles;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Each unit is set to the angle that follows from the slope. Severity fail: another setting is another slope. */
public final class RowSettingsRule extends AidRule {

    /** Made by the service loader. */
    public RowSettingsRule() {
        super("ROW-07", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue accuracy = facts.value("setting-accuracy-min");
        RowSettings wanted = RowSettings.of(facts);
        for (List<UnitAt> side : facts.sides()) {
            for (int i = 0; i < side.size(); i++) {
                UnitAt unit = side.get(i);
                double wantedDeg = wanted.deg(i, side.size());
                guarded(unit.unit(), outcomes, () -> compare(unit, wantedDeg, wanted, accuracy, outcomes));
            }
        }
    }

    private static void compare(UnitAt unit, double wantedDeg, RowSettings wanted, CitedValue accuracy, OutcomeCollector outcomes) {
        double offMin = Angles.degToMinutes(Math.abs(unit.settingDeg() - wantedDeg));
        outcomes.about(unit.unit()).measured(Measure.atMost(offMin, accuracy.value(), "min")).citing(wanted.citations()).resting(accuracy)
                .saying("setting", unit.name(), Words.deg(unit.settingDeg()), Words.deg(wanted.slopeDeg()), Words.deg(wantedDeg),
                        Words.min(accuracy.value()))
                .advising("set", Words.deg(wantedDeg))
                .step("setting", Words.deg(wanted.slopeDeg()), Words.min(Angles.degToMinutes(wantedDeg - wanted.slopeDeg())),
                        Words.deg(wantedDeg))
                .add();
    }
}
