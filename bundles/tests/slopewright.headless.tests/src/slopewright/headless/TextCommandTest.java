package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;

/** A project as text: every value on a line of its own, so that a change of one value changes one line. */
class TextCommandTest {

    private static final Path DEMO = Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale",
            "harrow-vale.slopewright");

    @TempDir
    private Path folder;

    private static List<String> text(Path file) {
        Words run = Words.run("text", file.toString());
        assertEquals(0, run.code(), run.err());
        return run.out().lines().toList();
    }

    @Test
    void oneChangedValueIsOneChangedLine() throws Exception {
        Project project = ProjectFile.load(DEMO);
        LightUnit unit = Projects.aids(project).get(0).getUnits().get(0);
        unit.setSettingDeg(3.456);
        Path changed = folder.resolve("changed.slopewright");
        Files.write(changed, ProjectFile.bytes(project));
        List<String> before = text(DEMO);
        List<String> after = text(changed);
        assertEquals(before.size(), after.size());
        List<String> different = new ArrayList<>();
        for (int i = 0; i < before.size(); i++) {
            if (!before.get(i).equals(after.get(i))) {
                different.add(after.get(i));
            }
        }
        assertEquals(List.of("    settingDeg = 3.456"), different);
        assertTrue(after.contains(Projects.path(unit) + " [" + unit.getId() + "]"));
    }

    /** What git hands over is a temporary file of any name. */
    @Test
    void theNameOfTheFileDoesNotMatter() throws Exception {
        Path other = folder.resolve("a1b2c3_harrow");
        Files.copy(DEMO, other);
        assertEquals(text(DEMO), text(other));
    }

    @Test
    void aFileThatIsNoProjectIsRefused() throws Exception {
        Path other = folder.resolve("notes.slopewright");
        Files.write(other, "no project\n".getBytes(StandardCharsets.UTF_8));
        Words run = Words.run("text", other.toString());
        assertEquals(3, run.code());
        assertEquals("", run.out());
        assertTrue(run.err().contains("notes.slopewright"), run.err());
    }
}
