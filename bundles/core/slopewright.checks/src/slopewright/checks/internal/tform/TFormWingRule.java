package slopewright.checks.internal.tform;

import java.util.Comparator;
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
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * The units of a wing bar stand at their places to both sides of the line of the legs, within the lateral tolerance. Severity fail: the
 * legs no longer cut the bar in half, and the form is no longer read.
 */
public final class TFormWingRule extends AidRule {

    /** Made by the service loader. */
    public TFormWingRule() {
        super("TF-09", Severity.FAIL, Trait.LEGS);
    }

    /** A unit of the wing bar with its place beside the line of the legs, and the one that it should have; metres outward. */
    private record Wing(UnitAt unit, double offsetM, double wantedM) {
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue inner = facts.length("bar-inner-offset");
        CitedValue outer = facts.length("bar-outer-offset");
        CitedValue tolerance = facts.length("leg-to-edge-tolerance");
        double[] wanted = {-outer.value(), -inner.value(), inner.value(), outer.value()};
        for (List<UnitAt> side : facts.sides()) {
            guarded(facts.aid(), outcomes, () -> {
                Worst<Wing> worst = Worst.of(wings(side, wanted), wing -> Measure.within(wing.offsetM(), wing.wantedM(), tolerance.value(),
                        "m"));
                Wing wing = worst.item();
                outcomes.about(facts.aid()).measured(worst.measure()).resting(inner, outer, tolerance)
                        .saying("place", wing.unit().name(), Words.m(wing.offsetM()), Words.m(wing.wantedM()), Words.m(tolerance.value()))
                        .advising("move").add();
            });
        }
    }

    private static List<Wing> wings(List<UnitAt> side, double[] wantedM) {
        double line = side.stream().filter(unit -> unit.bar() != 1).mapToDouble(unit -> Math.abs(unit.rightM())).average()
                .orElseThrow(() -> Stop.missing(Message.of("missing.leg-units")));
        List<UnitAt> bar = side.stream().filter(unit -> unit.bar() == 1)
                .sorted(Comparator.comparingDouble(unit -> Math.abs(unit.rightM()))).toList();
        if (bar.size() != wantedM.length) {
            throw Stop.missing(Message.of("missing.wing-units"));
        }
        return IntStream.range(0, bar.size()).mapToObj(i -> new Wing(bar.get(i), Math.abs(bar.get(i).rightM()) - line, wantedM[i]))
                .toList();
    }
}
