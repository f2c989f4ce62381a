package slopewright.checks;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.model.ApproachAid;
import slopewright.model.ApproachType;
import slopewright.model.GroundLevel;
import slopewright.model.Identified;
import slopewright.model.ObstacleKind;
import slopewright.model.ProfilePoint;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;

/**
 * Cases of the rules about data that contradicts itself, or cannot be true. The runway of the base runs due east from (0, 0) to (2400, 0),
 * level at 100 m, at a place where the magnetic variation is 0.0 degrees by the model, within a tenth.
 */
final class ContradictionCases {
    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private ContradictionCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        approach(cases);
        bearing(cases);
        lengths(cases);
        elevations(cases);
        magnetic(cases);
        places(cases);
        numbers(cases);
        return cases;
    }

    private static RunwayEnd opposite(Sample sample) {
        return sample.runway().getEnds().get(1);
    }

    private static void approach(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-13", Result.PASS, "visual", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-13", Result.NOT_EVALUATED, "not stated", Bases::row,
                sample -> sample.host().setApproachType(ApproachType.NOT_STATED)));
        cases.add(RuleCase.of("DATA-13", Result.NOT_EVALUATED, "not stated at a helipad", Bases::padSector,
                sample -> sample.host().setApproachType(ApproachType.NOT_STATED)));
        cases.add(RuleCase.of("DATA-13", Result.NOT_APPLICABLE, "not stated, and no surface depends on it", Bases::usRow,
                sample -> sample.host().setApproachType(ApproachType.NOT_STATED)));
        cases.add(RuleCase.of("DATA-14", Result.PASS, "Cat I", Bases::rowBesideGlidePath, Sample::unchanged));
        cases.add(RuleCase.of("DATA-14", Result.FAIL, "a glide path beside a visual approach", Bases::rowBesideGlidePath,
                sample -> sample.host().setApproachType(ApproachType.VISUAL)));
        cases.add(RuleCase.of("DATA-14", Result.NOT_EVALUATED, "a glide path beside an approach nobody named", Bases::rowBesideGlidePath,
                sample -> sample.host().setApproachType(ApproachType.NOT_STATED)));
        cases.add(RuleCase.of("DATA-14", Result.NOT_EVALUATED, "Cat I without a glide path", Bases::row,
                sample -> sample.host().setApproachType(ApproachType.PRECISION_CAT_I)));
        cases.add(RuleCase.of("DATA-14", Result.NOT_APPLICABLE, "neither", Bases::row, Sample::unchanged));
    }

    /** At 2400 m a hundredth of a degree is 0.42 m to the side, of which 2 m may come from the survey. */
    private static void bearing(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-15", Result.PASS, "due east", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-15", Result.PASS, "0.04 degrees off, 1.7 m", Bases::row,
                sample -> sample.end().setTrueBearingDeg(90.04)));
        cases.add(RuleCase.of("DATA-15", Result.FAIL, "0.05 degrees off, 2.1 m", Bases::row,
                sample -> sample.end().setTrueBearingDeg(89.95)));
        cases.add(RuleCase.of("DATA-15", Result.FAIL, "backward", Bases::row, sample -> sample.end().setTrueBearingDeg(270.0)));
        cases.add(RuleCase.of("DATA-15", Result.PASS, "on the ellipsoid", Bases::row, Sample::onEarth));
        cases.add(RuleCase.of("DATA-15", Result.PASS, "the reciprocal", Bases::row, sample -> reciprocal(sample, 270.4)));
        cases.add(RuleCase.of("DATA-15", Result.FAIL, "not the reciprocal", Bases::row, sample -> reciprocal(sample, 271.0)));
        cases.add(RuleCase.of("DATA-15", Result.NOT_APPLICABLE, "none entered", Bases::row,
                sample -> sample.end().setTrueBearingDeg(null)));
        cases.add(RuleCase.of("DATA-15", Result.NOT_APPLICABLE, "nothing at the other end", Bases::row,
                sample -> opposite(sample).setThreshold(null)));
        cases.add(RuleCase.of("DATA-15", Result.NOT_EVALUATED, "a threshold without coordinates", Bases::row,
                sample -> opposite(sample).getThreshold().setEastM(null)));
        cases.add(RuleCase.of("DATA-16", Result.PASS, "09 for 90 degrees", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-16", Result.PASS, "09L", Bases::row, sample -> sample.end().setDesignator("09L")));
        cases.add(RuleCase.of("DATA-16", Result.PASS, "10 degrees of variation", Bases::row,
                sample -> sample.aerodrome().getMagneticVariation().setVariationDeg(10.0)));
        cases.add(RuleCase.of("DATA-16", Result.FAIL, "10.1 degrees of variation", Bases::row,
                sample -> sample.aerodrome().getMagneticVariation().setVariationDeg(-10.1)));
        cases.add(RuleCase.of("DATA-16", Result.FAIL, "10.5 degrees of variation", Bases::row,
                sample -> sample.aerodrome().getMagneticVariation().setVariationDeg(-10.5)));
        cases.add(RuleCase.of("DATA-16", Result.FAIL, "the other end", Bases::row, sample -> sample.end().setDesignator("27")));
        cases.add(RuleCase.of("DATA-16", Result.FAIL, "no number", Bases::row, sample -> sample.end().setDesignator("37")));
        cases.add(RuleCase.of("DATA-16", Result.NOT_EVALUATED, "no designator", Bases::row, sample -> sample.end().setDesignator(" ")));
        cases.add(RuleCase.of("DATA-16", Result.NOT_EVALUATED, "neither variation nor place on the earth", Bases::row, sample -> {
            sample.aerodrome().setMagneticVariation(null);
            sample.aerodrome().setLatitudeDeg(null);
        }));
        cases.add(RuleCase.of("DATA-16", Result.NOT_APPLICABLE, "helipad", Bases::padSector, Sample::unchanged));
    }

    private static void reciprocal(Sample sample, double bearingDeg) {
        opposite(sample).setThreshold(null);
        opposite(sample).setTrueBearingDeg(bearingDeg);
    }

    private static void lengths(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-17", Result.PASS, "2400 m", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-17", Result.PASS, "2402 m", Bases::row, sample -> sample.runway().setLengthM(2402.0)));
        cases.add(RuleCase.of("DATA-17", Result.FAIL, "2403 m", Bases::row, sample -> sample.runway().setLengthM(2403.0)));
        cases.add(RuleCase.of("DATA-17", Result.PASS, "2700 m with both ends displaced", Bases::row, sample -> {
            sample.runway().setLengthM(2700.0);
            sample.end().setDisplacedThresholdM(100.0);
            opposite(sample).setDisplacedThresholdM(200.0);
        }));
        cases.add(RuleCase.of("DATA-17", Result.FAIL, "displaced without being longer", Bases::row,
                sample -> opposite(sample).setDisplacedThresholdM(200.0)));
        cases.add(RuleCase.of("DATA-17", Result.PASS, "on the ellipsoid", Bases::row, Sample::onEarth));
        cases.add(RuleCase.of("DATA-17", Result.NOT_APPLICABLE, "no length", Bases::row, sample -> sample.runway().setLengthM(null)));
        cases.add(RuleCase.of("DATA-17", Result.NOT_EVALUATED, "a threshold without coordinates", Bases::row,
                sample -> opposite(sample).getThreshold().setNorthM(null)));
        cases.add(RuleCase.of("DATA-18", Result.PASS, "the whole runway", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-18", Result.PASS, "a metre of rounding", Bases::row,
                sample -> sample.end().setLandingDistanceM(2401.0)));
        cases.add(RuleCase.of("DATA-18", Result.FAIL, "2402 m of 2400 m", Bases::row,
                sample -> sample.end().setLandingDistanceM(2402.0)));
        cases.add(RuleCase.of("DATA-18", Result.FAIL, "the whole runway, displaced", Bases::row,
                sample -> sample.end().setDisplacedThresholdM(150.0)));
        cases.add(RuleCase.of("DATA-18", Result.NOT_APPLICABLE, "no landing distance", Bases::row,
                sample -> sample.end().setLandingDistanceM(null)));
        cases.add(RuleCase.of("DATA-26", Result.NOT_APPLICABLE, "no strip", Bases::row, sample -> {
            sample.runway().setStripWidthM(null);
            sample.runway().setStripLengthM(null);
        }));
        cases.add(RuleCase.of("DATA-26", Result.PASS, "a strip of 280 m", Bases::row, sample -> sample.runway().setStripWidthM(280.0)));
        cases.add(RuleCase.of("DATA-26", Result.FAIL, "a strip of 40 m", Bases::row, sample -> sample.runway().setStripWidthM(40.0)));
        cases.add(RuleCase.of("DATA-26", Result.FAIL, "a strip shorter than the runway", Bases::row,
                sample -> sample.runway().setStripLengthM(2300.0)));
        cases.add(RuleCase.of("DATA-26", Result.PASS, "30 m around 20 m", Bases::padSector, Sample::unchanged));
        cases.add(RuleCase.of("DATA-26", Result.PASS, "20 m around 20 m", Bases::padSector,
                sample -> sample.pad().setSafetyAreaWidthM(20.0)));
        cases.add(RuleCase.of("DATA-26", Result.FAIL, "19.9 m around 20 m", Bases::padSector,
                sample -> sample.pad().setSafetyAreaWidthM(19.9)));
        cases.add(RuleCase.of("DATA-26", Result.FAIL, "a safety area of 15 m around 20 m", Bases::padSector,
                sample -> sample.pad().setSafetyAreaWidthM(15.0)));
        cases.add(RuleCase.of("DATA-26", Result.FAIL, "a TLOF of 25 m in 20 m", Bases::padSector,
                sample -> sample.pad().setTlofLengthM(25.0)));
    }

    private static void elevations(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-19", Result.PASS, "100 m in both places", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-19", Result.PASS, "1 mm apart", Bases::row,
                sample -> sample.end().getThreshold().setElevationM(100.001)));
        cases.add(RuleCase.of("DATA-19", Result.FAIL, "1 cm apart", Bases::row,
                sample -> sample.end().getThreshold().setElevationM(100.01)));
        cases.add(RuleCase.of("DATA-19", Result.FAIL, "another extremity, not displaced", Bases::row,
                sample -> sample.end().setExtremityElevationM(99.0)));
        cases.add(RuleCase.of("DATA-19", Result.PASS, "another extremity, displaced", Bases::row, sample -> {
            sample.end().setExtremityElevationM(99.0);
            sample.end().setDisplacedThresholdM(100.0);
        }));
        cases.add(RuleCase.of("DATA-19", Result.FAIL, "helipad", Bases::padSector, sample -> sample.pad().getPlace().setElevationM(90.0)));
        cases.add(RuleCase.of("DATA-19", Result.NOT_APPLICABLE, "entered once at each end", Bases::row, sample -> {
            sample.end().getThreshold().setElevationM(null);
            opposite(sample).getThreshold().setElevationM(null);
        }));
        cases.add(RuleCase.of("DATA-19", Result.FAIL, "at the end without an aid", Bases::row,
                sample -> opposite(sample).getThreshold().setElevationM(99.0)));
        cases.add(RuleCase.of("DATA-20", Result.PASS, "the same", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-20", Result.FAIL, "a place 0.1 m above the top", Bases::row,
                sample -> sample.obstacle("mast", -2060, 0, 120).getPlaces().get(0).setElevationM(120.1)));
        cases.add(RuleCase.of("DATA-20", Result.FAIL, "a place above the top", Bases::row,
                sample -> sample.obstacle("mast", -2060, 0, 120).getPlaces().get(0).setElevationM(130.0)));
        cases.add(RuleCase.of("DATA-20", Result.FAIL, "a place below the top of a point", Bases::row,
                sample -> sample.obstacle("mast", -2060, 0, 120).getPlaces().get(0).setElevationM(110.0)));
        cases.add(RuleCase.of("DATA-20", Result.PASS, "a line that falls from its top", Bases::row, sample -> {
            var line = sample.obstacle("ridge", -2060, 0, 120);
            line.setKind(ObstacleKind.LINE);
            line.getPlaces().add(Sample.place(-2100, 0, 115));
        }));
        cases.add(RuleCase.of("DATA-23", Result.NOT_APPLICABLE, "no profile and no levels", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-23", Result.PASS, "4 cm", Bases::row, sample -> ground(sample, 100.04, -40)));
        cases.add(RuleCase.of("DATA-23", Result.FAIL, "6 cm", Bases::row, sample -> ground(sample, 99.94, -40)));
        cases.add(RuleCase.of("DATA-23", Result.PASS, "a metre, on the other side", Bases::row, sample -> ground(sample, 101, 40)));
        cases.add(RuleCase.of("DATA-23", Result.NOT_EVALUATED, "a level without coordinates", Bases::row, sample -> {
            ground(sample, 100, -40);
            sample.aerodrome().getGroundLevels().get(0).getPlace().setEastM(null);
        }));
        cases.add(RuleCase.of("DATA-24", Result.NOT_APPLICABLE, "no profile", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-24", Result.PASS, "level at 100 m", Bases::row, sample -> profile(sample, 100, 100)));
        cases.add(RuleCase.of("DATA-24", Result.FAIL, "20 cm lower", Bases::row, sample -> profile(sample, 99.8, 99.8)));
        // From 98 m to 110 m over 2400 m the profile is at 100 m 400 m beyond the extremity.
        cases.add(RuleCase.of("DATA-24", Result.PASS, "rising, displaced by 400 m", Bases::row, sample -> {
            profile(sample, 98, 110);
            opposite(sample).setThresholdElevationM(110.0);
            sample.end().setDisplacedThresholdM(400.0);
            sample.end().setExtremityElevationM(98.0);
        }));
        cases.add(RuleCase.of("DATA-24", Result.FAIL, "rising, displaced, another extremity", Bases::row, sample -> {
            profile(sample, 98, 110);
            sample.end().setDisplacedThresholdM(400.0);
            sample.end().setExtremityElevationM(97.0);
        }));
        cases.add(RuleCase.of("DATA-24", Result.NOT_EVALUATED, "a profile that turns back", Bases::row, sample -> {
            profile(sample, 100, 100);
            sample.runway().getCentreLine().get(1).setChainageM(0.0);
        }));
    }

    /** A site profile level at 100 m, and a surveyed level 300 m beyond the threshold. */
    private static void ground(Sample sample, double levelM, double rightM) {
        for (double chainage : new double[] {0, 600}) {
            ProfilePoint point = MAKE.createProfilePoint();
            point.setChainageM(chainage);
            point.setElevationM(100.0);
            sample.end().getSiteProfile().add(point);
        }
        GroundLevel level = MAKE.createGroundLevel();
        level.setPlace(Sample.place(300, rightM, levelM));
        sample.aerodrome().getGroundLevels().add(level);
    }

    private static void profile(Sample sample, double fromM, double toM) {
        for (double chainage : new double[] {0, 2400}) {
            ProfilePoint point = MAKE.createProfilePoint();
            point.setChainageM(chainage);
            point.setElevationM(chainage == 0 ? fromM : toM);
            sample.runway().getCentreLine().add(point);
        }
    }

    /** The model gives 0.0 degrees within a tenth there on the first of January of 2026 (its published grid). */
    private static void magnetic(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-21", Result.PASS, "0 degrees", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-21", Result.PASS, "0.3 degrees", Bases::row,
                sample -> sample.aerodrome().getMagneticVariation().setVariationDeg(0.3)));
        cases.add(RuleCase.of("DATA-21", Result.FAIL, "-0.6 degrees", Bases::row,
                sample -> sample.aerodrome().getMagneticVariation().setVariationDeg(-0.6)));
        cases.add(RuleCase.of("DATA-21", Result.FAIL, "brought from 2006 by 0.05 degrees a year", Bases::row, sample -> {
            sample.project().setDate("2026-01-01");
            sample.aerodrome().getMagneticVariation().setDate("2006-01-01");
            sample.aerodrome().getMagneticVariation().setAnnualChangeDeg(0.05);
        }));
        cases.add(RuleCase.of("DATA-21", Result.NOT_EVALUATED, "no date", Bases::row,
                sample -> sample.aerodrome().getMagneticVariation().setDate(null)));
        cases.add(RuleCase.of("DATA-21", Result.NOT_EVALUATED, "a date before the model", Bases::row,
                sample -> sample.aerodrome().getMagneticVariation().setDate("1990-01-01")));
        cases.add(RuleCase.of("DATA-21", Result.NOT_EVALUATED, "nowhere on the earth", Bases::row,
                sample -> sample.aerodrome().setLongitudeDeg(null)));
        cases.add(RuleCase.of("DATA-21", null, "none entered", Bases::row, sample -> sample.aerodrome().setMagneticVariation(null)));
    }

    private static void places(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-22", Result.NOT_APPLICABLE, "one aid", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-22", Result.PASS, "a second aid 50 m farther", Bases::row, sample -> second(sample, 50)));
        cases.add(RuleCase.of("DATA-22", Result.FAIL, "a second aid half a metre farther", Bases::row, sample -> second(sample, 0.5)));
        cases.add(RuleCase.of("DATA-22", Result.FAIL, "a second aid straight behind, 29 m farther", Bases::row,
                sample -> second(sample, 29)));
        oneSlope(cases);
        cases.add(RuleCase.of("DATA-27", Result.PASS, "1500 m", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-27", Result.PASS, "49 km", Bases::row, sample -> sample.obstacle("peak", -49_000, 0, 1000)));
        cases.add(RuleCase.of("DATA-27", Result.FAIL, "51 km", Bases::row, sample -> sample.obstacle("peak", -51_000, 0, 1000)));
        cases.add(RuleCase.of("DATA-27", Result.FAIL, "in the other hemisphere", Bases::row, sample -> {
            sample.onEarth();
            var place = sample.aerodrome().getObstacles().get(0).getPlaces().get(0);
            place.setLatitudeDeg(-place.getLatitudeDeg());
        }));
        cases.add(RuleCase.of("DATA-28", Result.NOT_APPLICABLE, "a plane without a place on the earth", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-28", Result.PASS, "at the threshold", Bases::row, Sample::onEarth));
        // A degree of latitude is 111 km: 0.17 degrees are 18.9 km, 0.19 degrees are 21.1 km.
        cases.add(RuleCase.of("DATA-28", Result.PASS, "0.17 degrees north", Bases::row, sample -> {
            sample.onEarth();
            sample.aerodrome().setLatitudeDeg(-38.4 + 0.17);
        }));
        cases.add(RuleCase.of("DATA-28", Result.FAIL, "0.19 degrees north", Bases::row, sample -> {
            sample.onEarth();
            sample.aerodrome().setLatitudeDeg(-38.4 + 0.19);
        }));
        // At 38.3 degrees south a degree is 110.99 km; the far end lies 2400 m east: 20 km of it are 19 855 m north, 0.1789 degrees.
        cases.add(RuleCase.of("DATA-28", Result.PASS, "0.1788 degrees north", Bases::row, sample -> {
            sample.onEarth();
            sample.aerodrome().setLatitudeDeg(-38.4 + 0.1788);
        }));
        cases.add(RuleCase.of("DATA-28", Result.FAIL, "0.1790 degrees north", Bases::row, sample -> {
            sample.onEarth();
            sample.aerodrome().setLatitudeDeg(-38.4 + 0.1790);
        }));
        cases.add(RuleCase.of("DATA-28", Result.NOT_EVALUATED, "a threshold without coordinates", Bases::row, sample -> {
            sample.onEarth();
            sample.end().getThreshold().setLatitudeDeg(null);
        }));
    }

    /** 19.0 m farther, a path of 3 degrees stands 19.0 tan 3 = 0.9957 m higher over the threshold; 19.3 m farther 1.0115 m. */
    private static void oneSlope(List<RuleCase> cases) {
        cases.add(RuleCase.of("FAM-05", Result.NOT_APPLICABLE, "one aid", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("FAM-05", Result.PASS, "a second aid 19 m farther", Bases::row, sample -> second(sample, 19.0)));
        cases.add(RuleCase.of("FAM-05", Result.FAIL, "a second aid 19.3 m farther", Bases::row, sample -> second(sample, 19.3)));
        cases.add(RuleCase.of("FAM-05", Result.FAIL, "a second aid 19.3 m nearer", Bases::row, sample -> second(sample, -19.3)));
        cases.add(RuleCase.of("FAM-05", Result.PASS, "a second aid 2.9 minutes steeper", Bases::row, sample -> steeper(sample, 2.9)));
        cases.add(RuleCase.of("FAM-05", Result.FAIL, "a second aid 3.1 minutes steeper", Bases::row, sample -> steeper(sample, 3.1)));
        cases.add(RuleCase.of("FAM-05", Result.FAIL, "a second aid 3.1 minutes flatter", Bases::row, sample -> steeper(sample, -3.1)));
        cases.add(RuleCase.of("FAM-05", Result.NOT_EVALUATED, "a second aid without a slope", Bases::row, sample -> {
            second(sample, 0);
            sample.host().getAids().get(1).setSlopeDeg(null);
        }));
        cases.add(RuleCase.of("FAM-05", Result.NOT_EVALUATED, "a second aid without units", Bases::row, sample -> {
            second(sample, 0);
            sample.host().getAids().get(1).getUnits().clear();
        }));
    }

    private static void steeper(Sample sample, double byMin) {
        second(sample, 0);
        ApproachAid second = sample.host().getAids().get(1);
        second.setSlopeDeg(second.getSlopeDeg() + byMin / 60);
    }

    private static void second(Sample sample, double byM) {
        ApproachAid second = EcoreUtil.copy(sample.aid());
        second.eAllContents().forEachRemaining(element -> ((Identified) element).setId(null));
        second.setId(null);
        second.getUnits().forEach(unit -> unit.setAlongM(unit.getAlongM() + byM));
        sample.host().getAids().add(second);
    }

    private static void numbers(List<RuleCase> cases) {
        cases.add(RuleCase.of("DATA-25", Result.PASS, "all in their ranges", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("DATA-25", Result.FAIL, "a negative accuracy", Bases::row,
                sample -> sample.aerodrome().getObstacles().get(0).setVerticalAccuracyM(-1.0)));
        cases.add(RuleCase.of("DATA-25", Result.FAIL, "lenses levelled exactly", Bases::row,
                sample -> sample.aid().setLevelAccuracyM(0.0)));
        cases.add(RuleCase.of("DATA-25", Result.FAIL, "a unit held exactly still", Bases::row,
                sample -> sample.equipment().setStabilisedToDeg(0.0)));
        cases.add(RuleCase.of("DATA-25", Result.FAIL, "coordinates known exactly", Bases::row,
                sample -> sample.aerodrome().setCoordinateAccuracyM(0.0)));
        cases.add(RuleCase.of("DATA-25", Result.FAIL, "a runway of no length", Bases::row, sample -> sample.runway().setLengthM(0.0)));
        cases.add(RuleCase.of("DATA-25", Result.FAIL, "higher than any mountain", Bases::row,
                sample -> sample.obstacle("mast", -2060, 0, 9600)));
        cases.add(RuleCase.of("DATA-25", Result.FAIL, "no number at all", Bases::row,
                sample -> sample.unit(0).setLensElevationM(Double.NaN)));
        cases.add(RuleCase.of("DATA-25", Result.FAIL, "a latitude beyond the pole", Bases::row,
                sample -> sample.aerodrome().setLatitudeDeg(91.0)));
    }
}
