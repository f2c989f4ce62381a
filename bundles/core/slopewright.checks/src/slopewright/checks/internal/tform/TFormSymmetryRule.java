package slopewright.checks.internal.tform;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

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

/** A T form is the same on both sides. Severity fail: two sides that disagree say two things. */
public final class TFormSymmetryRule extends AidRule {

    /** Made by the service loader. */
    public TFormSymmetryRule() {
        super("TF-07", Severity.FAIL, Trait.LEGS, Trait.MIRRORED);
    }

    private record Opposite(UnitAt left, UnitAt right) {
        double differenceM() {
            return Math.abs(Math.abs(left.rightM()) - Math.abs(right.rightM()));
        }
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue tolerance = facts.length("leg-to-edge-tolerance");
        List<List<UnitAt>> sides = facts.sides();
        if (sides.size() != 2 || sides.get(0).size() != sides.get(1).size()) {
            outcomes.about(facts.aid()).met(false).resting(tolerance).saying("uneven").advising("complete").add();
            return;
        }
        List<UnitAt> left = inOrder(sides.get(0));
        List<UnitAt> right = inOrder(sides.get(1));
        List<Opposite> pairs = IntStream.range(0, left.size()).mapToObj(i -> new Opposite(left.get(i), right.get(i))).toList();
        Worst<Opposite> worst = Worst.of(pairs, pair -> Measure.atMost(pair.differenceM(), tolerance.value(), "m"));
        outcomes.about(facts.aid()).measured(worst.measure()).resting(tolerance)
                .saying("across", worst.item().left().name(), worst.item().right().name(), Words.m(worst.measure().value()),
                        Words.m(tolerance.value()))
                .advising("shift").add();
        guarded(facts.aid(), outcomes, () -> along(facts, outcomes));
    }

    /** The wing bar from the centre line outward, each leg from the threshold onward. */
    private static List<UnitAt> inOrder(List<UnitAt> side) {
        return side.stream().sorted(Comparator.comparingInt(UnitAt::bar)
                .thenComparingDouble(unit -> unit.bar() == 1 ? Math.abs(unit.rightM()) : unit.alongM())).toList();
    }

    /** Both sides give one height over the threshold: their bars stand opposite each other once the levels are made good. */
    private static void along(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue tolerance = facts.common("siting.eye-height-tolerance-m");
        List<TFormSide> sides = TFormSide.of(facts);
        double slope = facts.slopeDeg();
        double left = sides.get(0).barM() * Angles.tanDeg(slope);
        double right = sides.get(1).barM() * Angles.tanDeg(slope);
        outcomes.about(facts.aid()).measured(Measure.atMost(Math.abs(left - right), tolerance.value(), "m")).resting(tolerance)
                .saying("along", Words.m(left), Words.m(right), Words.m(tolerance.value())).advising("bring-opposite")
                .step("difference", Words.mm(Math.max(left, right)), Words.mm(Math.min(left, right)), Words.mm(Math.abs(left - right)))
                .add();
    }
}
