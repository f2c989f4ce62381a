package slopewright.edit;

import slopewright.model.Aerodrome;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachType;
import slopewright.model.Circuit;
import slopewright.model.Place;
import slopewright.model.ProfilePoint;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.siting.Side;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** A small invented site: one runway of 1800 m with two ends at 50 m and 54 m and one aeroplane group. */
final class Sample {

    static final RuleSet ICAO = RuleSets.find("icao:5th").orElseThrow();

    final Project project = SlopewrightFactory.eINSTANCE.createProject();
    final Aerodrome aerodrome = SlopewrightFactory.eINSTANCE.createAerodrome();
    final RunwayEnd end;
    final RunwayEnd other;
    final AeroplaneGroup group = SlopewrightFactory.eINSTANCE.createAeroplaneGroup();

    Sample() {
        project.setName("Invented site");
        project.setRuleSetKey("icao:5th");
        project.setAerodrome(aerodrome);
        aerodrome.setIdentifier("ZZED");
        Runway runway = SlopewrightFactory.eINSTANCE.createRunway();
        runway.setDesignator("09/27");
        runway.setLengthM(1800.0);
        runway.setWidthM(45.0);
        runway.setCodeNumber(4);
        aerodrome.getRunways().add(runway);
        group.setName("medium jets");
        group.setEyeToWheelM(7.0);
        aerodrome.getAeroplaneGroups().add(group);
        end = end(runway, "09", 90, 50, 0);
        other = end(runway, "27", 270, 54, 0.0252);
        Ids.assign(project);
    }

    private RunwayEnd end(Runway runway, String designator, double bearingDeg, double elevationM, double longitudeDeg) {
        RunwayEnd made = SlopewrightFactory.eINSTANCE.createRunwayEnd();
        made.setDesignator(designator);
        made.setTrueBearingDeg(bearingDeg);
        made.setThresholdElevationM(elevationM);
        made.setDesiredSlopeDeg(3.0);
        made.setApproachType(ApproachType.NON_PRECISION);
        made.getRegularGroups().add(group);
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        place.setLatitudeDeg(50.0);
        place.setLongitudeDeg(longitudeDeg);
        made.setThreshold(place);
        runway.getEnds().add(made);
        return made;
    }

    /** Adds a site profile that rises by one metre in a hundred, from the threshold to 600 m. */
    Sample withProfile() {
        for (int chainage = 0; chainage <= 600; chainage += 300) {
            ProfilePoint point = SlopewrightFactory.eINSTANCE.createProfilePoint();
            point.setChainageM((double) chainage);
            point.setElevationM(50 + chainage / 100.0);
            end.getSiteProfile().add(point);
        }
        Ids.assign(project);
        return this;
    }

    /** Adds a solved row of four on the left of 09. */
    Sample withRow() {
        AddAid.solve(end, "four-unit-row", ICAO, Side.LEFT).execute();
        return this;
    }

    /** Adds a circuit that feeds the row. */
    Sample withCircuit() {
        Circuit circuit = SlopewrightFactory.eINSTANCE.createCircuit();
        circuit.setName("circuit 1");
        circuit.getAids().add(end.getAids().get(0));
        aerodrome.getCircuits().add(circuit);
        Ids.assign(project);
        return this;
    }
}
