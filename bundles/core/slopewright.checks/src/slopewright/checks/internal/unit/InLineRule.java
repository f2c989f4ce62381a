package slopewright.checks.internal.unit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
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

/**
 * Units that are read as one bar, or one pair, show one slope at one place: a plane on the slope through each lens passes the threshold, or
 * the hover point, at one height. So a unit that stands behind its fellows stands lower by what the slope rises, and no other way. Of a row
 * the rules about rows ask within a side; here each unit is held against its opposite on the other side. Severity fail: two lights of one
 * bar that change at different heights say two things.
 */
public final class InLineRule extends AidRule {

    /** Made by the service loader. */
    public InLineRule() {
        super("UNIT-11", Severity.FAIL);
    }

    /** The lowest and the highest of a group. */
    private record Apart(UnitAt low, double lowM, UnitAt high, double highM) {
        double differenceM() {
            return highM - lowM;
        }
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        List<List<UnitAt>> groups = groups(facts).stream().filter(group -> group.size() > 1).toList();
        if (groups.isEmpty()) {
            throw Stop.notApplicable(Message.of("UNIT-11.none-beside"));
        }
        CitedValue tolerance = facts.common("siting.eye-height-tolerance-m");
        double slope = facts.slopeDeg();
        double datum = facts.frame().originElevationM();
        Worst<List<UnitAt>> worst = Worst.of(groups, group -> Measure.atMost(apart(group, slope, datum).differenceM(), tolerance.value(),
                "m"));
        Apart apart = apart(worst.item(), slope, datum);
        outcomes.about(facts.aid()).measured(worst.measure()).resting(tolerance)
                .step("difference", Words.mm(apart.highM()), Words.mm(apart.lowM()), Words.mm(apart.differenceM()))
                .saying("compared", apart.low().name(), Words.m(apart.lowM()), apart.high().name(), Words.m(apart.highM()),
                        Words.m(tolerance.value()))
                .advising("bring").add();
    }

    private static Collection<List<UnitAt>> groups(AidFacts facts) {
        if (facts.indicator().has(Trait.ROW)) {
            List<List<UnitAt>> sides = facts.sides();
            return sides.size() < 2 ? List.of() : IntStream.range(0, Math.min(sides.get(0).size(), sides.get(1).size()))
                    .mapToObj(i -> List.of(sides.get(0).get(i), sides.get(1).get(i))).toList();
        }
        boolean legs = facts.indicator().has(Trait.LEGS);
        return facts.units().stream().filter(unit -> !legs || unit.bar() == 1)
                .collect(Collectors.groupingBy(UnitAt::bar, TreeMap::new, Collectors.toCollection(ArrayList::new)))
                .values().stream().map(List::copyOf).toList();
    }

    private static Apart apart(List<UnitAt> group, double slopeDeg, double datumM) {
        Comparator<UnitAt> byHeight = Comparator.comparingDouble(unit -> heightM(unit, slopeDeg, datumM));
        UnitAt low = group.stream().min(byHeight).orElseThrow();
        UnitAt high = group.stream().max(byHeight).orElseThrow();
        return new Apart(low, heightM(low, slopeDeg, datumM), high, heightM(high, slopeDeg, datumM));
    }

    private static double heightM(UnitAt unit, double slopeDeg, double datumM) {
        return unit.lensElevationM() - datumM + unit.alongM() * Angles.tanDeg(slopeDeg);
    }
}
