package slopewright.checks.internal.tform;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.geometry.Angles;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Colour;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;

/**
 * Red begins at a fixed angle or higher, and at the same one for all units that show it. Severity fail: red says that the aeroplane is
 * dangerously low.
 */
public final class TFormRedLimitRule extends AidRule {
    private static final int FLY_DOWN = 3;

    /** Made by the service loader. */
    public TFormRedLimitRule() {
        super("TF-06", Severity.FAIL, Trait.LEGS);
    }

    /** A unit with the angle at which its red ends. */
    private record Red(String label, double topDeg) {
        Argument name() {
            return Message.of("element.unit", Words.name(label));
        }
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue limit = facts.angle("red-limit");
        CitedValue accuracy = facts.angle("setting-accuracy");
        List<UnitPlan> units = facts.laid().units().stream().filter(unit -> unit.bar() != FLY_DOWN).toList();
        List<Red> reds = units.stream().flatMap(unit -> red(unit).stream()).toList();
        List<Argument> without = units.stream().filter(unit -> red(unit).isEmpty())
                .<Argument>map(unit -> Message.of("element.unit", Words.name(unit.id()))).toList();
        if (!without.isEmpty()) {
            outcomes.about(facts.aid()).met(false).resting(limit).saying("no-red", Words.list(without)).advising("enter").add();
        }
        if (reds.isEmpty()) {
            return;
        }
        Red lowest = Collections.min(reds, Comparator.comparingDouble(Red::topDeg));
        Red highest = Collections.max(reds, Comparator.comparingDouble(Red::topDeg));
        outcomes.about(facts.aid()).measured(Measure.atLeast(lowest.topDeg(), limit.value() - accuracy.value(), "deg"))
                .resting(limit, accuracy)
                .saying("ends", lowest.name(), Words.deg(lowest.topDeg()), Words.deg(limit.value()),
                        Words.min(Angles.degToMinutes(accuracy.value())))
                .advising("raise").add();
        double spread = highest.topDeg() - lowest.topDeg();
        outcomes.about(facts.aid()).measured(Measure.atMost(spread, 2 * accuracy.value(), "deg")).resting(accuracy)
                .saying("spread", lowest.name(), Words.deg(lowest.topDeg()), highest.name(), Words.deg(highest.topDeg()),
                        Words.min(Angles.degToMinutes(2 * accuracy.value())))
                .advising("set-alike")
                .step("angle-difference", Words.deg(highest.topDeg()), Words.deg(lowest.topDeg()),
                        Words.min(Angles.degToMinutes(spread)))
                .add();
    }

    private static Optional<Red> red(UnitPlan unit) {
        return unit.edges().stream().filter(edge -> edge.below().colour() == Colour.RED).findFirst()
                .map(edge -> new Red(unit.id(), edge.angleDeg()));
    }
}
