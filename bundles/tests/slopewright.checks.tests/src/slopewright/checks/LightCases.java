package slopewright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import slopewright.model.LightColour;
import slopewright.model.MeasuredIntensity;
import slopewright.model.SlopewrightFactory;
import slopewright.model.Transition;

/**
 * Cases of the rules about the light of the equipment. Limits: Annex 14 Vol I, 9th ed., Fig A2-23 (15 000 cd within 2 degrees, 4000 cd to 8
 * by 3.5 degrees; note 2: white 2 to 6.5 times red), Fig A2-22 (80 000 cd within 1 degree of the axis); Vol II, 4th ed., Fig 5-11 (375 cd
 * to 15 by 10 degrees).
 */
final class LightCases {
    private LightCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        contours(cases);
        factors(cases);
        beams(cases);
        narrowed(cases);
        return cases;
    }

    /** A row that was measured to give little more than is asked for. */
    private static Sample row() {
        return Sample.runway("icao:9th", "four-unit-row", sample -> MeasuredBeam.of(sample.equipment(), "four-unit-row", 1));
    }

    private static Sample tForm() {
        return Sample.runway("icao:9th", "t-form");
    }

    private static Sample sector() {
        return Sample.helipad("icao:9th", "heliport-sector", 6, sample -> MeasuredBeam.of(sample.equipment(), "heliport-sector", 1));
    }

    private static MeasuredIntensity at(Sample sample, LightColour colour, double azimuthDeg, double elevationDeg) {
        return sample.aid().getEquipment().getIntensities().stream().filter(point -> point.getColour() == colour
                && point.getAzimuthDeg() == azimuthDeg && point.getElevationDeg() == elevationDeg).findFirst().orElseThrow();
    }

    private static void set(Sample sample, LightColour colour, double azimuthDeg, double elevationDeg, double candela) {
        at(sample, colour, azimuthDeg, elevationDeg).setIntensityCd(candela);
    }

    private static void drop(Sample sample, LightColour colour, double azimuthDeg, double elevationDeg) {
        sample.aid().getEquipment().getIntensities().remove(at(sample, colour, azimuthDeg, elevationDeg));
    }

    private static void contours(List<RuleCase> cases) {
        cases.add(RuleCase.of("LIGHT-01", Result.PASS, "a row that reaches the contours", LightCases::row, Sample::unchanged));
        cases.add(RuleCase.of("LIGHT-01", Result.PASS, "15 000 cd at 2 degrees", LightCases::row,
                sample -> set(sample, LightColour.RED, 2, 0, 15_000)));
        cases.add(RuleCase.of("LIGHT-01", Result.FAIL, "14 999 cd at 2 degrees", LightCases::row,
                sample -> set(sample, LightColour.RED, 2, 0, 14_999)));
        cases.add(RuleCase.of("LIGHT-01", Result.PASS, "4000 cd at 8 degrees", LightCases::row,
                sample -> set(sample, LightColour.RED, -8, 0, 4000)));
        cases.add(RuleCase.of("LIGHT-01", Result.FAIL, "3999 cd at 8 degrees", LightCases::row,
                sample -> set(sample, LightColour.RED, -8, 0, 3999)));
        cases.add(RuleCase.of("LIGHT-01", Result.FAIL, "white of 29 999 cd where twice the red is asked for", LightCases::row,
                sample -> set(sample, LightColour.WHITE, 0, 2, 29_999)));
        cases.add(RuleCase.of("LIGHT-01", Result.NOT_EVALUATED, "nothing at 3.5 degrees below", LightCases::row,
                sample -> drop(sample, LightColour.RED, 0, -3.5)));
        cases.add(RuleCase.of("LIGHT-01", Result.PASS, "farther out and as strong instead", LightCases::row,
                sample -> at(sample, LightColour.RED, 0, -3.5).setElevationDeg(-3.7)));
        cases.add(RuleCase.of("LIGHT-01", Result.NOT_EVALUATED, "nearer in instead", LightCases::row,
                sample -> at(sample, LightColour.RED, 0, -3.5).setElevationDeg(-3.4)));
        cases.add(RuleCase.of("LIGHT-01", Result.FAIL, "too weak, and a direction that nobody measured", LightCases::row, sample -> {
            drop(sample, LightColour.RED, 0, -3.5);
            set(sample, LightColour.RED, 0, 0, 1000);
        }));
        cases.add(RuleCase.of("LIGHT-01", Result.NOT_EVALUATED, "nothing measured", LightCases::row,
                sample -> sample.aid().getEquipment().getIntensities().clear()));
        cases.add(RuleCase.of("LIGHT-01", Result.NOT_EVALUATED, "a measurement without a colour", LightCases::row,
                sample -> at(sample, LightColour.RED, 0, 0).setColour(LightColour.NONE)));
        cases.add(RuleCase.of("LIGHT-01", Result.NOT_EVALUATED, "no equipment", LightCases::row,
                sample -> sample.aid().setEquipment(null)));
        cases.add(RuleCase.of("LIGHT-01", Result.PASS, "a T form that reaches the limits", LightCases::tForm, Sample::unchanged));
        cases.add(RuleCase.of("LIGHT-01", Result.FAIL, "79 999 cd at 1 degree", LightCases::tForm,
                sample -> set(sample, LightColour.WHITE, 1, 0, 79_999)));
        cases.add(RuleCase.of("LIGHT-01", Result.PASS, "a sector unit that reaches the ellipses", LightCases::sector,
                Sample::unchanged));
        cases.add(RuleCase.of("LIGHT-01", Result.FAIL, "374 cd at 10 degrees", LightCases::sector,
                sample -> set(sample, LightColour.RED, 0, -10, 374)));
        cases.add(RuleCase.of("LIGHT-01", Result.NOT_APPLICABLE, "no contours were read", Bases::twoBar, Sample::unchanged));
        darkEdge(cases);
    }

    /** A portable unit whose red ends 4 degrees below the setting: the contours at 6, 8 and 10 degrees end there, that at 2 never does. */
    private static void darkEdge(List<RuleCase> cases) {
        edge(cases, Result.PASS, "dark below 4 degrees", -4, true, -6, -8, -10);
        edge(cases, Result.NOT_EVALUATED, "dark below 4 degrees, and nothing measured there", -4, true, -4, -6, -8, -10);
        edge(cases, Result.NOT_EVALUATED, "dark below 4 degrees, but not portable", -4, false, -6, -8, -10);
        edge(cases, Result.NOT_EVALUATED, "dark below 7 degrees", -7, true, -6, -8, -10);
        edge(cases, Result.PASS, "dark below 2.5 degrees, and measured there", -2.5, -4, true, -6, -8, -10);
        edge(cases, Result.NOT_EVALUATED, "dark already within the innermost contour, and measured at its edge", -1.5, -2, true, -4, -6, -8,
                -10);
    }

    private static void edge(List<RuleCase> cases, Result expected, String name, double edgeDeg, boolean portable, double... unmeasured) {
        edge(cases, expected, name, edgeDeg, edgeDeg, portable, unmeasured);
    }

    /** The measurement at one of the contours stands at the edge instead. */
    private static void edge(List<RuleCase> cases, Result expected, String name, double edgeDeg, double movedDeg, boolean portable,
            double... unmeasured) {
        cases.add(RuleCase.of("LIGHT-01", expected, name, LightCases::sector, sample -> {
            Transition edge = SlopewrightFactory.eINSTANCE.createTransition();
            edge.setOffsetDeg(edgeDeg);
            edge.setBelowColour(LightColour.NONE);
            edge.setAboveColour(LightColour.RED);
            sample.aid().getEquipment().getSectors().add(0, edge);
            sample.aid().setPortable(portable);
            if (movedDeg != edgeDeg) {
                at(sample, LightColour.RED, 0, movedDeg).setElevationDeg(edgeDeg);
            }
            for (double elevationDeg : unmeasured) {
                drop(sample, LightColour.RED, 0, elevationDeg);
            }
        }));
    }

    /** The outermost unit stands 22.5 + 15 + 3 x 9 = 64.5 m beside the centre line: atan(64.5 / (300 + 900)) = 3.0768 degrees off. */
    private static void narrowed(List<RuleCase> cases) {
        limited(cases, Result.PASS, "as wide as the printed light", -8.0, 8.0, 0);
        limited(cases, Result.PASS, "3.077 degrees", -3.077, 3.077, 0);
        limited(cases, Result.FAIL, "3.076 degrees", -3.076, 3.076, 0);
        limited(cases, Result.FAIL, "a degree to the left, towards which no unit looks", -8.0, 1.0, 0);
        limited(cases, Result.FAIL, "as wide as nothing, and turned", -1.0, 1.0, 3);
        cases.add(RuleCase.of("LIGHT-03", Result.PASS, "no limits, and 8 degrees of equipment to each side", LightCases::row,
                Sample::unchanged));
        cases.add(RuleCase.of("LIGHT-03", Result.FAIL, "no limits, and 2 degrees of equipment to each side", LightCases::row,
                sample -> sample.equipment().setBeamWidthDeg(4.0)));
        // A beam turned by 6 degrees, and 5 degrees wide to each side, does not hold the approach to a helipad.
        cases.add(RuleCase.of("LIGHT-03", Result.FAIL, "at a helipad, turned away", LightCases::sector, sample -> {
            sample.aid().setAxisTurnDeg(6.0);
            sample.equipment().setBeamWidthDeg(10.0);
        }));
        // The outermost unit sees the centre line 3.08 degrees to one side; an axis that is turned 5 degrees to the other is 8.08 off.
        limited(cases, Result.FAIL, "as wide as the printed light, and turned away by 5 degrees", -8.0, 8.0, 5);
        cases.add(RuleCase.of("LIGHT-03", Result.PASS, "at a helipad", LightCases::sector, Sample::unchanged));
        cases.add(RuleCase.of("LIGHT-03", Result.NOT_APPLICABLE, "portable", LightCases::sector, sample -> sample.aid().setPortable(true)));
        cases.add(RuleCase.of("LIGHT-03", Result.NOT_EVALUATED, "only one side, and no beam width", LightCases::row, sample -> {
            sample.aid().setBeamLeftLimitDeg(-8.0);
            sample.equipment().setBeamWidthDeg(null);
        }));
    }

    private static void limited(List<RuleCase> cases, Result expected, String name, double leftDeg, double rightDeg, double turnDeg) {
        cases.add(RuleCase.of("LIGHT-03", expected, name, LightCases::row, sample -> {
            sample.aid().setBeamLeftLimitDeg(leftDeg);
            sample.aid().setBeamRightLimitDeg(rightDeg);
            sample.aid().setAxisTurnDeg(turnDeg);
            sample.units(unit -> unit.setAlongM(300.0));
        }));
    }

    /** The red on the axis is 20 000 cd and the white there 90 000 cd; at 2 degrees 20 000 and 60 000 cd. */
    private static void factors(List<RuleCase> cases) {
        cases.add(RuleCase.of("LIGHT-02", Result.PASS, "three times and more", LightCases::row, Sample::unchanged));
        cases.add(RuleCase.of("LIGHT-02", Result.PASS, "6.5 times", LightCases::row,
                sample -> set(sample, LightColour.WHITE, 0, 0, 130_000)));
        cases.add(RuleCase.of("LIGHT-02", Result.FAIL, "6.501 times", LightCases::row,
                sample -> set(sample, LightColour.WHITE, 0, 0, 130_020)));
        cases.add(RuleCase.of("LIGHT-02", Result.PASS, "twice", LightCases::row, sample -> set(sample, LightColour.WHITE, 0, 2, 40_000)));
        cases.add(RuleCase.of("LIGHT-02", Result.FAIL, "1.999 times", LightCases::row,
                sample -> set(sample, LightColour.WHITE, 0, 2, 39_980)));
        cases.add(RuleCase.of("LIGHT-02", Result.NOT_EVALUATED, "no white", LightCases::row,
                sample -> sample.aid().getEquipment().getIntensities().removeIf(point -> point.getColour() == LightColour.WHITE)));
        cases.add(RuleCase.of("LIGHT-02", Result.NOT_APPLICABLE, "no factor was read", Bases::usRow, Sample::unchanged));
    }

    /**
     * Own bands. A quarter more than the 20 000 cd of the axis are 25 000 cd, and than the 9000 cd at 3 degrees below 11 250 cd. A sixth of
     * the 9000 cd at 6 degrees to the side are 1500 cd; half a degree from the 9000 cd at 3 degrees below, the light may fall to
     * 9000 / (1.25 x 10^0.5 = 3.9528) = 2276.8 cd. A row is red below its setting and white above.
     */
    private static void beams(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-62", Result.PASS, "one beam", LightCases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-62", Result.PASS, "a quarter brighter outward", LightCases::row,
                sample -> set(sample, LightColour.RED, 2, 0, 25_000)));
        cases.add(RuleCase.of("DATA-62", Result.FAIL, "more than a quarter brighter outward", LightCases::row,
                sample -> set(sample, LightColour.RED, 2, 0, 25_001)));
        beam(cases, Result.PASS, "a quarter brighter beyond a dimmer direction",
                sample -> set(sample, LightColour.RED, 0, -3.5, 11_250));
        beam(cases, Result.FAIL, "brighter still beyond a dimmer direction", sample -> set(sample, LightColour.RED, 0, -3.5, 11_251));
        beam(cases, Result.PASS, "a sixth of its neighbour two degrees away", sample -> set(sample, LightColour.RED, 8, 0, 1500));
        beam(cases, Result.FAIL, "less than a sixth of its neighbour", sample -> set(sample, LightColour.RED, 8, 0, 1499));
        beam(cases, Result.PASS, "a fall within half a degree", sample -> set(sample, LightColour.RED, 0, -3.5, 2277));
        beam(cases, Result.FAIL, "a steeper fall within half a degree", sample -> set(sample, LightColour.RED, 0, -3.5, 2276));
        beam(cases, Result.PASS, "a tenth of a degree apart", sample -> at(sample, LightColour.RED, 2, 0).setAzimuthDeg(0.1));
        beam(cases, Result.FAIL, "0.09 of a degree apart", sample -> at(sample, LightColour.RED, 2, 0).setAzimuthDeg(0.09));
        beam(cases, Result.PASS, "ten degrees from the next", sample -> at(sample, LightColour.RED, 8, 0).setAzimuthDeg(16.0));
        beam(cases, Result.FAIL, "10.1 degrees from the next", sample -> at(sample, LightColour.RED, 8, 0).setAzimuthDeg(16.1));
        beam(cases, Result.FAIL, "red above the setting", sample -> at(sample, LightColour.RED, 0, -3.5).setElevationDeg(3.5));
        beam(cases, Result.FAIL, "white below the setting", sample -> at(sample, LightColour.WHITE, 0, 2).setElevationDeg(-2.0));
        beam(cases, Result.FAIL, "green, which no row shows", sample -> at(sample, LightColour.RED, 8, 0).setColour(LightColour.GREEN));
        beam(cases, Result.PASS, "red a tenth of a degree above the setting", sample -> at(sample, LightColour.RED, 2, 0)
                .setElevationDeg(0.1));
        beam(cases, Result.FAIL, "red 0.11 of a degree above the setting", sample -> at(sample, LightColour.RED, 2, 0)
                .setElevationDeg(0.11));
        beam(cases, Result.PASS, "no unit says what it shows", sample -> {
            sample.units(unit -> unit.getTransitions().clear());
            at(sample, LightColour.RED, 2, 0).setElevationDeg(0.11);
        });
        cases.add(RuleCase.of("DATA-62", Result.FAIL, "the same direction twice", LightCases::row,
                sample -> at(sample, LightColour.RED, -8, 0).setAzimuthDeg(8.0)));
        cases.add(RuleCase.of("DATA-62", Result.NOT_EVALUATED, "no direction", LightCases::row,
                sample -> at(sample, LightColour.RED, -8, 0).setAzimuthDeg(null)));
    }

    private static void beam(List<RuleCase> cases, Result expected, String name, Consumer<Sample> change) {
        cases.add(RuleCase.of("DATA-62", expected, name, LightCases::row, change));
    }
}
