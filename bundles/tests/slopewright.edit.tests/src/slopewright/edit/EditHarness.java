package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;

/** Carries an edit out, takes it back and carries it out again, and compares the bytes of the project file each time. */
final class EditHarness {

    private EditHarness() {
    }

    static String text(Project project) {
        return new String(ProjectFile.bytes(project), StandardCharsets.UTF_8);
    }

    /** Runs the cycle twice through a history and leaves the edit carried out. */
    static void cycle(Project project, RecordedEdit edit, Runnable verify) {
        String before = text(project);
        EditHistory history = new EditHistory();
        ProjectMirror mirror = new ProjectMirror(project);
        history.addListener(new Follower(project, mirror));
        history.perform(edit);
        String after = text(project);
        assertNotEquals(before, after, "the edit changed nothing");
        verify.run();
        assertTrue(history.isDirty());
        for (int round = 0; round < 2; round++) {
            history.undo();
            assertEquals(before, text(project), "undo");
            assertEquals(before, text(mirror.copy()), "a copy that follows undo");
            assertFalse(history.isDirty());
            history.redo();
            assertEquals(after, text(project), "redo");
            assertEquals(after, text(mirror.copy()), "a copy that follows redo");
            verify.run();
        }
        assertNoAdapters(project);
    }

    /** Takes every edit over into a copy. */
    private record Follower(Project project, ProjectMirror mirror) implements EditHistory.Listener {

        @Override
        public void changed(Set<String> elementIds) {
            assertEquals(text(project), text(mirror.copy()), "a copy that follows the edit");
        }

        @Override
        public void touched(List<Identified> elements) {
            mirror.follow(ProjectMirror.states(project, elements));
        }
    }

    private static void assertNoAdapters(Project project) {
        List<String> watched = Ids.elements(project).stream().filter(element -> !element.eAdapters().isEmpty())
                .map(element -> element.getId()).toList();
        assertEquals(List.of(), watched, "a recorder is still attached");
    }

    /** Runs an edit that must fail and asserts that nothing changed. */
    static void fails(Project project, Class<? extends RuntimeException> type, RecordedEdit edit, String word) {
        String before = text(project);
        EditHistory history = new EditHistory();
        RuntimeException thrown = org.junit.jupiter.api.Assertions.assertThrows(type, () -> history.perform(edit));
        assertTrue(thrown.getMessage().contains(word), thrown.getMessage());
        assertEquals(before, text(project), "a failed edit left something behind");
        assertFalse(history.canUndo());
        assertFalse(history.isDirty());
    }

    static Set<String> ids(Project project) {
        Set<String> ids = new LinkedHashSet<>();
        Ids.elements(project).forEach(element -> ids.add(element.getId()));
        return ids;
    }
}
