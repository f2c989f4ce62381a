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

/** Each unit is set to the angle that follows from the slope. */
public final class RowSettingsRule extends AidRule {

    /** Made by the service loader. */
    public RowSettingsRule() {
        super("ROW-07", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue accuracy = facts.value("setting-accuracy-min");
        RowSettings wanted = RowSettings.of(facts);
        for (List<UnitAt> side : facts.sides()) {
            for (int i = 0; i < side.size(); i++) {
                UnitAt unit = side.get(i);
                double off = Angles.degToMinutes(Math.abs(unit.settingDeg() - wanted.deg(i, side.size())));
                compare(findings, unit.unit(), Measure.atMost(off, accuracy.value(), "min"),
                        OutcomeCollector.weakest(List.of(wanted.citation(), accuracy.citation())),
                        unit.label() + " is set to " + Words.deg(unit.settingDeg()) + "; the slope of " + Words.deg(wanted.slopeDeg())
                                + " gives "
                                + Words.deg(wanted.deg(i, side.size())) + ", within " + Words.min(accuracy.value()) + ".",
                        "Set it to " + Words.deg(wanted.deg(i, side.size())) + ".");
            }
        }
    }
}
