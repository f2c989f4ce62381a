package slopewright.checks.internal.unit;

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
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Trait;

/**
 * Each unit of any family points along the axis of its aid, to half a degree (own band: what is published of rows, UFC 3-535-01, 12-3.2).
 * Units that are turned away together are an axis that is turned: entered as such, the obstacle surface turns with it and the limit of the
 * turn is asked for; entered unit by unit, both look where nobody is. Severity fail: a unit that points elsewhere than its fellows leaves
 * the signal of another slope.
 */
public final class BeamAxisRule extends AidRule {
    private static final double PARALLEL_DEG = 0.5;

    /** Made by the service loader. */
    public BeamAxisRule() {
        super("UNIT-10", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (facts.indicator().has(Trait.ROW)) {
            throw Stop.notApplicable(Message.of("UNIT-10.row"));
        }
        List<UnitAt> units = facts.units();
        Worst<UnitAt> worst = Worst.of(units, unit -> Measure.atMost(Math.abs(offDeg(unit)), PARALLEL_DEG, "deg"));
        if (!worst.measure().isMet() && isTurnedTogether(units)) {
            throw Stop.missing(Message.of("missing.axis-turn"), Message.of("UNIT-10.together", worst.item().name(),
                    Words.degrees(worst.measure().value()), Words.degrees(PARALLEL_DEG)));
        }
        outcomes.about(facts.aid()).measured(worst.measure())
                .saying("off", worst.item().name(), Words.degrees(worst.measure().value()), Words.degrees(PARALLEL_DEG))
                .advising("turn").add();
    }

    /** Returns whether all are turned away, and alike; where one of them is not known, that is not known either. */
    private static boolean isTurnedTogether(List<UnitAt> units) {
        if (units.stream().anyMatch(unit -> unit.unit().getAzimuthOffsetDeg() == null)) {
            return false;
        }
        Comparator<UnitAt> byTurn = Comparator.comparingDouble(BeamAxisRule::offDeg);
        return units.stream().allMatch(unit -> Math.abs(offDeg(unit)) > PARALLEL_DEG)
                && offDeg(units.stream().max(byTurn).orElseThrow()) - offDeg(units.stream().min(byTurn).orElseThrow()) <= 2 * PARALLEL_DEG;
    }

    private static double offDeg(UnitAt unit) {
        return UnitAt.need(unit.unit().getAzimuthOffsetDeg(), Message.of("missing.unit-azimuth", unit.name()));
    }
}
