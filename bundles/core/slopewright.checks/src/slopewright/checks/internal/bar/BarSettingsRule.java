package slopewright.checks.internal.bar;

import java.util.Comparator;
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

/** Each bar is set to its step from the slope. */
public final class BarSettingsRule extends AidRule {

    /** Made by the service loader. */
    public BarSettingsRule() {
        super("BAR-05", Severity.FAIL, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue accuracy = facts.value("setting-accuracy-min");
        double slope = facts.laid().slopeDeg();
        List<String> names = facts.indicator().bars();
        for (int bar = 1; bar <= names.size(); bar++) {
            CitedValue offset = facts.angle(names.get(bar - 1) + "-offset");
            double wanted = slope + offset.value();
            UnitAt worst = facts.bar(bar).stream().max(Comparator.comparingDouble(unit -> Math.abs(unit.settingDeg() - wanted)))
                    .orElseThrow();
            double off = Angles.degToMinutes(Math.abs(worst.settingDeg() - wanted));
            compare(findings, facts.aid(), Measure.atMost(off, accuracy.value(), "min"),
                    OutcomeCollector.weakest(List.of(offset.citation(), accuracy.citation())), "In the " + names.get(bar - 1) + " bar "
                            + worst.label()
                            + " is set to " + Words.deg(worst.settingDeg()) + "; the slope of " + Words.deg(slope) + " gives "
                            + Words.deg(wanted)
                            + ", within " + Words.min(accuracy.value()) + ".",
                    "Set it to " + Words.deg(wanted)
                            + ", or confirm the other tradition (near half a degree below, far on the slope) by an override.");
        }
    }
}
