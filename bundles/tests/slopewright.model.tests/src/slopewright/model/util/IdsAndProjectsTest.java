package slopewright.model.util;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.Helipad;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;

/** Ids are given once and stay; elements are found and named. */
class IdsAndProjectsTest {

    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private final Project project = MAKE.createProject();
    private final Runway runway = MAKE.createRunway();
    private final RunwayEnd end = MAKE.createRunwayEnd();
    private final ApproachAid aid = MAKE.createApproachAid();

    IdsAndProjectsTest() {
        project.setAerodrome(MAKE.createAerodrome());
        project.getAerodrome().getRunways().add(runway);
        runway.setDesignator("11/29");
        end.setDesignator("11");
        runway.getEnds().add(end);
        aid.setName("Row 11");
        end.getAids().add(aid);
    }

    @Test
    void givesTheNextFreeNumberAndKeepsWhatIsThere() {
        LightUnit first = MAKE.createLightUnit();
        first.setId("light-unit-2");
        LightUnit second = MAKE.createLightUnit();
        LightUnit third = MAKE.createLightUnit();
        aid.getUnits().add(first);
        aid.getUnits().add(second);
        aid.getUnits().add(third);
        Ids.assign(project);
        assertEquals("light-unit-2", first.getId());
        assertEquals("light-unit-1", second.getId());
        assertEquals("light-unit-3", third.getId());
        assertSame(third, Ids.find(project, "light-unit-3").orElseThrow());
        assertTrue(Ids.find(project, "light-unit-4").isEmpty());
    }

    @Test
    void givesIdsToASubtreeThatIsNotInTheProjectYet() {
        Ids.assign(project);
        ApproachAid fresh = MAKE.createApproachAid();
        Ids.assign(fresh, project);
        assertEquals("approach-aid-2", fresh.getId());
    }

    @Test
    void namesElementsFromTheRunwayEndDownward() {
        LightUnit unit = MAKE.createLightUnit();
        unit.setLabel("B");
        aid.getUnits().add(unit);
        assertEquals("runway 11 > Row 11 > unit B", Projects.path(unit));
        assertEquals("runway 11/29", Projects.path(runway));
    }

    @Test
    void findsHostsAndAidsOfRunwaysAndHelipads() {
        Helipad helipad = MAKE.createHelipad();
        ApproachDirection direction = MAKE.createApproachDirection();
        helipad.getDirections().add(direction);
        project.getAerodrome().getHelipads().add(helipad);
        ApproachAid portable = MAKE.createApproachAid();
        direction.getAids().add(portable);
        assertEquals(2, Projects.hosts(project).size());
        assertEquals(List.of(aid, portable), Projects.aids(project));
        assertSame(direction, Projects.host(portable).orElseThrow());
        assertSame(helipad, Projects.helipad(portable).orElseThrow());
        assertSame(runway, Projects.runway(aid).orElseThrow());
        assertSame(project, Projects.project(portable).orElseThrow());
    }
}
