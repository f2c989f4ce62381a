package slopewright.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.model.Circuit;
import slopewright.model.FullProject;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;

/** Saving never loses what was there. */
class ProjectSaveTest {

    @TempDir
    private Path folder;

    private static Project named(String name) {
        Project project = FullProject.make();
        project.setName(name);
        return project;
    }

    private static String nameIn(Path file) throws ProjectFileException {
        return ProjectFile.load(file).getName();
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aNewFileIsWrittenAndNothingElse() throws Exception {
        Path file = folder.resolve("zyx.slopewright");
        Project project = named("first");
        ProjectFile.save(project, file);
        assertEquals(List.of("zyx.slopewright"), files());
        assertArrayEquals(ProjectFile.bytes(project), Files.readAllBytes(file));
    }

    @Test
    void theContentBeforeIsKept() throws Exception {
        Path file = folder.resolve("zyx.slopewright");
        for (String name : List.of("first", "second", "third")) {
            ProjectFile.save(named(name), file);
        }
        assertEquals(List.of("zyx.slopewright", "zyx.slopewright.previous"), files());
        assertEquals("third", nameIn(file));
        assertEquals("second", nameIn(folder.resolve("zyx.slopewright.previous")));
    }

    @Test
    void whatWasLoadedIsSavedTheSame() throws Exception {
        Path file = folder.resolve("zyx.slopewright");
        ProjectFile.save(named("same"), file);
        byte[] bytes = Files.readAllBytes(file);
        ProjectFile.save(ProjectFile.load(file), file);
        assertArrayEquals(bytes, Files.readAllBytes(file));
        assertArrayEquals(bytes, Files.readAllBytes(folder.resolve("zyx.slopewright.previous")));
    }

    /** Two programs have the same file open: what the one saved is not lost by the other, which is told. */
    @Test
    void whatAnotherProgramSavedMeanwhileIsNotOverwritten() throws Exception {
        Path file = folder.resolve("zyx.slopewright");
        ProjectFile.save(named("first"), file);
        Project here = ProjectFile.load(file);
        Project there = ProjectFile.load(file);
        Project copy = ProjectFile.copy(here);
        there.setName("there");
        ProjectFile.save(there, file);
        for (Project late : List.of(here, copy)) {
            late.setName("here");
            ProjectFileException fault = assertThrows(ProjectFileException.class, () -> ProjectFile.save(late, file));
            assertInstanceOf(FileChangedException.class, fault.getCause());
            assertTrue(fault.getMessage().contains("another program changed it"), fault::getMessage);
        }
        assertEquals("there", nameIn(file));
        there.setName("there again");
        ProjectFile.save(there, file);
        assertEquals("there again", nameIn(file));
        ProjectFile.saveOver(here, file);
        assertEquals("here", nameIn(file));
        assertEquals("there again", nameIn(folder.resolve("zyx.slopewright.previous")));
        here.setName("and goes on");
        ProjectFile.save(here, file);
        assertEquals("and goes on", nameIn(file));
    }

    @Test
    void whatIsSavedElsewhereOrWasRemovedMeanwhileIsSaved() throws Exception {
        Path file = folder.resolve("zyx.slopewright");
        Path other = folder.resolve("other.slopewright");
        ProjectFile.save(named("first"), file);
        ProjectFile.save(named("other"), other);
        Project project = ProjectFile.load(file);
        ProjectFile.save(project, other);
        assertEquals("first", nameIn(other));
        Files.delete(other);
        ProjectFile.save(project, other);
        assertEquals("first", nameIn(other));
    }

    @Test
    void aProjectIsMadeOnlyWhereThereIsNoFile() throws Exception {
        Path file = folder.resolve("zyx.slopewright");
        ProjectFile.create(named("first"), file);
        ProjectFileException fault = assertThrows(ProjectFileException.class, () -> ProjectFile.create(named("second"), file));
        assertInstanceOf(FileAlreadyExistsException.class, fault.getCause());
        assertEquals("first", nameIn(file));
        assertEquals(List.of("zyx.slopewright"), files());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a letter to the mayor", "<?xml version=\"1.0\"?><html/>",
        "<slopewright:Project xmlns:slopewright=\"http://slopewright.example/model/2.0\"/>"})
    void whatIsNoReadableProjectIsNeverOverwritten(String content) throws Exception {
        Path file = Files.writeString(folder.resolve("zyx.slopewright"), content);
        ProjectFileException fault = assertThrows(ProjectFileException.class, () -> ProjectFile.save(named("new"), file));
        assertTrue(fault.getMessage().contains("it was left as it is"), fault::getMessage);
        assertEquals(content, Files.readString(file));
        assertEquals(List.of("zyx.slopewright"), files());
    }

    @Test
    void aFolderIsNotOverwritten() throws Exception {
        Path file = Files.createDirectory(folder.resolve("zyx.slopewright"));
        assertThrows(ProjectFileException.class, () -> ProjectFile.save(named("new"), file));
        assertTrue(Files.isDirectory(file));
        assertEquals(List.of("zyx.slopewright"), files());
    }

    /** A folder stands where the content before would be kept, so the save stops half way. */
    @Test
    void aSaveThatStopsHalfWayLosesNothing() throws Exception {
        Path file = folder.resolve("zyx.slopewright");
        ProjectFile.save(named("first"), file);
        byte[] bytes = Files.readAllBytes(file);
        Files.createFile(Files.createDirectory(folder.resolve("zyx.slopewright.previous")).resolve("in the way"));
        ProjectFileException fault = assertThrows(ProjectFileException.class, () -> ProjectFile.save(named("second"), file));
        assertTrue(fault.fault().english().startsWith("cannot be written: "), fault::getMessage);
        assertArrayEquals(bytes, Files.readAllBytes(file));
        assertEquals(List.of("zyx.slopewright", "zyx.slopewright.previous"), files(), "nothing temporary is left");
    }

    @Test
    void aMissingFolderIsNamedAndNotMade() throws Exception {
        Path file = folder.resolve("none").resolve("zyx.slopewright");
        ProjectFileException fault = assertThrows(ProjectFileException.class, () -> ProjectFile.save(named("new"), file));
        assertEquals(file + ": cannot be written: there is no such file or folder", fault.getMessage());
        assertEquals(List.of(), files());
    }

    @Test
    void aLinkStaysALink() throws Exception {
        Path real = folder.resolve("real.slopewright");
        ProjectFile.save(named("first"), real);
        Path link = Files.createSymbolicLink(folder.resolve("link.slopewright"), real);
        ProjectFile.save(named("second"), link);
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("second", nameIn(real));
        assertEquals("first", nameIn(folder.resolve("real.slopewright.previous")));
    }

    private void assertNotSaved(Project project, String reason) throws Exception {
        Path file = folder.resolve("zyx.slopewright");
        ProjectFile.save(named("before"), file);
        byte[] bytes = Files.readAllBytes(file);
        ProjectFileException fault = assertThrows(ProjectFileException.class, () -> ProjectFile.save(project, file));
        assertEquals("cannot be written: " + reason, fault.fault().english());
        assertArrayEquals(bytes, Files.readAllBytes(file));
        assertEquals(List.of("zyx.slopewright"), files());
        assertEquals(reason, assertThrows(IllegalStateException.class, () -> ProjectFile.bytes(project)).getMessage());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNoNumberIsNotSaved(double number) throws Exception {
        Project project = FullProject.make();
        project.getAerodrome().getRunways().get(1).setDesignator("18/36");
        project.getAerodrome().getRunways().get(1).setLengthM(number);
        assertNotSaved(project, "lengthM of runway 18/36 is no number");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 0x0B, 0x1F, 0xD83D, 0xDE00, 0xFFFE})
    void aCharacterThatXmlDoesNotKnowIsNotSaved(int character) throws Exception {
        Project project = FullProject.make();
        project.setRemarks("odd " + (char) character + " one");
        String name = String.format("U+%04X", character);
        assertNotSaved(project, "remarks of element project-1 holds the character " + name + ", which no file can keep");
    }

    @Test
    void aReferenceToWhatWasTakenOutIsNotSaved() throws Exception {
        Project project = FullProject.make();
        Circuit circuit = SlopewrightFactory.eINSTANCE.createCircuit();
        circuit.setName("Circuit A");
        circuit.getAids().add(SlopewrightFactory.eINSTANCE.createApproachAid());
        circuit.getAids().get(0).setName("PAPI left");
        project.getAerodrome().getCircuits().add(circuit);
        assertNotSaved(project, "Circuit A refers to PAPI left, which is no part of the project");
    }
}
