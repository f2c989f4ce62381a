package slopewright.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.model.AeroplaneGroup;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;

/** Project files: nothing is lost, nothing is half-written, and every fault is named. */
class ProjectFileTest {

    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    @TempDir
    private Path folder;

    private static Project project() {
        Project project = MAKE.createProject();
        project.setName("Marl Green");
        Aerodrome aerodrome = MAKE.createAerodrome();
        project.setAerodrome(aerodrome);
        AeroplaneGroup group = MAKE.createAeroplaneGroup();
        group.setEyeToWheelM(4.25);
        aerodrome.getAeroplaneGroups().add(group);
        Runway runway = MAKE.createRunway();
        runway.setWidthM(30.0);
        aerodrome.getRunways().add(runway);
        RunwayEnd end = MAKE.createRunwayEnd();
        end.setDesignator("11");
        end.getRegularGroups().add(group);
        runway.getEnds().add(end);
        ApproachAid aid = MAKE.createApproachAid();
        aid.setFamilyKey("four-unit-row");
        end.getAids().add(aid);
        LightUnit unit = MAKE.createLightUnit();
        unit.setLabel("A");
        unit.setSettingDeg(2.5);
        aid.getUnits().add(unit);
        return project;
    }

    private static String text(Project project) {
        return new String(ProjectFile.bytes(project), StandardCharsets.UTF_8);
    }

    private static Project load(String text) throws ProjectFileException {
        return ProjectFile.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "case.slopewright");
    }

    @Test
    void savesTheSameBytesAgain() throws ProjectFileException {
        String first = text(project());
        assertEquals(first, text(load(first)));
        assertFalse(first.contains("\r"));
    }

    @Test
    void keepsEveryValueAndReference() throws ProjectFileException {
        Project loaded = load(text(project()));
        RunwayEnd end = loaded.getAerodrome().getRunways().get(0).getEnds().get(0);
        assertSame(loaded.getAerodrome().getAeroplaneGroups().get(0), end.getRegularGroups().get(0));
        assertEquals(4.25, end.getRegularGroups().get(0).getEyeToWheelM());
        assertEquals(2.5, end.getAids().get(0).getUnits().get(0).getSettingDeg());
    }

    @Test
    void givesEveryElementAnIdOfItsOwn() throws ProjectFileException {
        Project loaded = load(text(project()));
        List<Identified> elements = Ids.elements(loaded);
        Set<String> ids = new HashSet<>(elements.stream().map(Identified::getId).toList());
        assertEquals(7, elements.size());
        assertEquals(elements.size(), ids.size());
        assertFalse(ids.contains(null));
        assertEquals(7, text(loaded).split("xmi:id=", -1).length - 1);
    }

    @Test
    void loadsAnUnknownFamily() throws ProjectFileException {
        Project loaded = load(text(project()).replace("four-unit-row", "lantern-stack"));
        assertEquals("lantern-stack", loaded.getAerodrome().getRunways().get(0).getEnds().get(0).getAids().get(0).getFamilyKey());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "widthM=\"30.0\" | widthM=\"wide\" | 'wide' is no value for widthM",
        "widthM=\"30.0\" | breadthM=\"30.0\" | 'breadthM' is not known here",
        "<aeroplaneGroups | <aeroplanePacks | 'aeroplanePacks' is not known here",
        "</slopewright:Project> | </slopewright:Proj | is no well-formed XML",
        "model/1.0 | model/9.9 | is of the format 'http://slopewright.example/model/9.9'",
        "regularGroups=\"aeroplane-group-1\" | regularGroups=\"nobody\" | nobody that is not there",
        "xmi:id=\"light-unit-1\" | xmi:id=\"runway-1\" | the id runway-1 is there twice",
    })
    void namesFileLineAndReasonOfADamagedFile(String right, String wrong, String reason) {
        String whole = text(project());
        assertTrue(whole.contains(right), right);
        String damaged = whole.replace(right, wrong);
        ProjectFileException thrown = assertThrows(ProjectFileException.class, () -> load(damaged));
        int line = 1 + (int) damaged.substring(0, damaged.indexOf(wrong)).chars().filter(c -> c == '\n').count();
        assertTrue(thrown.getMessage().contains(reason), thrown.getMessage());
        assertTrue(Math.abs(thrown.line() - line) <= 1 || right.startsWith("xmi:id"), thrown.getMessage() + " instead of line " + line);
        assertTrue(thrown.line() > 0, thrown.getMessage());
        assertTrue(thrown.getMessage().startsWith("case.slopewright:"), thrown.getMessage());
        assertEquals(1, thrown.getMessage().lines().count());
    }

    @Test
    void refusesDocumentTypesAndEntities() {
        String bomb = "<?xml version=\"1.0\"?>\n<!DOCTYPE x [<!ENTITY a SYSTEM \"file:///etc/hostname\">]>\n<x>&a;</x>";
        ProjectFileException thrown = assertThrows(ProjectFileException.class, () -> load(bomb));
        assertTrue(thrown.fault().english().contains("document type declaration"), thrown.getMessage());
        assertEquals(2, thrown.line());
    }

    @Test
    void refusesWhatIsNoProject() {
        assertTrue(assertThrows(ProjectFileException.class, () -> load("")).fault().english().contains("empty"));
        assertTrue(assertThrows(ProjectFileException.class, () -> load("id,alongM\n")).line() > 0);
        ProjectFileException missing = assertThrows(ProjectFileException.class, () -> ProjectFile.load(folder.resolve("none")));
        assertTrue(missing.fault().english().contains("no such file"));
    }

    @Test
    void keepsWhatASaveReplaces() throws ProjectFileException, IOException {
        Path file = folder.resolve("marl.slopewright");
        Project project = project();
        ProjectFile.save(project, file);
        byte[] first = Files.readAllBytes(file);
        project.setName("Marl Green, second");
        ProjectFile.save(project, file);
        assertArrayEquals(first, Files.readAllBytes(folder.resolve("marl.slopewright" + ProjectFile.PREVIOUS_SUFFIX)));
        assertEquals("Marl Green, second", ProjectFile.load(file).getName());
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(2, left.count());
        }
    }

    @Test
    void neverOverwritesWhatItCanNotRead() throws IOException {
        Path file = folder.resolve("notes.slopewright");
        Files.writeString(file, "my notes");
        ProjectFileException thrown = assertThrows(ProjectFileException.class, () -> ProjectFile.save(project(), file));
        assertTrue(thrown.fault().english().contains("left as it is"), thrown.getMessage());
        assertEquals("my notes", Files.readString(file));
    }

    @Test
    void leavesNothingBehindWhereItCanNotWrite() {
        Path file = folder.resolve("missing").resolve("marl.slopewright");
        ProjectFileException thrown = assertThrows(ProjectFileException.class, () -> ProjectFile.save(project(), file));
        assertTrue(thrown.fault().english().contains("cannot be written"), thrown.getMessage());
        assertFalse(Files.exists(file.getParent()));
    }

    @Test
    void roundTripsTwentyThousandObstacles() throws ProjectFileException {
        Project project = project();
        for (int i = 0; i < 20_000; i++) {
            Obstacle obstacle = MAKE.createObstacle();
            obstacle.setKind(ObstacleKind.POINT);
            Place place = MAKE.createPlace();
            place.setEastM(i * 1.5);
            place.setNorthM(-i * 0.25);
            place.setElevationM(100.0 + i % 50);
            obstacle.getPlaces().add(place);
            project.getAerodrome().getObstacles().add(obstacle);
        }
        byte[] bytes = ProjectFile.bytes(project);
        Project loaded = ProjectFile.load(new ByteArrayInputStream(bytes), "large");
        assertArrayEquals(bytes, ProjectFile.bytes(loaded));
    }
}
