package slopewright.checks.internal.plausible;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.Runway;
import slopewright.siting.Trait;

/**
 * Units stand beside the runway and not on it, no further than ninety metres from its edge, which is wider than any layout; at a helipad
 * within sixty metres of the approach (own bands). Their lenses stand within ten metres of the level from which heights count, and three in
 * a hundred of the distance from there. They stand on the side that the aid names, the two of a pair on both; and where the rule set prints
 * nothing of it, they still give way when they are struck. Severity fail: a unit with a wrong digit or sign is not where the layout has it.
 */
public final class UnitPlaceRule extends AidRule {
    private static final double MOST_BESIDE_M = 90;
    private static final double MOST_FROM_AXIS_M = 60;
    private static final double ROOM_M = 10;
    private static final double RISE = 0.03;

    /** Made by the service loader. */
    public UnitPlaceRule() {
        super("DATA-56", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        List<UnitAt> units = facts.units();
        Double width = facts.runway().map(Runway::getWidthM).orElse(null);
        for (UnitAt unit : units) {
            double out = Math.abs(unit.rightM());
            if (facts.atRunway() && width != null) {
                outcomes.about(unit.unit()).measured(Measure.between(out - width / 2, 0, MOST_BESIDE_M, "m").strict())
                        .saying("beside", unit.name(), Words.m(out - width / 2), Words.m(MOST_BESIDE_M)).advising("correct").add();
            } else if (!facts.atRunway()) {
                outcomes.about(unit.unit()).measured(Measure.atMost(out, MOST_FROM_AXIS_M, "m"))
                        .saying("axis", unit.name(), Words.m(out), Words.m(MOST_FROM_AXIS_M)).advising("correct").add();
            }
            level(facts, unit, outcomes);
            boolean ruled = facts.rules().choice(facts.indicator().ruleKey() + ".frangible").isPresent();
            if (!ruled && unit.unit().getFrangible() == null) {
                outcomes.notEvaluated(unit.unit(), List.of(Message.of("missing.frangible", Words.list(List.of(unit.name())))),
                        Message.of("DATA-56.unknown", unit.name()));
            } else if (!ruled && Boolean.FALSE.equals(unit.unit().getFrangible())) {
                outcomes.about(unit.unit()).met(false).saying("rigid", unit.name()).advising("mount").add();
            }
        }
        if (!facts.indicator().has(Trait.PAIR)) {
            side(facts.aid(), units, outcomes);
        }
    }

    private static void level(AidFacts facts, UnitAt unit, OutcomeCollector outcomes) {
        Double datum = facts.atRunway() ? facts.end().getThresholdElevationM() : facts.helipad().getElevationM();
        if (datum != null) {
            double room = ROOM_M + RISE * Math.abs(unit.alongM());
            outcomes.about(unit.unit()).measured(Measure.within(unit.lensElevationM(), datum, room, "m"))
                    .saying("level", unit.name(), Words.m(unit.lensElevationM() - datum), Words.m(room)).advising("correct").add();
        }
    }

    private static void side(ApproachAid aid, List<UnitAt> units, OutcomeCollector outcomes) {
        long left = units.stream().filter(unit -> unit.rightM() < 0).count();
        long right = units.stream().filter(unit -> unit.rightM() > 0).count();
        boolean sound = aid.getSide() == AidSide.BOTH ? left > 0 && right > 0 : aid.getSide() == AidSide.LEFT ? right == 0 : left == 0;
        outcomes.about(aid).met(sound).saying(sound ? "side" : "other-side", Words.count(left), Words.count(right)).advising("turn").add();
    }
}
