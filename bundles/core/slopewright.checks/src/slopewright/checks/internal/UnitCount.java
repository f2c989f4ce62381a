package slopewright.checks.internal;

import java.util.Comparator;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AidSide;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Trait;

/** Compares the number of units with those that a family comes in; a row on both sides has as many on each. */
public abstract class UnitCount extends AidRule {

    public UnitCount(String id, Trait trait) {
        super(id, Severity.FAIL, trait);
    }

    @Override
    public final void check(AidFacts facts, OutcomeCollector outcomes) {
        IndicatorFamily family = facts.indicator();
        List<Integer> counts = family.unitCounts();
        Argument name = Words.name(family.name());
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
        outcomes.about(facts.aid()).measured(new Measure(count, wanted, -Math.abs(count - wanted), "", 0))
                .saying(Message.of(sides == 2 ? "unit-count.compared-each-side" : "unit-count.compared", name, offered,
                        Words.count(wanted), Words.count(count)))
                .advising(Message.of("unit-count.place")).add();
    }
}
