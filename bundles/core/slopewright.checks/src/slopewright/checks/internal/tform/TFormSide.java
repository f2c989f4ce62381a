package slopewright.checks.internal.tform;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;

/**
 * One side of a T form, reduced to level ground: each unit at the place where its plane would pass the same height over the threshold.
 *
 * @param barM place of the wing bar
 * @param legs fly-up 1 to 3, then fly-down 1 to 3
 */
record TFormSide(double barM, List<TFormLeg> legs) {
    private static final int UNITS = 3;

    /** Returns the sides; ends the rule where a side lacks units. */
    static List<TFormSide> of(AidFacts facts) {
        double datum = AidFacts.need(facts.end().getThresholdElevationM(), Message.of("missing.threshold-elevation"));
        double slope = facts.slopeDeg();
        return facts.sides().stream().map(side -> of(side, slope, datum)).toList();
    }

    private static TFormSide of(List<UnitAt> side, double slopeDeg, double datumM) {
        double bar = side.stream().filter(unit -> unit.bar() == 1).mapToDouble(unit -> levelM(unit, slopeDeg, datumM)).average()
                .orElseThrow(() -> Stop.missing(Message.of("missing.wing-units")));
        List<TFormLeg> legs = new ArrayList<>();
        addLegs(legs, side, bar, datumM, true);
        addLegs(legs, side, bar, datumM, false);
        return new TFormSide(bar, legs);
    }

    private static void addLegs(List<TFormLeg> legs, List<UnitAt> side, double barM, double datumM, boolean up) {
        Comparator<UnitAt> along = Comparator.comparingDouble(UnitAt::alongM);
        List<UnitAt> fromBar = side.stream().filter(unit -> unit.bar() == (up ? 2 : UNITS)).sorted(up ? along.reversed() : along).toList();
        if (fromBar.size() != UNITS) {
            Message missing = Message.of(up ? "missing.fly-up-units" : "missing.fly-down-units");
            throw Stop.missing(missing, Message.of("outcome.leg-units", missing, Words.count(fromBar.size())));
        }
        double from = barM;
        for (int i = 0; i < UNITS; i++) {
            double level = levelM(fromBar.get(i), fromBar.get(i).settingDeg(), datumM);
            legs.add(new TFormLeg(fromBar.get(i), i + 1, up, from, level));
            from = level;
        }
    }

    private static double levelM(UnitAt unit, double angleDeg, double datumM) {
        return unit.alongM() + (unit.lensElevationM() - datumM) / Angles.tanDeg(angleDeg);
    }
}
