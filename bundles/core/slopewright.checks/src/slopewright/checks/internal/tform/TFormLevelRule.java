package slopewright.checks.internal.tform;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Worst;
import slopewright.geometry.Angles;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Each leg unit is moved for its own level difference. Severity fail: a unit that is not moved shows another slope than its fellows. */
public final class TFormLevelRule extends AidRule {

    /** Made by the service loader. */
    public TFormLevelRule() {
        super("TF-08", Severity.FAIL, Trait.LEGS);
    }

    /** A leg with the height at which its cut-off passes over the threshold, and the one that is wanted; metres. */
    private record Passage(TFormLeg leg, double heightM, double wantedM, double toleranceM) {
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue tolerance = facts.value("spacing-tolerance-percent");
        List<Passage> passages = TFormSide.of(facts).stream()
                .flatMap(side -> side.legs().stream().map(leg -> passage(facts, side, leg, tolerance))).toList();
        Worst<Passage> worst = Worst.of(passages,
                passage -> Measure.within(passage.heightM(), passage.wantedM(), passage.toleranceM(), "m"));
        Passage passage = worst.item();
        outcomes.about(facts.aid()).measured(worst.measure()).resting(tolerance)
                .saying("passes", passage.leg().unit().name(), Words.m(passage.heightM()), Words.m(passage.wantedM()),
                        Words.m(passage.toleranceM()))
                .advising("move")
                .step("height-of-plane", Words.m(passage.leg().levelM()), Words.deg(passage.leg().unit().settingDeg()),
                        Words.m(passage.heightM()))
                .add();
    }

    private static Passage passage(AidFacts facts, TFormSide side, TFormLeg leg, CitedValue tolerance) {
        double nominal = leg.nominalM(facts);
        double tan = Angles.tanDeg(leg.unit().settingDeg());
        double wanted = side.barM() + (leg.up() ? -nominal : nominal);
        return new Passage(leg, leg.levelM() * tan, wanted * tan, nominal * tolerance.value() / 100 * tan);
    }
}
