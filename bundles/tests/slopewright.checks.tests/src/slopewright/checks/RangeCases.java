package slopewright.checks;

import java.util.ArrayList;
import java.util.List;

/**
 * Cases of the rules about range. The limits are worked out from Allard's law turned round, I = E d² exp(d ln 20 / V), with V = 30 km
 * and E = 1e-4 lx by day: 14 227 cd for 8 km, 7 436 cd for 3.4 NM and 70.2 cd for half a mile. Another text asks for E = 4.1e-4 lx, 4.1
 * times as much: 58 331 cd, 30 488 cd and 288 cd; between the two nobody knows. At night E = 8e-7 lx asks for less.
 */
final class RangeCases {

    private RangeCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        seen(cases);
        apart(cases);
        return cases;
    }

    private static void intensity(Sample sample, Double candela) {
        sample.aid().getEquipment().setIntensityCd(candela);
    }

    private static void seen(List<RuleCase> cases) {
        cases.add(RuleCase.of("RANGE-01", Result.PASS, "60 000 cd", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("RANGE-01", Result.PASS, "58 400 cd to 8 km", Bases::row, sample -> intensity(sample, 58_400.0)));
        cases.add(RuleCase.of("RANGE-01", Result.NOT_EVALUATED, "58 250 cd to 8 km", Bases::row,
                sample -> intensity(sample, 58_250.0)));
        cases.add(RuleCase.of("RANGE-01", Result.NOT_EVALUATED, "14 300 cd to 8 km", Bases::row,
                sample -> intensity(sample, 14_300.0)));
        cases.add(RuleCase.of("RANGE-01", Result.FAIL, "14 150 cd to 8 km", Bases::row, sample -> intensity(sample, 14_150.0)));
        cases.add(RuleCase.of("RANGE-01", Result.PASS, "30 600 cd to 3.4 NM", Bases::usRow, sample -> intensity(sample, 30_600.0)));
        cases.add(RuleCase.of("RANGE-01", Result.FAIL, "7370 cd to 3.4 NM", Bases::usRow, sample -> intensity(sample, 7370.0)));
        cases.add(RuleCase.of("RANGE-01", Result.PASS, "290 cd to half a mile", Bases::triColour, sample -> intensity(sample, 290.0)));
        cases.add(RuleCase.of("RANGE-01", Result.FAIL, "69.5 cd to half a mile", Bases::triColour, sample -> intensity(sample, 69.5)));
        cases.add(RuleCase.of("RANGE-01", Result.NOT_EVALUATED, "axes turned out of the cone that was read", Bases::row,
                sample -> sample.units(unit -> unit.setAzimuthOffsetDeg(3.0))));
        cases.add(RuleCase.of("RANGE-01", Result.NOT_EVALUATED, "no width of the beam", Bases::triColour,
                sample -> sample.aid().getEquipment().setBeamWidthDeg(null)));
        cases.add(RuleCase.of("RANGE-01", Result.NOT_EVALUATED, "no intensity", Bases::row, sample -> intensity(sample, null)));
        cases.add(RuleCase.of("RANGE-01", Result.NOT_EVALUATED, "an intensity of nothing", Bases::row,
                sample -> intensity(sample, 0.0)));
        cases.add(RuleCase.of("RANGE-01", Result.NOT_EVALUATED, "no equipment", Bases::row, sample -> sample.aid().setEquipment(null)));
        // No range is given for T forms: 900 m, in 30 km of visibility, take 0.00041 x 900 x 900 x exp(2.9957 x 0.03) = 363.3 cd for the
        // strictest text on the eye by day, and for 0.0001 lx 88.6 cd.
        cases.add(RuleCase.of("RANGE-01", Result.PASS, "364 cd to 900 m", Bases::tForm, sample -> intensity(sample, 364.0)));
        cases.add(RuleCase.of("RANGE-01", Result.NOT_EVALUATED, "362 cd to 900 m", Bases::tForm, sample -> intensity(sample, 362.0)));
        cases.add(RuleCase.of("RANGE-01", Result.FAIL, "88 cd to 900 m", Bases::tForm, sample -> intensity(sample, 88.0)));
        cases.add(RuleCase.of("RANGE-01", Result.NOT_EVALUATED, "a T form of no known intensity", Bases::tForm,
                sample -> intensity(sample, null)));
        cases.add(RuleCase.of("RANGE-01", Result.NOT_APPLICABLE, "panels have no light", Bases::panels, Sample::unchanged));
    }

    /** Three minutes of arc are 1 m for each 1.146 km: 9 m to 10.3 km, 6 m to 6.9 km. */
    private static void apart(List<RuleCase> cases) {
        cases.add(RuleCase.of("RANGE-02", Result.PASS, "9 m to 10.3 km", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("RANGE-02", Result.PASS, "30 ft to 10.5 km", Bases::usRow, Sample::unchanged));
        cases.add(RuleCase.of("RANGE-02", Result.FAIL, "6 m to 6.9 km", Bases::row,
                sample -> sample.unit(0).setRightM(sample.unit(1).getRightM() + 6)));
        cases.add(RuleCase.of("RANGE-02", Result.PASS, "700 ft one behind the other", Bases::twoBar, Sample::unchanged));
        cases.add(RuleCase.of("RANGE-02", Result.FAIL, "23 ft one behind the other", Bases::twoBar,
                sample -> sample.units(unit -> unit.setAlongM(unit.getBar() == 1 ? 150.0 : 157.0))));
        cases.add(RuleCase.of("RANGE-02", Result.PASS, "without any intensity", Bases::row, sample -> intensity(sample, null)));
        cases.add(RuleCase.of("RANGE-02", Result.NOT_APPLICABLE, "one box", Bases::triColour, Sample::unchanged));
        cases.add(RuleCase.of("RANGE-02", Result.NOT_APPLICABLE, "no useful range is given", Bases::tForm, Sample::unchanged));
    }
}
