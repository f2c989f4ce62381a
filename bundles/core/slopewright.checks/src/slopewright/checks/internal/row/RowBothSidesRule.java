package slopewright.checks.internal.row;

import java.util.List;
import java.util.stream.IntStream;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Rows on both sides change together. Severity fail: two rows that disagree say two things. */
public final class RowBothSidesRule extends AidRule {

    /** Made by the service loader. */
    public RowBothSidesRule() {
        super("ROW-10", Severity.FAIL, Trait.ROW);
    }

    private record Opposite(UnitAt left, UnitAt right) {
        double differenceMin() {
            return Angles.degToMinutes(Math.abs(left.settingDeg() - right.settingDeg()));
        }
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        List<List<UnitAt>> sides = facts.sides();
        if (sides.size() < 2) {
            throw Stop.notApplicable(Message.of("ROW-10.single-side"));
        }
        List<UnitAt> left = sides.get(0);
        List<UnitAt> right = sides.get(1);
        CitedValue alike = facts.value("both-sides-difference-min");
        CitedValue accuracy = facts.value("setting-accuracy-min");
        OutcomeCollector.Entry entry = outcomes.about(facts.aid()).resting(alike, accuracy);
        if (left.size() != right.size()) {
            entry.met(false).saying("uneven", Words.count(left.size()), Words.count(right.size())).advising("complete").add();
            return;
        }
        double limit = alike.value() + accuracy.value();
        List<Opposite> pairs = IntStream.range(0, left.size()).mapToObj(i -> new Opposite(left.get(i), right.get(i))).toList();
        Worst<Opposite> worst = Worst.of(pairs, pair -> Measure.atMost(pair.differenceMin(), limit, "min"));
        entry.measured(worst.measure()).saying("differ", worst.item().left().name(), worst.item().right().name(),
                Words.min(worst.measure().value()), Words.min(limit)).advising("set-alike").add();
    }
}
