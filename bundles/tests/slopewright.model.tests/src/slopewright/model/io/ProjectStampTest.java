package slopewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;

/** The stamp names the file that other programs hash: `printf '' | sha256sum` and FIPS 180-4 give the same for the same bytes. */
class ProjectStampTest {

    @TempDir
    private Path folder;

    private Project saved() throws Exception {
        Project project = SlopewrightFactory.eINSTANCE.createProject();
        project.setName("Stamped");
        ProjectFile.save(project, folder.resolve("stamped.slopewright"));
        return project;
    }

    private static String sha256sum(Path file) throws Exception {
        Process process = new ProcessBuilder("sha256sum", file.toString()).start();
        try (InputStream said = process.getInputStream()) {
            String digits = new String(said.readAllBytes(), StandardCharsets.UTF_8).substring(0, 64);
            assertEquals(0, process.waitFor());
            return digits;
        }
    }

    @Test
    void aSavedProjectHasTheHashOfItsFile() throws Exception {
        Project project = saved();
        ProjectStamp stamp = ProjectStamp.of(project).orElseThrow();
        assertTrue(stamp.isSaved());
        assertEquals(sha256sum(folder.resolve("stamped.slopewright")), stamp.sha256());
        assertEquals(stamp.sha256().substring(0, 12), stamp.brief());
    }

    @Test
    void aChangeIsNotSavedAndHasAnotherHash() throws Exception {
        Project project = saved();
        String before = ProjectStamp.of(project).orElseThrow().sha256();
        project.setName("Changed");
        ProjectStamp stamp = ProjectStamp.of(project).orElseThrow();
        assertFalse(stamp.isSaved());
        assertNotEquals(before, stamp.sha256());
        ProjectFile.save(project, folder.resolve("stamped.slopewright"));
        assertTrue(ProjectStamp.of(project).orElseThrow().isSaved());
        assertEquals(stamp.sha256(), ProjectStamp.of(project).orElseThrow().sha256());
    }

    /** A file that a person arranged by hand holds the same project: its own hash counts, for that is the file that was handed in. */
    @Test
    void aFileInAnotherArrangementIsSaved() throws Exception {
        saved();
        Path file = folder.resolve("stamped.slopewright");
        Files.writeString(file, Files.readString(file).replace("?>", "?>\n\n"));
        ProjectStamp stamp = ProjectStamp.of(ProjectFile.load(file)).orElseThrow();
        assertTrue(stamp.isSaved());
        assertEquals(sha256sum(file), stamp.sha256());
    }

    @Test
    void aProjectWithoutFileIsNotSaved() {
        Project project = SlopewrightFactory.eINSTANCE.createProject();
        assertFalse(ProjectStamp.of(project).orElseThrow().isSaved());
        project.setName("a\u0001b");
        assertTrue(ProjectStamp.of(project).isEmpty());
    }
}
