package slopewright.checks.internal.bar;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.geometry.Angles;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Each bar is set to its step from the slope. Severity fail: another setting is another path. */
public final class BarSettingsRule extends AidRule {

    /** Made by the service loader. */
    public BarSettingsRule() {
        super("BAR-05", Severity.FAIL, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue accuracy = facts.value("setting-accuracy-min");
        double slope = facts.slopeDeg();
        List<String> names = facts.indicator().bars();
        for (int bar = 1; bar <= names.size(); bar++) {
            CitedValue offset = facts.angle(names.get(bar - 1) + "-offset");
            double wanted = slope + offset.value();
            Worst<UnitAt> worst = Worst.of(facts.bar(bar), unit -> Measure
                    .atMost(Angles.degToMinutes(Math.abs(unit.settingDeg() - wanted)), accuracy.value(), "min"));
            outcomes.about(facts.aid()).measured(worst.measure()).resting(offset, accuracy)
                    .saying("setting", Words.count(bar), Words.term("bar." + names.get(bar - 1)), worst.item().name(),
                            Words.deg(worst.item().settingDeg()), Words.deg(slope), Words.deg(wanted), Words.min(accuracy.value()))
                    .advising("set", Words.deg(wanted))
                    .step("setting", Words.deg(slope), Words.min(Angles.degToMinutes(offset.value())), Words.deg(wanted)).add();
        }
    }
}
