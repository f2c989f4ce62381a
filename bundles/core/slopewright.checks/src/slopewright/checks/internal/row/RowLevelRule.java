package slopewright.checks.internal.row;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * The lenses of a row stand at one level, or rise evenly: no two of a side differ by more than the printed tolerance, or every gradient
 * between neighbours is equal within the accuracy of the levels. Where a rule set asks for one plane, an even gradient is no excuse.
 * Severity fail: a lens that stands higher shows its change of colour higher.
 */
public final class RowLevelRule extends AidRule {

    /** Made by the service loader. */
    public RowLevelRule() {
        super("ROW-11", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue limit = facts.length("level-difference");
        boolean onePlane = RowLevels.isOnePlane(facts);
        for (List<UnitAt> side : facts.sides()) {
            guarded(facts.aid(), outcomes, () -> {
                if (onePlane) {
                    inOnePlane(facts, side, limit, outcomes);
                } else {
                    atOneLevelOrEven(facts, side, limit, outcomes);
                }
            });
        }
    }

    private static void inOnePlane(AidFacts facts, List<UnitAt> side, CitedValue limit, OutcomeCollector outcomes) {
        double mean = side.stream().mapToDouble(UnitAt::lensElevationM).average().orElseThrow();
        Worst<UnitAt> worst = Worst.of(side, unit -> Measure.atMost(Math.abs(unit.lensElevationM() - mean), limit.value(), "m"));
        outcomes.about(facts.aid()).measured(worst.measure()).resting(limit).citing(facts.choice("level-basis").citation())
                .saying("off-plane", worst.item().name(), Words.mm(worst.measure().value()), Words.mm(limit.value()))
                        .advising("level-units")
                .step("difference", Words.mm(Math.max(worst.item().lensElevationM(), mean)),
                        Words.mm(Math.min(worst.item().lensElevationM(), mean)), Words.mm(worst.measure().value()))
                .add();
    }

    private static void atOneLevelOrEven(AidFacts facts, List<UnitAt> side, CitedValue limit, OutcomeCollector outcomes) {
        if (side.size() < 2) {
            throw Stop.notApplicable(Message.of("ROW-11.single", side.get(0).name()));
        }
        Worst<Neighbours> widest = RowLevels.widest(side, limit);
        Argument lower = widest.item().inner().name();
        Argument upper = widest.item().outer().name();
        Argument difference = Words.mm(widest.measure().value());
        if (widest.measure().isMet()) {
            outcomes.about(facts.aid()).measured(widest.measure()).resting(limit)
                    .saying("level", lower, upper, difference, Words.mm(limit.value())).add();
            return;
        }
        List<Neighbours> neighbours = Neighbours.of(side);
        if (neighbours.size() == 1) {
            outcomes.about(facts.aid()).met(true).resting(limit)
                    .saying("one-gradient", lower, upper, difference, Words.mm(limit.value())).add();
            return;
        }
        Message accuracyText = Message.of("missing.level-accuracy", Words.mm(limit.value()));
        Double accuracy = facts.aid().getLevelAccuracyM();
        if (accuracy == null || accuracy < 0 || accuracy > limit.value()) {
            throw Stop.missing(accuracyText, Message.of("ROW-11.accuracy", lower, upper, difference, Words.mm(limit.value()),
                    accuracyText));
        }
        Neighbours steepest = Collections.max(neighbours, Comparator.comparingDouble(Neighbours::gradient));
        Neighbours flattest = Collections.min(neighbours, Comparator.comparingDouble(Neighbours::gradient));
        double spacing = Math.max(steepest.spacingM(), flattest.spacingM());
        double uneven = (steepest.gradient() - flattest.gradient()) * spacing;
        Measure measure = Measure.atMost(uneven, accuracy, "m");
        outcomes.about(facts.aid()).measured(measure).resting(limit)
                .saying(measure.isMet() ? "even" : "uneven", lower, upper, difference, Words.mm(limit.value()),
                        Words.percent(100 * flattest.gradient()), Words.percent(100 * steepest.gradient()), Words.mm(uneven),
                        Words.mm(accuracy))
                .advising("level-or-even").step("unevenness", Words.percent(100 * steepest.gradient()),
                        Words.percent(100 * flattest.gradient()), Words.m(spacing), Words.mm(uneven))
                .add();
    }
}
