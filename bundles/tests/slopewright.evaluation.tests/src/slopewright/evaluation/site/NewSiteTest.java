package slopewright.evaluation.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachType;
import slopewright.model.Helipad;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;

/** The project that is made of what is known of a new site. */
class NewSiteTest {
    private static final SiteNames NAMES = new SiteNames("the runway", "the pad", "the glide path", "the battery", "the supply",
            "the survey", "the remarks", Message::english);

    private final NewSite site = new NewSite("icao:5th");

    private static RunwayEnd end(Project project) {
        return (RunwayEnd) Projects.hosts(project).get(0);
    }

    @Test
    void whatIsKnownIsInTheProjectAndWhatIsNotIsMissing() {
        site.set(SiteNumber.WIDTH, OptionalDouble.of(45));
        site.set(SiteNumber.LENGTH, OptionalDouble.empty());
        site.setCode(4);
        site.setApproach(ApproachType.NON_PRECISION);
        Project project = site.project(NAMES);
        Runway runway = project.getAerodrome().getRunways().get(0);
        assertEquals(45, runway.getWidthM());
        assertNull(runway.getLengthM());
        assertEquals(4, runway.getCodeNumber());
        assertEquals("the runway", runway.getName());
        assertEquals(ApproachType.NON_PRECISION, end(project).getApproachType());
        assertEquals("icao:5th", project.getRuleSetKey());
        assertTrue(Projects.aids(project).isEmpty());
    }

    @Test
    void aNumberIsAssumedUntilAnotherOneIsKnown() {
        assertTrue(site.isAssumed(SiteNumber.WIDTH));
        assertFalse(site.isAssumed(SiteNumber.LATITUDE), "no place is assumed");
        site.set(SiteNumber.WIDTH, OptionalDouble.of(45));
        assertFalse(site.isAssumed(SiteNumber.WIDTH));
    }

    @Test
    void withoutAPlaceTheSiteIsLocal() {
        Project local = site.project(NAMES);
        assertEquals("local", local.getAerodrome().getCoordinateReference());
        assertEquals(0, end(local).getThreshold().getEastM());
        site.set(SiteNumber.LATITUDE, OptionalDouble.of(48));
        site.set(SiteNumber.LONGITUDE, OptionalDouble.of(11));
        Project placed = site.project(NAMES);
        assertEquals("WGS84", placed.getAerodrome().getCoordinateReference());
        assertEquals(48, end(placed).getThreshold().getLatitudeDeg());
    }

    @Test
    void aHelipadHasADirection() {
        site.setHelipad(true);
        site.set(SiteNumber.FATO, OptionalDouble.of(24));
        Helipad pad = site.project(NAMES).getAerodrome().getHelipads().get(0);
        assertEquals(24, pad.getFatoLengthM());
        assertEquals(36, pad.getSafetyAreaWidthM(), "one and a half times the side");
        assertEquals(90, pad.getDirections().get(0).getTrueBearingDeg());
    }

    /** The first direction of a pad is called by its bearing, also before the project is made; a name of one's own stays. */
    @Test
    void theNameOfALandingDirectionFollowsItsBearing() {
        NewSite site = new NewSite("icao:9th");
        site.start(SiteTemplate.FIELD_SITE);
        site.set(SiteNumber.BEARING, OptionalDouble.of(250));
        assertEquals("H-250", site.designator());
        assertEquals("H-250", Projects.hosts(site.project(SiteNames.english(""))).get(0).getDesignator());
        site.setDesignator("North slot");
        assertEquals("North slot", Projects.hosts(site.project(SiteNames.english(""))).get(0).getDesignator());
    }

    @Test
    void aTemplateGivesWhatIsKnown() {
        Project demo = DemoProjects.load(DemoProjects.GOOD);
        site.start(demo);
        Project made = site.project(NAMES);
        assertEquals(demo.getAerodrome().getName(), made.getName());
        assertEquals(((RunwayEnd) Projects.hosts(demo).get(0)).getThresholdElevationM(), end(made).getThresholdElevationM());
        assertEquals(demo.getAerodrome().getEquipmentTypes().size(), made.getAerodrome().getEquipmentTypes().size());
        assertFalse(site.isAssumed(SiteNumber.ELEVATION));
    }

    /** The international rule set does not cover the tri-colour unit; the aid names the one that does, with its edition. */
    @Test
    void theFirstLayoutIsUnderARuleSetThatCoversTheFamily() {
        Project row = site.laidOut(NAMES, "four-unit-row");
        List<ApproachAid> aids = Projects.aids(row);
        assertEquals(1, aids.size());
        assertEquals(4, aids.get(0).getUnits().size());
        assertNull(aids.get(0).getRuleSetKey());
        Project one = site.laidOut(NAMES, "tri-colour");
        assertTrue(String.valueOf(Projects.aids(one).get(0).getRuleSetKey()).matches("faa:.+"), Projects.aids(one).get(0).getRuleSetKey());
    }
}
