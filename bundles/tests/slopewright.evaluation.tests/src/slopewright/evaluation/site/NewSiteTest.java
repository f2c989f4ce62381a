package slopewright.evaluation.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

import org.junit.jupiter.api.Test;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.messages.Message;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachType;
import slopewright.model.Helipad;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.testkit.DemoProjects;

/** The project that is made of what is known of a new site. */
class NewSiteTest {
    private static final SiteNames NAMES = new SiteNames("the runway", "the pad", "the glide path", "the battery", "the supply",
            "the survey", "the remarks", Message::english);

    private static final int SITES = 80;

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
        assertNull(placed.getAerodrome().getCoordinateEpoch(), "nobody said it");
        site.set(SiteNumber.EPOCH, OptionalDouble.of(2026.8));
        assertEquals(2026.8, site.project(NAMES).getAerodrome().getCoordinateEpoch());
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
        assertEquals(demo.getAerodrome().getCoordinateEpoch(), made.getAerodrome().getCoordinateEpoch());
        assertEquals(demo.getAerodrome().getEquipmentTypes().size(), made.getAerodrome().getEquipmentTypes().size());
        assertFalse(site.isAssumed(SiteNumber.ELEVATION));
    }

    /** What the comparison of families shows before the choice is what stands afterwards, for every family, whatever was typed. */
    @Test
    void whatIsProposedIsWhatIsMade() {
        Random random = new Random(20261130);
        int compared = 0;
        for (int i = 0; i < SITES; i++) {
            NewSite any = random(random);
            ProjectEvaluation before = ProjectEvaluation.of(any.project(NAMES), Optional.empty());
            for (Candidate candidate : FamilyComparison.of(before, Projects.hosts(before.project()).get(0))) {
                if (candidate.siting().isPresent()) {
                    Siting proposed = candidate.siting().get();
                    Siting made = ProjectEvaluation.of(any.laidOut(NAMES, candidate.family().key()), Optional.empty()).aids().get(0)
                            .siting().orThrow();
                    String where = candidate.family().key() + " at site " + i;
                    assertEquals(proposed.units().size(), made.units().size(), where);
                    assertEquals(proposed.distanceM(), made.distanceM(), 1e-9, where);
                    assertEquals(proposed.mehtM(), made.mehtM(), 1e-9, where);
                    assertEquals(proposed.slopeDeg(), made.slopeDeg(), 1e-9, where);
                    compared++;
                }
            }
        }
        assertTrue(compared > 5 * SITES, compared + " layouts");
    }

    private static NewSite random(Random random) {
        NewSite any = new NewSite(List.of("icao:9th", "icao:5th", "easa", "faa", "casa").get(random.nextInt(5)));
        any.setHelipad(random.nextInt(4) == 0);
        any.setCode(1 + random.nextInt(4));
        any.setApproach(List.of(ApproachType.VISUAL, ApproachType.NON_PRECISION, ApproachType.PRECISION_CAT_I).get(random.nextInt(3)));
        any.setGlidePath(any.approach() == ApproachType.PRECISION_CAT_I && random.nextBoolean());
        any.set(SiteNumber.WIDTH, OptionalDouble.of(List.of(18, 23, 30, 45, 60).get(random.nextInt(5))));
        any.set(SiteNumber.LENGTH, OptionalDouble.of(800 + random.nextInt(3000)));
        any.set(SiteNumber.SLOPE, OptionalDouble.of(List.of(3.0, 3.0, 3.5, 4.0, 2.5).get(random.nextInt(5))));
        any.set(SiteNumber.EYE_TO_WHEEL, OptionalDouble.of(1 + random.nextInt(130) / 10.0));
        any.set(SiteNumber.ELEVATION, OptionalDouble.of(random.nextInt(900)));
        if (random.nextBoolean()) {
            any.set(SiteNumber.OTHER_ELEVATION, OptionalDouble.of(any.number(SiteNumber.ELEVATION).getAsDouble() + random.nextInt(8) - 4));
        }
        return any;
    }

    /** 1852 m along the meridian at 48 degrees are 1852/6370736 rad: a(1-e2)/(1-e2 sin2 48)^1.5 of WGS 84. */
    @Test
    void bothEndsAreMadeWhereTheElevationOfTheOtherIsKnown() {
        site.setDesignator("36L");
        site.set(SiteNumber.BEARING, OptionalDouble.of(0));
        site.set(SiteNumber.LENGTH, OptionalDouble.of(1852));
        site.set(SiteNumber.LATITUDE, OptionalDouble.of(48));
        site.set(SiteNumber.LONGITUDE, OptionalDouble.of(11));
        site.set(SiteNumber.ELEVATION, OptionalDouble.of(100));
        assertEquals("36L", site.runwayDesignator());
        site.set(SiteNumber.OTHER_ELEVATION, OptionalDouble.of(104));
        assertEquals("36L/18R", site.runwayDesignator());
        Project project = site.laidOut(NAMES, "four-unit-row");
        List<RunwayEnd> ends = project.getAerodrome().getRunways().get(0).getEnds();
        assertEquals(List.of("36L", "18R"), ends.stream().map(RunwayEnd::getDesignator).toList());
        RunwayEnd other = ends.get(1);
        assertEquals(104, other.getThresholdElevationM());
        assertEquals(104, project.getAerodrome().getElevationM(), "the highest threshold");
        assertEquals(48 + Math.toDegrees(1852 / 6_370_736.0), other.getThreshold().getLatitudeDeg(), 1e-6);
        assertEquals(11, other.getThreshold().getLongitudeDeg(), 1e-9);
        assertEquals(List.of(1, 1), ends.stream().map(end -> end.getAids().size()).toList());
        assertEquals(ends.get(0).getRegularGroups(), other.getRegularGroups());
    }

    /** A T stands on both sides whatever the side of others is. */
    @Test
    void theSideOfAnAidIsThatOnWhichItStands() {
        site.setCode(4);
        site.set(SiteNumber.EYE_TO_WHEEL, OptionalDouble.of(4));
        assertEquals(AidSide.BOTH, Projects.aids(site.laidOut(NAMES, "t-form")).get(0).getSide());
        assertEquals(AidSide.LEFT, Projects.aids(site.laidOut(NAMES, "four-unit-row")).get(0).getSide());
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
