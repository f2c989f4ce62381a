package slopewright.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.FullProject;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;

/** What is written is read again, to the last bit. */
class ProjectRoundTripTest {

    private static final SlopewrightFactory FACTORY = SlopewrightFactory.eINSTANCE;

    private static Project read(byte[] bytes) throws ProjectFileException {
        return ProjectFile.load(new ByteArrayInputStream(bytes), "test");
    }

    private static Project read(String text) throws ProjectFileException {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void everyFeatureOfEveryClassSurvives() throws ProjectFileException {
        Project project = FullProject.make();
        byte[] bytes = ProjectFile.bytes(project);
        Project again = read(bytes);
        assertTrue(Ids.elements(project).size() > 150, "the project holds two of everything that can be several");
        assertTrue(EcoreUtil.equals(project, again), "features and ids are equal");
        assertArrayEquals(bytes, ProjectFile.bytes(again));
    }

    @Test
    void theSameProjectGivesTheSameBytes() {
        byte[] bytes = ProjectFile.bytes(FullProject.make());
        assertArrayEquals(bytes, ProjectFile.bytes(FullProject.make()));
        Project project = FullProject.make();
        ProjectFile.bytes(project);
        assertArrayEquals(bytes, ProjectFile.bytes(project), "writing changes nothing");
    }

    @Test
    void everyElementCarriesItsId() {
        Project project = FullProject.make();
        String text = new String(ProjectFile.bytes(project), StandardCharsets.UTF_8);
        Set<String> ids = new HashSet<>();
        for (Identified element : Ids.elements(project)) {
            assertTrue(ids.add(element.getId()), element.getId());
            assertTrue(text.contains(" xmi:id=\"" + element.getId() + "\""), element.getId());
        }
    }

    /** The whole file by hand: one element a line, attributes in the order of the model, line ends of one character. */
    @Test
    void aSmallFileLooksLikeThis() throws ProjectFileException {
        Project project = FACTORY.createProject();
        project.setRuleSetKey("icao:5th");
        project.setName("Zyx");
        Aerodrome aerodrome = FACTORY.createAerodrome();
        aerodrome.setElevationM(12.25);
        aerodrome.setIdentifier("ZZAA");
        aerodrome.getRunways().add(FACTORY.createRunway());
        project.setAerodrome(aerodrome);
        String expected = """
                <?xml version="1.0" encoding="UTF-8"?>
                <slopewright:Project xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" \
                xmlns:slopewright="http://slopewright.example/model/1.0" xmi:id="project-1" name="Zyx" ruleSetKey="icao:5th">
                  <aerodrome xmi:id="aerodrome-1" identifier="ZZAA" elevationM="12.25">
                    <runways xmi:id="runway-1"/>
                  </aerodrome>
                </slopewright:Project>
                """;
        assertEquals(expected, new String(ProjectFile.bytes(project), StandardCharsets.UTF_8));
        assertNull(read(expected).getAerodrome().getLatitudeDeg(), "what was not entered stays unknown");
    }

    @Test
    void anUnknownFamilyLoadsAndIsKept() throws ProjectFileException {
        Project project = FullProject.make();
        Projects.aids(project).get(0).setFamilyKey("family-of-tomorrow");
        Project again = read(ProjectFile.bytes(project));
        assertEquals("family-of-tomorrow", Projects.aids(again).get(0).getFamilyKey());
    }

    @Test
    void anotherEncodingIsReadAndBecomesUtf8() throws ProjectFileException {
        Project project = FACTORY.createProject();
        project.setName("Zürük");
        byte[] utf8 = ProjectFile.bytes(project);
        String text = new String(utf8, StandardCharsets.UTF_8);
        Project again = read(text.replace("UTF-8", "ISO-8859-1").getBytes(StandardCharsets.ISO_8859_1));
        assertEquals("Zürük", again.getName());
        assertArrayEquals(utf8, ProjectFile.bytes(again));
    }

    @Test
    void windowsLineEndsAreReadAndBecomeOneCharacter() throws ProjectFileException {
        byte[] bytes = ProjectFile.bytes(FullProject.make());
        String text = new String(bytes, StandardCharsets.UTF_8);
        assertFalse(text.contains("\r"));
        assertArrayEquals(bytes, ProjectFile.bytes(read(text.replace("\n", "\r\n"))));
    }

    /** 17 digits are needed for some numbers to come back the same. */
    @Test
    void numbersComeBackToTheLastBit() throws ProjectFileException {
        List<Double> numbers = List.of(0.1 + 0.2, -0.0, 1e-300, Double.MIN_VALUE, Double.MAX_VALUE, 123456.789012345, Math.PI, 1e21);
        Project project = FACTORY.createProject();
        project.setAerodrome(FACTORY.createAerodrome());
        for (double number : numbers) {
            project.getAerodrome().setLatitudeDeg(number);
            double again = read(ProjectFile.bytes(project)).getAerodrome().getLatitudeDeg();
            assertEquals(Double.doubleToLongBits(number), Double.doubleToLongBits(again), () -> String.valueOf(number));
        }
    }

    /** A removal that is undone must bring back the same id, or findings and notes would lose their element. */
    @Test
    void anElementTakenOutAndPutBackKeepsItsId() throws ProjectFileException {
        byte[] bytes = ProjectFile.bytes(FullProject.make());
        Project project = read(bytes);
        ApproachAid aid = Projects.aids(project).get(0);
        List<String> ids = Ids.elements(aid).stream().map(Identified::getId).toList();
        RunwayEnd end = (RunwayEnd) Projects.host(aid).orElseThrow();
        LightUnit unit = aid.getUnits().remove(1);
        aid.getUnits().add(unit);
        end.getAids().remove(aid);
        end.getAids().add(0, aid);
        assertEquals(ids, Ids.elements(aid).stream().map(Identified::getId).toList());
        assertArrayEquals(bytes, ProjectFile.bytes(project));
    }

    @Test
    void aCopyInTheProjectGetsAnIdOfItsOwn() throws ProjectFileException {
        Project project = read(ProjectFile.bytes(FullProject.make()));
        RunwayEnd end = project.getAerodrome().getRunways().get(0).getEnds().get(0);
        String id = end.getAids().get(0).getId();
        end.getAids().add(EcoreUtil.copy(end.getAids().get(0)));
        Project again = read(ProjectFile.bytes(project));
        List<ApproachAid> aids = again.getAerodrome().getRunways().get(0).getEnds().get(0).getAids();
        assertEquals(3, aids.size());
        assertEquals(id, aids.get(0).getId());
        assertFalse(id.equals(aids.get(2).getId()));
    }

    /** Time and size stay in proportion: some seconds would be minutes if either grew with the square of the number. */
    @Test
    void manyObstaclesAreWrittenAndRead() {
        int count = 20_000;
        Project project = FACTORY.createProject();
        project.setAerodrome(FACTORY.createAerodrome());
        for (int i = 0; i < count; i++) {
            Obstacle obstacle = FACTORY.createObstacle();
            obstacle.setKind(ObstacleKind.LINE);
            Place place = FACTORY.createPlace();
            place.setEastM(i / 7.0);
            obstacle.getPlaces().add(place);
            project.getAerodrome().getObstacles().add(obstacle);
        }
        assertTimeout(Duration.ofSeconds(20), () -> {
            byte[] bytes = ProjectFile.bytes(project);
            Project again = read(bytes);
            assertEquals(count, again.getAerodrome().getObstacles().size());
            assertEquals("obstacle-20000", again.getAerodrome().getObstacles().get(count - 1).getId());
            assertEquals((count - 1) / 7.0, again.getAerodrome().getObstacles().get(count - 1).getPlaces().get(0).getEastM());
            assertArrayEquals(bytes, ProjectFile.bytes(again));
            assertTrue(bytes.length < 200 * count, "200 bytes an obstacle at most, but " + bytes.length);
        });
    }

    @Test
    void manyReferencesAreReadAsFast() {
        int count = 5_000;
        Project project = FACTORY.createProject();
        project.setAerodrome(FACTORY.createAerodrome());
        RunwayEnd end = FACTORY.createRunwayEnd();
        project.getAerodrome().getRunways().add(FACTORY.createRunway());
        project.getAerodrome().getRunways().get(0).getEnds().add(end);
        for (int i = 0; i < count; i++) {
            project.getAerodrome().getAeroplaneGroups().add(FACTORY.createAeroplaneGroup());
        }
        end.getRegularGroups().addAll(project.getAerodrome().getAeroplaneGroups());
        byte[] bytes = ProjectFile.bytes(project);
        assertTimeout(Duration.ofSeconds(20), () -> {
            Project again = read(bytes);
            assertEquals(again.getAerodrome().getAeroplaneGroups(),
                    again.getAerodrome().getRunways().get(0).getEnds().get(0).getRegularGroups());
        });
    }
}
