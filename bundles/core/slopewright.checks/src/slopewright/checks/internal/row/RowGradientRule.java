package slopewright.checks.internal.row;

import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * A row whose lenses do not stand at one level rises to the side by no more than the printed gradient. Severity fail: the units no
 * longer show one slope from one place.
 */
public final class RowGradientRule extends AidRule {

    /** Made by the service loader. */
    public RowGradientRule() {
        super("ROW-12", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue limit = facts.value("lateral-gradient-percent");
        CitedValue level = facts.length("level-difference");
        boolean onePlane = RowLevels.isOnePlane(facts);
        for (List<UnitAt> side : facts.sides()) {
            guarded(facts.aid(), outcomes, () -> compare(facts, side, limit, onePlane ? Optional.empty() : Optional.of(level), outcomes));
        }
    }

    private static void compare(AidFacts facts, List<UnitAt> side, CitedValue limit, Optional<CitedValue> level,
            OutcomeCollector outcomes) {
        if (side.size() < 2) {
            throw Stop.notApplicable(Message.of("ROW-12.single", side.get(0).name()));
        }
        level.filter(tolerance -> RowLevels.widest(side, tolerance).measure().isMet()).ifPresent(tolerance -> {
            throw Stop.notApplicable(Message.of("ROW-12.level", Words.mm(tolerance.value())));
        });
        Worst<Neighbours> worst = Worst.of(Neighbours.all(side), pair -> percent(pair, limit));
        Neighbours pair = worst.item();
        outcomes.about(facts.aid()).measured(worst.measure()).resting(limit)
                .saying("gradient", pair.inner().name(), pair.outer().name(), Words.percent(worst.measure().value()),
                        Words.percent(limit.value()))
                .advising("level-units")
                .step("gradient", Words.mm(Math.abs(pair.riseM())), Words.mm(pair.spacingM()), Words.percent(worst.measure().value()))
                        .add();
    }

    /** Both levels are kept to the millimetre, which makes so much of a gradient. */
    private static Measure percent(Neighbours pair, CitedValue limit) {
        return Measure.atMost(100 * Math.abs(pair.gradient()), limit.value(), "%").resolvedTo(100 * Measure.LENGTH_M / pair.spacingM());
    }
}
