package slopewright.checks.internal.bar;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Trait;

/**
 * The units of a bar stand beside each other, two to ten metres apart, and each bar begins as far from the centre line as the other, to
 * three metres (own bands: ten metres are the widest printed spacing of a row, 9 + 1 m, and three the printed lateral tolerance of a T
 * form, Annex 14 Vol I Fig 5-19 and 5-17; no figure was read for bars). A warning: each box tells the truth; boxes that stand apart, and
 * bars of which one stands elsewhere, are not read as one over the other.
 */
public final class BarPlacesRule extends AidRule {
    private static final double LEAST_M = 2;
    private static final double MOST_M = 10;
    private static final double LINE_M = 3;

    /** Made by the service loader. */
    public BarPlacesRule() {
        super("BAR-09", Severity.WARNING, Trait.BARS);
    }

    /** Two units, of one bar or the innermost of two bars. */
    private record Two(UnitAt first, UnitAt second, boolean isOneBar) {
        double apartM() {
            return Math.abs(Math.abs(first.rightM()) - Math.abs(second.rightM()));
        }

        Measure measure() {
            return isOneBar ? Measure.between(apartM(), LEAST_M, MOST_M, "m") : Measure.atMost(apartM(), LINE_M, "m");
        }
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        for (List<UnitAt> side : facts.sides()) {
            guarded(facts.aid(), outcomes, () -> compare(facts, side, outcomes));
        }
    }

    private static void compare(AidFacts facts, List<UnitAt> side, OutcomeCollector outcomes) {
        List<List<UnitAt>> bars = IntStream.rangeClosed(1, facts.indicator().bars().size())
                .mapToObj(bar -> side.stream().filter(unit -> unit.bar() == bar).toList()).filter(bar -> !bar.isEmpty()).toList();
        List<Two> all = new ArrayList<>();
        for (List<UnitAt> bar : bars) {
            IntStream.range(1, bar.size()).forEach(i -> all.add(new Two(bar.get(i - 1), bar.get(i), true)));
        }
        IntStream.range(1, bars.size()).forEach(i -> all.add(new Two(bars.get(0).get(0), bars.get(i).get(0), false)));
        if (all.isEmpty()) {
            outcomes.notApplicable(facts.aid(), Message.of("BAR-09.none-beside", side.get(0).name()));
            return;
        }
        Worst<Two> worst = Worst.of(all, Two::measure);
        Two two = worst.item();
        outcomes.about(facts.aid()).measured(worst.measure())
                .saying(two.isOneBar() ? "beside" : "in-line", two.first().name(), two.second().name(), Words.m(two.apartM()),
                        Words.m(two.isOneBar() ? LEAST_M : 0), Words.m(two.isOneBar() ? MOST_M : LINE_M))
                .advising("move").add();
    }
}
