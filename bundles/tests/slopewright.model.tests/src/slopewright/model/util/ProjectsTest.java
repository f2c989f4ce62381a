package slopewright.model.util;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.FullProject;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;

class ProjectsTest {

    private static final SlopewrightFactory FACTORY = SlopewrightFactory.eINSTANCE;

    private Project project;
    private Runway runway;
    private RunwayEnd end;
    private Helipad helipad;
    private ApproachDirection direction;
    private ApproachAid papi;
    private ApproachAid row;
    private LightUnit unit;

    @BeforeEach
    void makeAnAerodromeWithARunwayAndAHelipad() {
        unit = FACTORY.createLightUnit();
        unit.setLabel("A");
        papi = FACTORY.createApproachAid();
        papi.setName("PAPI left");
        papi.getUnits().add(unit);
        row = FACTORY.createApproachAid();
        row.setName("Row");
        end = FACTORY.createRunwayEnd();
        end.setDesignator("09");
        end.getAids().add(papi);
        runway = FACTORY.createRunway();
        runway.setDesignator("09/27");
        runway.getEnds().add(end);
        direction = FACTORY.createApproachDirection();
        direction.setDesignator("310");
        direction.getAids().add(row);
        helipad = FACTORY.createHelipad();
        helipad.setName("Roof");
        helipad.getDirections().add(direction);
        Aerodrome aerodrome = FACTORY.createAerodrome();
        aerodrome.getHelipads().add(helipad);
        aerodrome.getRunways().add(runway);
        project = FACTORY.createProject();
        project.setAerodrome(aerodrome);
    }

    @Test
    void hostsAndAidsComeRunwaysFirst() {
        assertEquals(List.of(end, direction), Projects.hosts(project));
        assertEquals(List.of(papi, row), Projects.aids(project));
    }

    @Test
    void aProjectWithoutAerodromeHasNone() {
        assertEquals(List.of(), Projects.hosts(FACTORY.createProject()));
        assertEquals(List.of(), Projects.aids(FACTORY.createProject()));
    }

    @Test
    void ownersAreFoundFromBelow() {
        assertSame(project, Projects.project(unit).orElseThrow());
        assertSame(end, Projects.host(unit).orElseThrow());
        assertSame(papi, Projects.aid(unit).orElseThrow());
        assertSame(papi, Projects.aid(papi).orElseThrow());
        assertSame(runway, Projects.runway(unit).orElseThrow());
        assertEquals(Optional.empty(), Projects.helipad(unit));
        assertSame(helipad, Projects.helipad(row).orElseThrow());
        assertSame(direction, Projects.host(row).orElseThrow());
        assertEquals(Optional.empty(), Projects.runway(row));
    }

    @Test
    void whatWasTakenOutHasNoOwner() {
        end.getAids().remove(papi);
        assertEquals(Optional.empty(), Projects.project(unit));
        assertEquals(Optional.empty(), Projects.host(papi));
        assertSame(papi, Projects.aid(unit).orElseThrow());
    }

    @Test
    void pathsNameTheOwnersThatPeopleKnow() {
        assertEquals("runway 09 > PAPI left > unit A", Projects.path(unit));
        assertEquals("Roof > approach 310 > Row", Projects.path(row));
        assertEquals("runway 09/27", Projects.path(runway));
        assertEquals("runway 09", Projects.path(end));
    }

    @Test
    void whatHasNoNameIsCalledByItsIdOrItsClass() {
        Obstacle obstacle = FACTORY.createObstacle();
        assertEquals("Obstacle", Projects.label(obstacle));
        obstacle.setId("obstacle-7");
        assertEquals("obstacle-7", Projects.label(obstacle));
        obstacle.setName("Mast");
        assertEquals("Mast", Projects.label(obstacle));
        end.setDesignator(" ");
        unit.setLabel(null);
        assertEquals("runway (unnamed) > PAPI left > unit (unnamed)", Projects.path(unit));
    }

    @Test
    void everyElementOfAFullProjectHasAPath() {
        Project full = FullProject.make();
        Ids.assign(full);
        for (Identified element : Ids.elements(full)) {
            assertFalse(Projects.path(element).isBlank(), element.getId());
            assertSame(full, Projects.project(element).orElseThrow());
        }
    }
}
