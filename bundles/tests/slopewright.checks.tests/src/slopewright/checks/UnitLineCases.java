package slopewright.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import slopewright.model.AidSide;
import slopewright.model.Helipad;
import slopewright.model.LightUnit;
import slopewright.model.Place;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;

/**
 * Cases of the rules that hold the units of one bar against each other, in families other than rows as well: where each points, where it
 * stands along and across, and how high. On a slope of 3 degrees 1 m along is 0.05241 m of height.
 */
final class UnitLineCases {
    private UnitLineCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        axes(cases);
        line(cases);
        across(cases);
        otherAreas(cases);
        return cases;
    }

    private static LightUnit labelled(Sample sample, String label) {
        return sample.aid().getUnits().stream().filter(unit -> label.equals(unit.getLabel())).findFirst().orElseThrow();
    }

    /** Half a degree, as UFC 3-535-01, 12-3.2, prints it of rows. */
    private static void axes(List<RuleCase> cases) {
        cases.add(RuleCase.of("UNIT-10", Result.PASS, "half a degree", Bases::twoBar, sample -> sample.unit(0).setAzimuthOffsetDeg(0.5)));
        cases.add(RuleCase.of("UNIT-10", Result.FAIL, "a box of a bar, 5 degrees", Bases::twoBar,
                sample -> sample.unit(0).setAzimuthOffsetDeg(5.0)));
        cases.add(RuleCase.of("UNIT-10", Result.FAIL, "a unit of a T form, 0.6 degrees to the left", Bases::tForm,
                sample -> sample.unit(0).setAzimuthOffsetDeg(-0.6)));
        cases.add(RuleCase.of("UNIT-10", Result.FAIL, "one of a pair, 14 degrees", Bases::padPair,
                sample -> sample.unit(1).setAzimuthOffsetDeg(14.0)));
        cases.add(RuleCase.of("UNIT-10", Result.NOT_EVALUATED, "the only unit, 5 degrees, and no turn of the axis", Bases::padSector,
                sample -> sample.unit(0).setAzimuthOffsetDeg(5.0)));
        cases.add(RuleCase.of("UNIT-10", Result.NOT_EVALUATED, "all boxes alike", Bases::threeBar,
                sample -> sample.units(unit -> unit.setAzimuthOffsetDeg(-3.0))));
        cases.add(RuleCase.of("UNIT-10", Result.PASS, "an axis that is turned as such", Bases::padSector,
                sample -> sample.aid().setAxisTurnDeg(5.0)));
        cases.add(RuleCase.of("UNIT-10", Result.NOT_EVALUATED, "not entered", Bases::triColour,
                sample -> sample.unit(0).setAzimuthOffsetDeg(null)));
        cases.add(RuleCase.of("UNIT-10", Result.NOT_APPLICABLE, "a row, of which a rule of its own asks", Bases::row, Sample::unchanged));
    }

    /** 0.3 m of height are 5.724 m along a slope of 3 degrees: 0.3 / tan 3. */
    private static void line(List<RuleCase> cases) {
        cases.add(RuleCase.of("UNIT-11", Result.PASS, "boxes beside each other", Bases::twoBar, Sample::unchanged));
        cases.add(RuleCase.of("UNIT-11", Result.PASS, "5.7 m behind", Bases::twoBar, sample -> along(sample.unit(0), 5.7)));
        cases.add(RuleCase.of("UNIT-11", Result.FAIL, "5.8 m behind", Bases::twoBar, sample -> along(sample.unit(0), 5.8)));
        cases.add(RuleCase.of("UNIT-11", Result.PASS, "10 m behind, and lower by 10 tan 3", Bases::twoBar, sample -> {
            along(sample.unit(0), 10);
            up(sample.unit(0), -0.524);
        }));
        cases.add(RuleCase.of("UNIT-11", Result.FAIL, "a lens 0.31 m higher", Bases::threeBar, sample -> up(labelled(sample, "M1"), 0.31)));
        cases.add(RuleCase.of("UNIT-11", Result.FAIL, "a unit of a wing bar 6 m nearer", Bases::tForm,
                sample -> along(labelled(sample, "W1-left"), -6)));
        cases.add(RuleCase.of("UNIT-11", Result.FAIL, "one of a pair 0.31 m lower", Bases::padPair, sample -> up(sample.unit(0), -0.31)));
        cases.add(RuleCase.of("UNIT-11", Result.PASS, "a row on both sides", UnitLineCases::rows, Sample::unchanged));
        cases.add(RuleCase.of("UNIT-11", Result.FAIL, "the right row a metre higher", UnitLineCases::rows,
                sample -> sample.units(unit -> up(unit, unit.getRightM() > 0 ? 1 : 0))));
        cases.add(RuleCase.of("UNIT-11", Result.PASS, "both rows rise outward, as the printed 1.25 % lets them", UnitLineCases::rows,
                sample -> sample.units(unit -> up(unit, Math.abs(unit.getRightM()) * 0.0125))));
        cases.add(RuleCase.of("UNIT-11", Result.NOT_EVALUATED, "a lens that is not entered", Bases::twoBar,
                sample -> sample.unit(0).setLensElevationM(null)));
        cases.add(RuleCase.of("UNIT-11", Result.NOT_APPLICABLE, "one unit", Bases::padSector, Sample::unchanged));
        cases.add(RuleCase.of("UNIT-11", Result.NOT_APPLICABLE, "a row on one side", Bases::row, Sample::unchanged));
    }

    /** A T form has its bar units 6 and 12 m to both sides of the legs, within 3 m (Annex 14 Vol I, 9th ed., Fig 5-17). */
    private static void across(List<RuleCase> cases) {
        cases.add(RuleCase.of("BAR-09", Result.PASS, "boxes beside each other", Bases::threeBar, Sample::unchanged));
        cases.add(RuleCase.of("BAR-09", Result.PASS, "10 m apart", Bases::twoBar, sample -> apart(sample, 10)));
        cases.add(RuleCase.of("BAR-09", Result.FAIL, "10.1 m apart", Bases::twoBar, sample -> apart(sample, 10.1)));
        cases.add(RuleCase.of("BAR-09", Result.FAIL, "1.9 m apart", Bases::twoBar, sample -> apart(sample, 1.9)));
        cases.add(RuleCase.of("BAR-09", Result.PASS, "the far bar 3 m farther out", Bases::twoBar, sample -> farBarOut(sample, 3)));
        cases.add(RuleCase.of("BAR-09", Result.FAIL, "the far bar 3.1 m farther out", Bases::twoBar, sample -> farBarOut(sample, 3.1)));
        cases.add(RuleCase.of("BAR-09", Result.NOT_EVALUATED, "a place that is not entered", Bases::twoBar,
                sample -> sample.unit(0).setRightM(null)));
        cases.add(RuleCase.of("TF-09", Result.PASS, "at their places", Bases::tFormOfToday, Sample::unchanged));
        cases.add(RuleCase.of("TF-09", Result.PASS, "3 m outward", Bases::tFormOfToday, sample -> outward(sample, "W4-left", 3)));
        cases.add(RuleCase.of("TF-09", Result.FAIL, "3.1 m outward", Bases::tFormOfToday, sample -> outward(sample, "W4-right", 3.1)));
        cases.add(RuleCase.of("TF-09", Result.FAIL, "one beyond the legs", Bases::tFormOfToday,
                sample -> outward(sample, "W2-left", 13)));
        cases.add(RuleCase.of("TF-09", Result.NOT_EVALUATED, "three", Bases::tFormOfToday,
                sample -> sample.aid().getUnits().remove(labelled(sample, "W1-left"))));
        cases.add(RuleCase.of("PANEL-04", Result.PASS, "between", Bases::panels, Sample::unchanged));
        // The layout has it in the middle of front panels that stand 6 m apart, of which a quarter is 1.5 m.
        cases.add(RuleCase.of("PANEL-04", Result.PASS, "1.45 m off", Bases::panels, sample -> outward(sample, "P2", 1.45)));
        cases.add(RuleCase.of("PANEL-04", Result.FAIL, "1.55 m off", Bases::panels, sample -> outward(sample, "P2", 1.55)));
        // With P3 36 m farther out the front panels stand 42 m apart, the rear one 3 m from P1 and 18 m from the middle.
        cases.add(RuleCase.of("PANEL-04", Result.FAIL, "a front panel 36 m farther out", Bases::panels,
                sample -> outward(sample, "P3", 36)));
        cases.add(RuleCase.of("PANEL-04", Result.FAIL, "27 m beside", Bases::panels,
                sample -> outward(sample, "P2", 27)));
        cases.add(RuleCase.of("PANEL-04", Result.NOT_EVALUATED, "a place that is not entered", Bases::panels,
                sample -> labelled(sample, "P2").setRightM(null)));
    }

    private static Sample rows() {
        return Sample.runway("icao:5th", "four-unit-row", sample -> sample.aid().setSide(AidSide.BOTH));
    }

    private static void along(LightUnit unit, double byM) {
        unit.setAlongM(unit.getAlongM() + byM);
    }

    private static void up(LightUnit unit, double byM) {
        unit.setLensElevationM(unit.getLensElevationM() + byM);
    }

    private static void outward(Sample sample, String label, double byM) {
        LightUnit unit = labelled(sample, label);
        unit.setRightM(unit.getRightM() + Math.signum(unit.getRightM()) * byM);
    }

    private static void apart(Sample sample, double byM) {
        labelled(sample, "N2").setRightM(labelled(sample, "N1").getRightM() - byM);
    }

    private static void farBarOut(Sample sample, double byM) {
        sample.units(unit -> unit.setRightM(unit.getRightM() - (unit.getBar() == 2 ? byM : 0)));
    }

    /** A runway 30 m wide that crosses before the near bar, and a pad of 20 m in a safety area of 30 m there: 15 m to their edges. */
    private static void otherAreas(List<RuleCase> cases) {
        cases.add(RuleCase.of("UNIT-12", Result.NOT_APPLICABLE, "one runway", Bases::twoBar, Sample::unchanged));
        cases.add(RuleCase.of("UNIT-12", Result.PASS, "15.1 m from a crossing runway", Bases::twoBar, sample -> crossing(sample, 15.1)));
        cases.add(RuleCase.of("UNIT-12", Result.FAIL, "14.9 m from its centre line", Bases::twoBar, sample -> crossing(sample, 14.9)));
        cases.add(RuleCase.of("UNIT-12", Result.FAIL, "before its displaced threshold", Bases::twoBar, sample -> {
            Runway crossing = crossing(sample, 14.9);
            crossing.getEnds().get(0).getThreshold().setNorthM(400.0);
            crossing.getEnds().get(0).setDisplacedThresholdM(900.0);
        }));
        cases.add(RuleCase.of("UNIT-12", Result.PASS, "beyond its end", Bases::twoBar,
                sample -> crossing(sample, 14.9).getEnds().get(0).getThreshold().setNorthM(400.0)));
        cases.add(RuleCase.of("UNIT-12", Result.NOT_EVALUATED, "a runway of no width", Bases::twoBar,
                sample -> crossing(sample, 15.1).setWidthM(null)));
        cases.add(RuleCase.of("UNIT-12", Result.PASS, "15.1 m from a pad", Bases::triColour, sample -> padBeside(sample, 15.1)));
        cases.add(RuleCase.of("UNIT-12", Result.FAIL, "14.9 m from a pad", Bases::triColour, sample -> padBeside(sample, 14.9)));
        cases.add(RuleCase.of("UNIT-12", Result.NOT_EVALUATED, "18 m from a pad that may lie askew", Bases::triColour,
                sample -> padBeside(sample, 18).setFatoBearingDeg(null)));
        cases.add(RuleCase.of("UNIT-12", Result.PASS, "21.3 m from it", Bases::triColour,
                sample -> padBeside(sample, 21.3).setFatoBearingDeg(null)));
        cases.add(RuleCase.of("UNIT-12", Result.NOT_EVALUATED, "a pad of no size", Bases::triColour,
                sample -> padBeside(sample, 30).setFatoLengthM(null)));
        cases.add(RuleCase.of("UNIT-12", Result.FAIL, "a helipad whose unit stands on a runway", Bases::padSector, sample -> {
            sample.aerodrome().getRunways().add(runway(sample.unit(0).getAlongM(), 500));
        }));
    }

    private static LightUnit nearest(Sample sample) {
        return sample.aid().getUnits().stream().min(Comparator.comparing(LightUnit::getAlongM)).orElseThrow();
    }

    private static Runway crossing(Sample sample, double nearerM) {
        Runway runway = runway(nearest(sample).getAlongM() - nearerM, 500);
        sample.aerodrome().getRunways().add(runway);
        return runway;
    }

    /** Lands toward north. */
    private static Runway runway(double eastM, double halfLengthM) {
        Runway runway = SlopewrightFactory.eINSTANCE.createRunway();
        runway.setDesignator("36/18");
        runway.setWidthM(30.0);
        for (double northM : new double[] {-halfLengthM, halfLengthM}) {
            RunwayEnd end = SlopewrightFactory.eINSTANCE.createRunwayEnd();
            end.setThreshold(place(eastM, northM));
            runway.getEnds().add(end);
        }
        return runway;
    }

    private static Helipad padBeside(Sample sample, double nearerM) {
        LightUnit unit = nearest(sample);
        Helipad pad = SlopewrightFactory.eINSTANCE.createHelipad();
        pad.setName("H2");
        pad.setPlace(place(unit.getAlongM() - nearerM, -unit.getRightM()));
        pad.setFatoLengthM(20.0);
        pad.setFatoWidthM(20.0);
        pad.setFatoBearingDeg(90.0);
        pad.setSafetyAreaWidthM(30.0);
        sample.aerodrome().getHelipads().add(pad);
        return pad;
    }

    private static Place place(double eastM, double northM) {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        place.setEastM(eastM);
        place.setNorthM(northM);
        return place;
    }
}
