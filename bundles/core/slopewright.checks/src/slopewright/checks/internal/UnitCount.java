package slopewright.checks.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AidSide;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Trait;

/**
 * Compares the number of units with those that a family comes in; a row on both sides has as many on each, and where a family has bars,
 * each has its own.
 */
public abstract class UnitCount extends AidRule {

    public UnitCount(String id, Trait trait) {
        super(id, Severity.FAIL, trait);
    }

    @Override
    public final void check(AidFacts facts, OutcomeCollector outcomes) {
        IndicatorFamily family = facts.indicator();
        List<Integer> counts = family.unitCounts();
        Argument name = Families.name(family);
        Argument offered = Words.list(counts.stream().map(Words::count).toList());
        Integer asked = facts.aid().getUnitCount();
        if (asked != null && !counts.contains(asked)) {
            outcomes.about(facts.aid()).met(false).saying(Message.of("unit-count.not-offered", name, offered, Words.count(asked)))
                    .advising(Message.of("unit-count.correct")).add();
            return;
        }
        int sides = family.has(Trait.ROW) && facts.aid().getSide() == AidSide.BOTH ? 2 : 1;
        int count = facts.units().size();
        int wanted = sides * (asked != null ? asked
                : counts.stream().min(Comparator.comparingInt(offer -> Math.abs(offer * sides - count))).orElseThrow());
        if (count == wanted && sides == 2 && facts.units().stream().filter(unit -> unit.rightM() < 0).count() * 2 != count) {
            outcomes.about(facts.aid()).met(false).saying(Message.of("unit-count.uneven", name, Words.count(wanted / 2)))
                    .advising(Message.of("unit-count.move")).add();
            return;
        }
        if (count == wanted && !family.has(Trait.ROW)) {
            Optional<Bar> wrong = wrongBar(facts, count);
            if (wrong.isPresent()) {
                outcomes.about(facts.aid()).met(false).saying(Message.of("unit-count.by-bar", Words.count(wrong.get().number()),
                        Words.count(wrong.get().left()), Words.count(wrong.get().right()), Words.count(wrong.get().wanted().left()),
                        Words.count(wrong.get().wanted().right()))).advising(Message.of("unit-count.move-to-bar")).add();
                return;
            }
        }
        outcomes.about(facts.aid()).measured(new Measure(count, wanted, -Math.abs(count - wanted), "", 0))
                .saying(Message.of(sides == 2 ? "unit-count.compared-each-side" : "unit-count.compared", name, offered,
                        Words.count(wanted), Words.count(count)))
                .advising(Message.of("unit-count.place")).add();
    }

    /** Units of a bar on each side, or those that it shall have. */
    private record Sides(int left, int right) {
        boolean isLike(Sides wanted) {
            return Math.min(left, right) == Math.min(wanted.left, wanted.right) && left + right == wanted.left + wanted.right;
        }
    }

    private record Bar(int number, int left, int right, Sides wanted) {
    }

    private static Optional<Bar> wrongBar(AidFacts facts, int count) {
        SortedMap<Integer, Sides> wanted = new TreeMap<>();
        facts.wantedAtUnits(count).units().forEach(unit -> add(wanted, unit.bar(), unit.place().rightM()));
        SortedMap<Integer, Sides> laid = new TreeMap<>();
        facts.units().forEach(unit -> add(laid, unit.bar(), unit.rightM()));
        Sides none = new Sides(0, 0);
        return Stream.concat(wanted.keySet().stream(), laid.keySet().stream()).distinct().sorted()
                .filter(bar -> !laid.getOrDefault(bar, none).isLike(wanted.getOrDefault(bar, none)))
                .map(bar -> new Bar(bar, laid.getOrDefault(bar, none).left(), laid.getOrDefault(bar, none).right(),
                        wanted.getOrDefault(bar, none)))
                .findFirst();
    }

    private static void add(SortedMap<Integer, Sides> bars, int bar, double rightM) {
        bars.merge(bar, rightM < 0 ? new Sides(1, 0) : new Sides(0, 1), (first, second) -> new Sides(first.left() + second.left(),
                first.right() + second.right()));
    }
}
