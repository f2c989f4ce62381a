package slopewright.realdata;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;

import slopewright.geometry.FramePoint;
import slopewright.geometry.Lengths;
import slopewright.model.Aerodrome;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.Families;
import slopewright.siting.Input;
import slopewright.siting.Meaning;
import slopewright.siting.Signals;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/**
 * Sites a row at 3 degrees on every suitable real runway end and checks what must hold whatever the runway is like. The eye-to-wheel
 * heights are invented; places, elevations, widths, lengths and displacements are those of the data set.
 */
class RealRunwayEndsTest {

    private static final double SLOPE_DEG = 3;
    /** Half of 20 minutes less the 2 minutes of the siting: 3 degrees less 12 minutes. */
    private static final double LOWEST_DEG = 2.8;
    private static final double BOUNDARY_DEG = 2 + 50 / 60.0;
    private static final double MILLIMETRE = 0.001;

    private final RuleSet rules = RuleSets.find("icao:5th").orElseThrow();
    private final Map<String, Integer> refused = new TreeMap<>();
    private final List<String> faults = new ArrayList<>();
    private int sited;

    @Test
    void everySuitableEndKeepsTheInvariants() throws IOException, InterruptedException, SQLException {
        List<RunwayEndData.End> ends = RunwayEndData.load();
        for (RunwayEndData.End end : ends) {
            String reason = unsuitable(end);
            if (reason.isEmpty()) {
                site(end);
            } else {
                refused.merge(reason, 1, Integer::sum);
            }
        }
        int refusals = refused.values().stream().mapToInt(Integer::intValue).sum();
        String summary = ends.size() + " runway ends with an elevation: " + sited + " sited, " + refusals + " refused " + refused;
        Files.writeString(Path.of(System.getProperty("slopewright.root"), ".cache", "real-data", "summary.txt"), summary + "\n");
        assertEquals(List.of(), faults.subList(0, Math.min(20, faults.size())), summary);
        assertEquals(ends.size(), sited + refusals, summary);
        assertTrue(sited > 15_000, summary);
    }

    private static String unsuitable(RunwayEndData.End end) {
        if (end.otherFt() == null || end.otherLatitude() == null) {
            return "the other end has no elevation";
        }
        if (end.widthFt() < 20 || end.widthFt() > 500) {
            return "the width is missing or not that of a runway";
        }
        if (end.lengthFt() - end.displacedFt() < 1300) {
            return "less than 1300 ft to land on";
        }
        if (Math.abs(end.otherFt() - end.elevationFt()) > 0.03 * end.lengthFt()) {
            return "the ends differ in level by more than 3 % of the length";
        }
        if (end.otherLatitude() == end.latitudeDeg() && end.otherLongitude() == end.longitudeDeg()) {
            return "both ends are at the same place";
        }
        return "";
    }

    private static RunwayEnd model(RunwayEndData.End end) {
        SlopewrightFactory make = SlopewrightFactory.eINSTANCE;
        Project project = make.createProject();
        Aerodrome aerodrome = make.createAerodrome();
        project.setAerodrome(aerodrome);
        Runway runway = make.createRunway();
        aerodrome.getRunways().add(runway);
        RunwayEnd here = make.createRunwayEnd();
        here.setDesignator("here");
        here.setThreshold(place(end.latitudeDeg(), end.longitudeDeg()));
        here.setThresholdElevationM(Lengths.feetToMetres(end.elevationFt()));
        RunwayEnd there = make.createRunwayEnd();
        there.setDesignator("there");
        there.setThreshold(place(end.otherLatitude(), end.otherLongitude()));
        runway.getEnds().addAll(List.of(here, there));
        return here;
    }

    private static Place place(double latitudeDeg, double longitudeDeg) {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        place.setLatitudeDeg(latitudeDeg);
        place.setLongitudeDeg(longitudeDeg);
        return place;
    }

    private void site(RunwayEndData.End end) {
        double lengthM = Lengths.feetToMetres(end.lengthFt());
        int code = lengthM < 800 ? 1 : lengthM < 1200 ? 2 : lengthM < 1800 ? 3 : 4;
        double slopePercent = (end.otherFt() - end.elevationFt()) / end.lengthFt() * 100;
        double eyeToWheel = code >= 3 ? 4.5 : 2;
        SitingRequest request = SitingRequest.builder().set(Input.SLOPE, SLOPE_DEG).set(Input.RUNWAY_WIDTH,
                Lengths.feetToMetres(end.widthFt()))
                .set(Input.CODE, (double) code).set(Input.EYE_TO_WHEEL, eyeToWheel).set(Input.GROUND_SLOPE, slopePercent).build();
        try {
            check(end, Families.site("four-unit-row", request, rules), eyeToWheel + (code >= 3 ? 9 : 6), slopePercent / 100);
            sited++;
        } catch (SitingException e) {
            refused.merge(e.getMessage(), 1, Integer::sum);
        }
    }

    private void check(RunwayEndData.End end, Siting siting, double eyeHeightM, double rise) {
        double distance = siting.distanceM();
        require(end, Double.isFinite(distance) && siting.units().stream().allMatch(unit -> Double.isFinite(unit.place().heightM())),
                "not finite");
        double forward = distance * Math.tan(Math.toRadians(LOWEST_DEG)) + rise * distance;
        require(end, Math.abs(forward - eyeHeightM) < MILLIMETRE, "eye height " + forward + " instead of " + eyeHeightM);
        require(end, Math.abs(siting.mehtM() - eyeHeightM) < MILLIMETRE, "reported eye height");
        require(end, distance > 0 && distance < Lengths.feetToMetres(end.lengthFt() - end.displacedFt()), "distance " + distance);
        double boundary = distance * Math.tan(Math.toRadians(BOUNDARY_DEG)) + rise * distance;
        require(end, Signals.observe(siting, new FramePoint(0, 0, boundary + MILLIMETRE)).meaning() == Meaning.ON_SLOPE,
                "no on-slope signal");
        require(end, Signals.observe(siting, new FramePoint(0, 0, boundary - MILLIMETRE)).meaning() == Meaning.BELOW, "on slope too low");
        double onSlope = distance * Math.tan(Math.toRadians(SLOPE_DEG)) + rise * distance;
        require(end, Signals.observe(siting, new FramePoint(0, 0, onSlope)).meaning() == Meaning.ON_SLOPE, "off slope on the slope");
        FramePoint other = SiteFrame.of(model(end)).toFrame(place(end.otherLatitude(), end.otherLongitude()),
                Lengths.feetToMetres(end.otherFt()));
        require(end, other.alongM() > 0 && Math.abs(other.rightM()) < MILLIMETRE, "the other end is not straight ahead: " + other);
        require(end, Math.abs(other.heightM() - rise * Lengths.feetToMetres(end.lengthFt())) < MILLIMETRE, "level of the other end");
    }

    private void require(RunwayEndData.End end, boolean holds, String fault) {
        if (!holds) {
            faults.add("end " + end.id() + ": " + fault);
        }
    }
}
