package slopewright.checks.internal.tform;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Worst;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The legs keep their spacing. Severity fail: the form is no longer read. */
public final class TFormSpacingRule extends AidRule {

    /** Made by the service loader. */
    public TFormSpacingRule() {
        super("TF-02", Severity.FAIL, Trait.LEGS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue tolerance = facts.value("spacing-tolerance-percent");
        CitedValue first = facts.length("leg-first-offset");
        CitedValue next = facts.length("leg-spacing");
        for (TFormSide side : TFormSide.of(facts)) {
            Worst<TFormLeg> worst = Worst.of(side.legs(), leg -> {
                double wanted = leg.number() == 1 ? first.value() : next.value();
                return Measure.within(leg.spacingM(), wanted, wanted * tolerance.value() / 100, "m");
            });
            TFormLeg leg = worst.item();
            outcomes.about(facts.aid()).measured(worst.measure()).resting(tolerance, first, next)
                    .saying(leg.number() == 1 ? "from-bar" : "from-neighbour", leg.unit().name(), Words.m(leg.spacingM()),
                            Words.m(leg.number() == 1 ? first.value() : next.value()), Words.m(worst.measure().limit()))
                    .advising("move").step("difference", Words.mm(Math.max(leg.levelM(), leg.fromM())),
                            Words.mm(Math.min(leg.levelM(), leg.fromM())), Words.mm(Math.abs(leg.levelM() - leg.fromM())))
                    .add();
        }
    }
}
