package slopewright.checks;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.evaluation.Confirmations;
import slopewright.evaluation.ReadBacks;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachDirection;
import slopewright.model.Circuit;
import slopewright.model.MagneticVariation;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.ProfilePoint;
import slopewright.model.SlopewrightFactory;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.model.util.Ids;

/**
 * Cases of the rules about what cannot be true of a site. The bands are the project's own and stand in the rules; the runway of the base
 * is level at 100 m from 0 to 2400 m, 45 m wide, code number 4.
 */
final class PlausibleCases {
    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private PlausibleCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        confirmations(cases);
        names(cases);
        profiles(cases);
        aeroplanes(cases);
        obstacles(cases);
        sizes(cases);
        openData(cases);
        layoutValues(cases);
        return cases;
    }

    /** What a confirmation is: a document, a day and a person, as a survey of obstacles has them. */
    private static void openData(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-64", null, "no open data", Bases::row, Sample::unchanged));
        cases.add(open(Result.PASS, "compared with a document by somebody on a day", "survey 12", "2026-05-01", "J. Doe"));
        cases.add(open(Result.NOT_EVALUATED, "nobody confirmed them", null, null, null));
        cases.add(open(Result.NOT_EVALUATED, "no document", " ", "2026-05-01", "J. Doe"));
        cases.add(open(Result.NOT_EVALUATED, "no day", "survey 12", "in spring", "J. Doe"));
        cases.add(open(Result.NOT_EVALUATED, "nobody's name", "survey 12", "2026-05-01", "-"));
        cases.add(RuleCase.of("DATA-64", Result.NOT_EVALUATED, "no licence", Bases::row,
                sample -> sample.runway().setOpenDataSource("a data set")));
        cases.add(RuleCase.of("DATA-64", Result.NOT_EVALUATED, "a confirmation of nothing", Bases::row,
                sample -> sample.runway().setOpenDataConfirmation("survey 12")));
    }

    /** A value that nobody confirmed leaves it met on that value; without a layout nobody knows on what it rests. */
    private static void layoutValues(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-65", Result.PASS, "a layout as the rule set has it", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-65", Result.NOT_EVALUATED, "no units", Bases::row, sample -> sample.aid().getUnits().clear()));
    }

    private static RuleCase open(Result expected, String name, String document, String day, String person) {
        return RuleCase.of("DATA-64", expected, name, Bases::row, sample -> {
            sample.runway().setOpenDataSource("a data set (invented)");
            sample.runway().setOpenDataLicence("a licence (invented)");
            sample.runway().setOpenDataConfirmation(document);
            sample.runway().setOpenDataConfirmationDate(day);
            sample.runway().setOpenDataConfirmationPerson(person);
        });
    }

    private static ValueConfirmation confirm(Sample sample, String key, double value, String unit) {
        ValueConfirmation confirmation = MAKE.createValueConfirmation();
        confirmation.setValueKey(key);
        confirmation.setRuleSetKey("icao:5th");
        confirmation.setValue(value);
        confirmation.setUnit(unit);
        confirmation.setSource("a case");
        confirmation.setPerson("J. Doe");
        confirmation.setDate("2026-05-01");
        sample.project().getConfirmations().add(Confirmations.sealed(sample.project(), confirmation));
        return confirmation;
    }

    /** The tolerance of the eye height is 0.3 m, a common-practice value of every rule set. */
    private static void confirmations(List<RuleCase> cases) {
        String key = "siting.eye-height-tolerance-m";
        cases.add(RuleCase.of("DATA-40", null, "none", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-40", Result.PASS, "0.3 m", Bases::row, sample -> confirm(sample, key, 0.3, "m")));
        cases.add(RuleCase.of("DATA-40", Result.NOT_EVALUATED, "for an edition of nothing in the project", Bases::row, sample -> {
            ValueConfirmation other = confirm(sample, key, 0.3, "m");
            other.setRuleSetKey("easa:2022");
            Confirmations.sealed(sample.project(), other);
        }));
        cases.add(RuleCase.of("DATA-40", Result.NOT_EVALUATED, "changed for an edition of nothing in the project", Bases::row,
                sample -> change(sample, key, 0.4).setRuleSetKey("easa:2022")));
        cases.add(RuleCase.of("DATA-40", Result.FAIL, "0.31 m", Bases::row, sample -> confirm(sample, key, 0.31, "m")));
        cases.add(RuleCase.of("DATA-40", Result.FAIL, "0.3 ft", Bases::row, sample -> confirm(sample, key, 0.3, "ft")));
        cases.add(RuleCase.of("DATA-40", Result.FAIL, "no such value", Bases::row, sample -> confirm(sample, key + "x", 0.3, "m")));
        cases.add(RuleCase.of("DATA-40", Result.FAIL, "no such rule set", Bases::row,
                sample -> confirm(sample, key, 0.3, "m").setRuleSetKey("icao:99th")));
        cases.add(RuleCase.of("DATA-40", Result.FAIL, "no person", Bases::row,
                sample -> confirm(sample, key, 0.3, "m").setPerson(" ")));
        cases.add(RuleCase.of("DATA-40", Result.FAIL, "no date", Bases::row,
                sample -> confirm(sample, key, 0.3, "m").setDate(null)));
        cases.add(RuleCase.of("DATA-40", Result.FAIL, "a later clause than was sealed", Bases::row,
                sample -> confirm(sample, key, 0.3, "m").setClause("8.3")));
        cases.add(RuleCase.of("DATA-40", Result.FAIL, "rejected without a reason", Bases::row,
                sample -> Confirmations.sealed(sample.project(), rejected(confirm(sample, key, 0.3, "m"), null))));
        cases.add(RuleCase.of("DATA-40", Result.PASS, "rejected with a reason", Bases::row,
                sample -> Confirmations.sealed(sample.project(), rejected(confirm(sample, key, 0.3, "m"), "not in our copy"))));
        cases.add(RuleCase.of("DATA-40", Result.FAIL, "twice", Bases::row, sample -> {
            confirm(sample, key, 0.3, "m");
            confirm(sample, key, 0.3, "m");
        }));
        cases.add(RuleCase.of("DATA-40", Result.PASS, "changed threefold", Bases::row, sample -> change(sample, key, 0.9)));
        cases.add(RuleCase.of("DATA-40", Result.FAIL, "changed to feet as metres", Bases::row,
                sample -> change(sample, key, 0.98)));
        cases.add(RuleCase.of("DATA-40", Result.PASS, "changed in its unit", Bases::row, sample -> change(sample, key, 0.4).setUnit("m")));
        cases.add(RuleCase.of("DATA-40", Result.FAIL, "changed in feet", Bases::row, sample -> change(sample, key, 0.4).setUnit("ft")));
        cases.add(RuleCase.of("DATA-40", Result.FAIL, "changed twice", Bases::row, sample -> {
            change(sample, key, 0.2);
            change(sample, key, 0.4);
        }));
        cases.add(RuleCase.of("DATA-40", Result.FAIL, "changed in sign", Bases::row, sample -> change(sample, key, -0.3)));
    }

    private static ValueConfirmation rejected(ValueConfirmation confirmation, String reason) {
        confirmation.setRejected(true);
        confirmation.setReason(reason);
        return confirmation;
    }

    private static ValueOverride change(Sample sample, String key, double value) {
        ValueOverride override = MAKE.createValueOverride();
        override.setValueKey(key);
        override.setRuleSetKey("icao:5th");
        override.setValue(value);
        sample.project().getOverrides().add(override);
        return override;
    }

    private static void names(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-42", null, "not entered", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-42", Result.PASS, "that of the threshold", Bases::row,
                sample -> sample.aerodrome().setElevationM(100.0)));
        cases.add(RuleCase.of("DATA-42", Result.PASS, "a metre lower", Bases::row, sample -> sample.aerodrome().setElevationM(99.0)));
        cases.add(RuleCase.of("DATA-42", Result.FAIL, "1.1 m lower", Bases::row, sample -> sample.aerodrome().setElevationM(98.9)));
        // Without a centre line: 1 m + 2400 m / 100 = 25 m.
        cases.add(RuleCase.of("DATA-42", Result.PASS, "25 m higher", Bases::row, sample -> sample.aerodrome().setElevationM(125.0)));
        cases.add(RuleCase.of("DATA-42", Result.FAIL, "in feet", Bases::row, sample -> sample.aerodrome().setElevationM(328.1)));
        cases.add(RuleCase.of("DATA-43", Result.PASS, "09/27", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-43", Result.PASS, "27/09", Bases::row, sample -> sample.runway().setDesignator("27/09")));
        cases.add(RuleCase.of("DATA-43", Result.FAIL, "09/28", Bases::row, sample -> sample.runway().setDesignator("09/28")));
        cases.add(RuleCase.of("DATA-43", Result.NOT_EVALUATED, "unnamed", Bases::row, sample -> sample.runway().setDesignator(null)));
        cases.add(RuleCase.of("DATA-43", Result.PASS, "approach 09", Bases::padSector, Sample::unchanged));
        // The approach of the base leads to 90 degrees: 96 rounded to ten are 100, 93.5 rounded to five are 95, with one for north.
        approach(cases, Result.PASS, "H-100", 94.0);
        approach(cases, Result.FAIL, "H-100", 93.9);
        approach(cases, Result.PASS, "H-095", 91.5);
        approach(cases, Result.FAIL, "H-095", 91.4);
        approach(cases, Result.PASS, "H-091", 89.5);
        approach(cases, Result.FAIL, "H-091", 89.4);
    }

    private static void approach(List<RuleCase> cases, Result result, String designator, double bearingDeg) {
        cases.add(RuleCase.of("DATA-43", result, "approach " + designator + " to " + bearingDeg, Bases::padSector, sample -> {
            sample.host().setDesignator(designator);
            ((ApproachDirection) sample.host()).setTrueBearingDeg(bearingDeg);
            MagneticVariation none = MAKE.createMagneticVariation();
            none.setVariationDeg(0.0);
            sample.aerodrome().setMagneticVariation(none);
        }));
    }

    private static ProfilePoint point(double chainageM, double elevationM) {
        ProfilePoint point = MAKE.createProfilePoint();
        point.setChainageM(chainageM);
        point.setElevationM(elevationM);
        return point;
    }

    private static void centreLine(Sample sample, double... chainagesAndElevations) {
        for (int i = 0; i < chainagesAndElevations.length; i += 2) {
            sample.runway().getCentreLine().add(point(chainagesAndElevations[i], chainagesAndElevations[i + 1]));
        }
    }

    private static void profiles(List<RuleCase> cases) {
        // Up by 3 m on 200 m is 1.5 %, then down by as much: a change of 3 %; by 4 m, one of 4 %.
        cases.add(RuleCase.of("DATA-45", Result.PASS, "changes by 1.5 %", Bases::row,
                sample -> centreLine(sample, 0, 100, 200, 101.5, 400, 100)));
        cases.add(RuleCase.of("DATA-45", Result.NOT_EVALUATED, "changes by 1.6 %", Bases::row,
                sample -> centreLine(sample, 0, 100, 200, 101.6, 400, 100)));
        cases.add(RuleCase.of("DATA-45", Result.NOT_EVALUATED, "changes by 3 %", Bases::row,
                sample -> centreLine(sample, 0, 100, 200, 103, 400, 100)));
        cases.add(RuleCase.of("DATA-45", Result.FAIL, "changes by 3.1 %", Bases::row,
                sample -> centreLine(sample, 0, 100, 200, 103.1, 400, 100)));
        cases.add(RuleCase.of("DATA-45", Result.NOT_EVALUATED, "code number 2, changes by 4 %", Bases::row, sample -> {
            sample.runway().setCodeNumber(2);
            centreLine(sample, 0, 100, 200, 104, 400, 100);
        }));
        cases.add(RuleCase.of("DATA-45", Result.FAIL, "code number 2, changes by 4.1 %", Bases::row, sample -> {
            sample.runway().setCodeNumber(2);
            centreLine(sample, 0, 100, 200, 104.1, 400, 100);
        }));
        cases.add(RuleCase.of("DATA-45", Result.FAIL, "goes back", Bases::row, sample -> centreLine(sample, 0, 100, 600, 100, 183, 100)));
        cases.add(RuleCase.of("DATA-45", Result.FAIL, "beyond the runway", Bases::row, sample -> centreLine(sample, 0, 100, 2901, 100)));
        cases.add(RuleCase.of("DATA-45", Result.FAIL, "half a point", Bases::row, sample -> {
            centreLine(sample, 0, 100, 600, 100);
            sample.runway().getCentreLine().get(1).setElevationM(null);
        }));
        cases.add(RuleCase.of("DATA-45", Result.FAIL, "a ditch of 11 m on 200 m beside", Bases::row, sample -> {
            sample.end().getSiteProfile().add(point(0, 100));
            sample.end().getSiteProfile().add(point(200, 89));
            sample.end().getSiteProfile().add(point(400, 100));
        }));
        cases.add(RuleCase.of("DATA-46", null, "no profile", Bases::row, Sample::unchanged));
        // Without a centre line: 5 m + 0.03 x 300 m = 14 m.
        cases.add(RuleCase.of("DATA-46", Result.PASS, "14 m lower", Bases::row,
                sample -> sample.end().getSiteProfile().add(point(300, 86))));
        cases.add(RuleCase.of("DATA-46", Result.FAIL, "15 m lower", Bases::row,
                sample -> sample.end().getSiteProfile().add(point(300, 85))));
        cases.add(RuleCase.of("DATA-46", Result.PASS, "5 m below the runway", Bases::row, sample -> {
            centreLine(sample, 0, 100, 2400, 100);
            sample.end().getSiteProfile().add(point(300, 95));
        }));
        cases.add(RuleCase.of("DATA-46", Result.FAIL, "6 m below the runway", Bases::row, sample -> {
            centreLine(sample, 0, 100, 2400, 100);
            sample.end().getSiteProfile().add(point(300, 94));
        }));
    }

    private static void heights(Sample sample, double standingM, double flyingM, double antennaM) {
        AeroplaneGroup group = sample.aerodrome().getAeroplaneGroups().get(0);
        group.setStaticCockpitToWheelM(standingM);
        group.setEyeToWheelM(flyingM);
        group.setEyeToAntennaM(antennaM);
    }

    private static void aeroplanes(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-49", Result.PASS, "1.44 times", Bases::row, sample -> heights(sample, 4.6, 6.6, 1.85)));
        cases.add(RuleCase.of("DATA-49", Result.PASS, "1.8 times", Bases::row, sample -> heights(sample, 4, 7.2, 1.85)));
        cases.add(RuleCase.of("DATA-49", Result.FAIL, "1.81 times", Bases::row, sample -> heights(sample, 4, 7.24, 1.85)));
        cases.add(RuleCase.of("DATA-49", Result.FAIL, "less than on the ground", Bases::row, sample -> heights(sample, 4, 3.5, 1.85)));
        cases.add(RuleCase.of("DATA-49", Result.FAIL, "the antenna below the wheels", Bases::row, sample -> heights(sample, 4, 6, 4.1)));
        cases.add(RuleCase.of("DATA-49", Result.PASS, "shares of 100", Bases::row, sample -> shares(sample, 60, 40)));
        cases.add(RuleCase.of("DATA-49", Result.FAIL, "shares of 102", Bases::row, sample -> shares(sample, 60, 42)));
        cases.add(RuleCase.of("DATA-49", Result.FAIL, "the antenna at the eye", Bases::row, sample -> heights(sample, 4, 6, 0.79)));
    }

    private static void shares(Sample sample, double first, double second) {
        AeroplaneGroup another = EcoreUtil.copy(sample.aerodrome().getAeroplaneGroups().get(0));
        sample.aerodrome().getAeroplaneGroups().add(another);
        sample.host().getRegularGroups().add(another);
        sample.aerodrome().getAeroplaneGroups().get(0).setSharePercent(first);
        another.setSharePercent(second);
    }

    private static Obstacle outline(Sample sample, ObstacleKind kind, double... alongAndRight) {
        Obstacle obstacle = sample.obstacle("wood", alongAndRight[0], alongAndRight[1], 110);
        obstacle.setKind(kind);
        for (int i = 2; i < alongAndRight.length; i += 2) {
            obstacle.getPlaces().add(Sample.place(alongAndRight[i], alongAndRight[i + 1], 110));
        }
        return obstacle;
    }

    private static void obstacles(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-50", Result.PASS, "a point", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-50", Result.FAIL, "a point with two places", Bases::row,
                sample -> outline(sample, ObstacleKind.POINT, -900, 200, -900, 300)));
        cases.add(RuleCase.of("DATA-50", Result.PASS, "a square", Bases::row,
                sample -> outline(sample, ObstacleKind.AREA, -900, 200, -900, 300, -800, 300, -800, 200)));
        cases.add(RuleCase.of("DATA-50", Result.FAIL, "two corners exchanged", Bases::row,
                sample -> outline(sample, ObstacleKind.AREA, -900, 200, -800, 300, -900, 300, -800, 200)));
        cases.add(RuleCase.of("DATA-50", Result.FAIL, "a square as a line", Bases::row,
                sample -> outline(sample, ObstacleKind.LINE, -900, 200, -900, 300, -800, 300, -800, 200)));
        // 100 m by 1 m: an area of 50 m2 over a length of 100 m is 0.005 of its square.
        cases.add(RuleCase.of("DATA-50", Result.FAIL, "a fence as an area", Bases::row,
                sample -> outline(sample, ObstacleKind.AREA, -900, 200, -850, 201, -800, 200)));
        cases.add(RuleCase.of("DATA-50", Result.PASS, "a fence as a line", Bases::row,
                sample -> outline(sample, ObstacleKind.LINE, -900, 200, -850, 201, -800, 200)));
        cases.add(RuleCase.of("DATA-50", Result.PASS, "a ridge of 30 km", Bases::row,
                sample -> outline(sample, ObstacleKind.LINE, -30_900, 200, -900, 200)));
        cases.add(RuleCase.of("DATA-50", Result.FAIL, "a ridge of 30.001 km", Bases::row,
                sample -> outline(sample, ObstacleKind.LINE, -30_901, 200, -900, 200)));
        cases.add(RuleCase.of("DATA-51", Result.PASS, "15 m below", Bases::row, sample -> sample.obstacle("hut", -900, 200, 85)));
        cases.add(RuleCase.of("DATA-51", Result.NOT_EVALUATED, "a height above the ground, or a valley", Bases::row,
                sample -> sample.obstacle("mast", -900, 200, 84.9)));
        cases.add(RuleCase.of("DATA-51", Result.PASS, "in a valley, as it was read back", Bases::row,
                sample -> readBack(sample, sample.obstacle("mast", -900, 200, 60))));
        cases.add(RuleCase.of("DATA-51", Result.NOT_EVALUATED, "in a valley, changed since it was read back", Bases::row, sample -> {
            Obstacle mast = sample.obstacle("mast", -900, 200, 60);
            readBack(sample, mast);
            mast.setTopElevationM(60.1);
        }));
        cases.add(RuleCase.of("DATA-51", Result.NOT_EVALUATED, "one place far below the top of the whole", Bases::row, sample -> {
            Obstacle line = outline(sample, ObstacleKind.LINE, -900, 200, -900, 300);
            line.setTopElevationM(110.0);
            line.getPlaces().get(1).setElevationM(33.5);
        }));
        cases.add(RuleCase.of("DATA-51", Result.PASS, "6000 m above", Bases::row, sample -> sample.obstacle("hut", -900, 200, 6100)));
        cases.add(RuleCase.of("DATA-51", Result.FAIL, "higher than any mountain", Bases::row,
                sample -> sample.obstacle("hut", -900, 200, 6100.1)));
        cases.add(RuleCase.of("DATA-51", Result.NOT_EVALUATED, "one end of a line in feet", Bases::row, sample -> {
            Obstacle line = outline(sample, ObstacleKind.LINE, -900, 200, -900, 300);
            line.setTopElevationM(null);
            line.getPlaces().get(0).setElevationM(110.0);
            line.getPlaces().get(1).setElevationM(33.5);
        }));
        cases.add(RuleCase.of("DATA-51", Result.FAIL, "shielded by nothing", Bases::row,
                sample -> sample.aerodrome().getObstacles().get(0).setShielded(true)));
        cases.add(RuleCase.of("DATA-51", Result.PASS, "shielded as a study says", Bases::row, sample -> {
            sample.aerodrome().getObstacles().get(0).setShielded(true);
            sample.aerodrome().getObstacles().get(0).setShieldingStudy("study 1");
        }));
        cases.add(RuleCase.of("DATA-52", null, "on a plane", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-52", Result.FAIL, "half of its coordinates", Bases::row,
                sample -> sample.aerodrome().getObstacles().get(0).getPlaces().get(0).setNorthM(null)));
        // The central meridian of UTM zone 51 is 123 degrees east: (500 000, 0) is the equator there.
        cases.add(RuleCase.of("DATA-52", Result.PASS, "grid and geographic", Bases::row, sample -> inGrid(sample, 123)));
        cases.add(RuleCase.of("DATA-52", Result.FAIL, "grid and geographic, 3 m apart", Bases::row,
                sample -> inGrid(sample, 123.000027)));
        // A millionth of a degree is 0.1113 m on the equator: 2 m are 18.0 millionths.
        cases.add(RuleCase.of("DATA-52", Result.PASS, "grid and geographic, 1.9 m apart", Bases::row,
                sample -> inGrid(sample, 123.0000171)));
        cases.add(RuleCase.of("DATA-52", Result.FAIL, "grid and geographic, 2.1 m apart", Bases::row,
                sample -> inGrid(sample, 123.0000188)));
        // A zone is 6 degrees wide: its edge lies 333 978.56 m beside the central meridian on the equator, for zone 1 at 180 degrees.
        for (double edgeDeg : new double[] {180, -180}) {
            cases.add(RuleCase.of("DATA-52", Result.PASS, "grid and geographic at " + edgeDeg + " degrees", Bases::row, sample -> {
                inGrid(sample, edgeDeg);
                sample.aerodrome().setCoordinateReference("EPSG:32601");
                sample.aerodrome().getObstacles().get(0).getPlaces().get(0).setEastM(166_021.44);
            }));
        }
        cases.add(RuleCase.of("DATA-52", Result.NOT_EVALUATED, "a grid that nobody knows", Bases::row, sample -> {
            inGrid(sample, 123);
            sample.aerodrome().setCoordinateReference("EPSG:1");
        }));
    }

    private static void inGrid(Sample sample, double longitudeDeg) {
        sample.aerodrome().setCoordinateReference("EPSG:32651");
        var place = sample.aerodrome().getObstacles().get(0).getPlaces().get(0);
        place.setEastM(500_000.0);
        place.setNorthM(0.0);
        place.setLatitudeDeg(0.0);
        place.setLongitudeDeg(longitudeDeg);
    }

    private static void sizes(List<RuleCase> cases) {
        // Half of the 45 m of code number 4; 45 ft are 13.7 m.
        cases.add(RuleCase.of("DATA-54", Result.PASS, "22.5 m wide, code number 4", Bases::row, sample -> sample.runway().setWidthM(22.5)));
        cases.add(RuleCase.of("DATA-54", Result.FAIL, "22.4 m wide, code number 4", Bases::row, sample -> sample.runway().setWidthM(22.4)));
        cases.add(RuleCase.of("DATA-54", Result.FAIL, "a width in feet", Bases::row, sample -> sample.runway().setWidthM(13.7)));
        cases.add(RuleCase.of("DATA-54", Result.PASS, "the whole runway", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-54", Result.FAIL, "a landing distance in feet as metres back", Bases::row,
                sample -> sample.end().setLandingDistanceM(731.5)));
        cases.add(RuleCase.of("DATA-54", Result.PASS, "half of it", Bases::row, sample -> sample.end().setLandingDistanceM(1200.0)));
        cases.add(RuleCase.of("DATA-54", Result.PASS, "a strip of 400 m", Bases::row, sample -> sample.runway().setStripWidthM(400.0)));
        cases.add(RuleCase.of("DATA-54", Result.FAIL, "a strip of 401 m", Bases::row, sample -> sample.runway().setStripWidthM(401.0)));
        cases.add(RuleCase.of("DATA-54", Result.FAIL, "a strip of 80 m", Bases::row, sample -> sample.runway().setStripWidthM(80.0)));
        cases.add(RuleCase.of("DATA-54", Result.FAIL, "a strip of 201 m for code number 2", Bases::row, sample -> {
            sample.runway().setCodeNumber(2);
            sample.runway().setStripWidthM(201.0);
        }));
        cases.add(RuleCase.of("DATA-54", Result.FAIL, "a strip of 3401 m", Bases::row, sample -> sample.runway().setStripLengthM(3401.0)));
        cases.add(RuleCase.of("DATA-54", Result.PASS, "26 m around 20 m", Bases::padSector,
                sample -> sample.pad().setSafetyAreaWidthM(26.0)));
        cases.add(RuleCase.of("DATA-54", Result.FAIL, "25 m around 20 m", Bases::padSector,
                sample -> sample.pad().setSafetyAreaWidthM(25.0)));
        cases.add(RuleCase.of("DATA-54", Result.FAIL, "61 m around 20 m", Bases::padSector,
                sample -> sample.pad().setSafetyAreaWidthM(61.0)));
        cases.add(RuleCase.of("DATA-54", Result.FAIL, "a FATO of 66 m for a TLOF of 12 m", Bases::padSector, sample -> {
            sample.pad().setTlofLengthM(12.0);
            sample.pad().setFatoLengthM(66.0);
        }));
        cases.addAll(circuits());
    }

    private static Circuit circuit(Sample sample, double currentA) {
        Circuit circuit = sample.aerodrome().getCircuits().get(0);
        circuit.setCurrentA(currentA);
        sample.aid().getEquipment().setLampPowerW(200.0);
        sample.aid().getEquipment().setLampsPerUnit(3);
        return circuit;
    }

    /** Four units with three lamps of 200 W take 2400 W; at 230 V that is 10.43 A, a quarter of which is 2.61 A. */
    private static List<RuleCase> circuits() {
        List<RuleCase> cases = new ArrayList<>();
        cases.add(RuleCase.of("DATA-44", null, "no circuit", Bases::row, sample -> sample.aerodrome().getCircuits().clear()));
        cases.add(RuleCase.of("DATA-44", Result.PASS, "6.6 A, 4 kVA", Bases::row,
                sample -> circuit(sample, 6.6).setRegulatorRatingKva(4.0)));
        cases.add(RuleCase.of("DATA-44", Result.FAIL, "6.8 A", Bases::row, sample -> circuit(sample, 6.8).setRegulatorRatingKva(4.0)));
        cases.add(RuleCase.of("DATA-44", Result.PASS, "13.0 A at 230 V", Bases::row, sample -> mains(sample, 13.0)));
        cases.add(RuleCase.of("DATA-44", Result.FAIL, "13.1 A at 230 V", Bases::row, sample -> mains(sample, 13.1)));
        cases.add(RuleCase.of("DATA-44", Result.FAIL, "a battery for 101 h", Bases::row,
                sample -> mains(sample, 10).setCapacityAh(1010.0)));
        cases.add(RuleCase.of("DATA-44", Result.FAIL, "other brightness steps", Bases::row, sample -> {
            circuit(sample, 6.6).setBrightnessSteps(5);
            sample.aid().getEquipment().setBrightnessSteps(3);
        }));
        return cases;
    }

    private static Circuit mains(Sample sample, double currentA) {
        sample.aid().getEquipment().setMinVoltageV(207.0);
        sample.aid().getEquipment().setMaxVoltageV(253.0);
        return circuit(sample, currentA);
    }

    private static void readBack(Sample sample, Obstacle obstacle) {
        Ids.assign(sample.project());
        ReadBacks.keep(sample.project(), List.of(obstacle), "B. Bole", "2026-01-06");
    }
}
