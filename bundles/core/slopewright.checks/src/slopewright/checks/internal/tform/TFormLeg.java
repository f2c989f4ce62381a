package slopewright.checks.internal.tform;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.geometry.Angles;

/**
 * One leg unit of a T form with the place that it would have on level ground.
 *
 * @param unit   the unit
 * @param number 1 to 3 from the bar
 * @param up     whether it is a fly-up unit
 * @param levelM the place on level ground where its cut-off plane would pass the same height over the threshold
 */
record TFormLeg(UnitAt unit, int number, boolean up, double levelM) {

    /** Returns the leg units of one side in the order fly-up 1 to 3, fly-down 1 to 3. */
    static List<TFormLeg> of(AidFacts facts, List<UnitAt> side) {
        double datum = datumM(facts);
        List<TFormLeg> legs = new ArrayList<>();
        for (int bar = 2; bar <= 3; bar++) {
            int number = bar;
            boolean up = bar == 2;
            Comparator<UnitAt> fromBar = Comparator.comparingDouble(UnitAt::alongM);
            List<UnitAt> ordered = side.stream().filter(unit -> unit.bar() == number).sorted(up ? fromBar.reversed() : fromBar).toList();
            if (ordered.size() != 3) {
                throw Stop.missing("three fly-" + (up ? "up" : "down") + " units on each side",
                        "Not evaluated: a side has " + ordered.size() + " fly-" + (up ? "up" : "down") + " units where 3 are needed.");
            }
            for (int i = 0; i < ordered.size(); i++) {
                UnitAt unit = ordered.get(i);
                legs.add(new TFormLeg(unit, i + 1, up, levelM(unit, unit.settingDeg(), datum)));
            }
        }
        return legs;
    }

    /** Returns the place of the wing bar of one side on level ground. */
    static double barLevelM(AidFacts facts, List<UnitAt> side) {
        double datum = datumM(facts);
        double slope = facts.laid().slopeDeg();
        return side.stream().filter(unit -> unit.bar() == 1).mapToDouble(unit -> levelM(unit, slope, datum)).average()
                .orElseThrow(() -> Stop.missing("wing bar units on each side"));
    }

    private static double levelM(UnitAt unit, double angleDeg, double datumM) {
        return unit.alongM() + (unit.lensElevationM() - datumM) / Angles.tanDeg(angleDeg);
    }

    private static double datumM(AidFacts facts) {
        return AidFacts.need(facts.end().getThresholdElevationM(), "threshold elevation");
    }

    /** Returns the published distance from the bar. */
    double nominalM(AidFacts facts) {
        return facts.length("leg-first-offset").value() + (number - 1) * facts.length("leg-spacing").value();
    }

    /** Returns the cut-off that the rule set gives for a slope. */
    double cutOffDeg(AidFacts facts, double slopeDeg) {
        return up ? slopeDeg - (number - 1) * facts.angle("fly-up-step").value() : slopeDeg
                + (number - 1) * facts.angle("fly-down-step").value();
    }
}
