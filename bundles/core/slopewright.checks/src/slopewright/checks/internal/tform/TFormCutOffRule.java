package slopewright.checks.internal.tform;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Worst;
import slopewright.geometry.Angles;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The cut-offs of the legs go in steps from the slope. Severity fail: units that appear too late tell too late. */
public final class TFormCutOffRule extends AidRule {

    /** Made by the service loader. */
    public TFormCutOffRule() {
        super("TF-05", Severity.FAIL, Trait.LEGS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue up = facts.angle("fly-up-step");
        CitedValue down = facts.angle("fly-down-step");
        CitedValue accuracy = facts.value("setting-accuracy-min");
        double slope = facts.slopeDeg();
        List<TFormLeg> legs = TFormSide.of(facts).stream().flatMap(side -> side.legs().stream()).toList();
        Worst<TFormLeg> worst = Worst.of(legs, leg -> Measure.atMost(
                Angles.degToMinutes(Math.abs(leg.unit().settingDeg() - slope - leg.offsetDeg(facts))), accuracy.value(), "min"));
        TFormLeg leg = worst.item();
        Argument wanted = Words.deg(slope + leg.offsetDeg(facts));
        outcomes.about(facts.aid()).measured(worst.measure()).resting(up, down, accuracy)
                .saying("cut-off", leg.unit().name(), Words.deg(leg.unit().settingDeg()), Words.deg(slope), wanted,
                        Words.min(accuracy.value()))
                .advising("set", wanted)
                .step("setting", Words.deg(slope), Words.min(Angles.degToMinutes(leg.offsetDeg(facts))), wanted).add();
    }
}
