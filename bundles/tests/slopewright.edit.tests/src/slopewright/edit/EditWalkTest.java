package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.siting.SitingException;

/**
 * A long walk of random edits with undo and redo between them. At every stop the project is, byte for byte, what the edits that were kept
 * give when they are made on the beginning, never undone; so are the copy that follows each edit and the file that is written and read
 * back. An edit that cannot be done leaves nothing behind, and a long walk takes no more memory than a short one. The property
 * {@code slopewright.walk.edits} makes it longer.
 */
class EditWalkTest {

    private static final int EDITS = Integer.getInteger("slopewright.walk.edits", 2000);
    private static final int DEPTH = 200;
    private static final int STOP = 250;
    private static final long GROWTH = 16L << 20;
    private static final Set<String> KINDS = Set.of("AddAid", "AddChild", "AlignUnits", "Compound", "CopyAid", "DistributeUnits",
            "KeepReadBack", "MirrorAid", "MovePlaces", "MoveThreshold", "MoveUnits", "RemoveElement", "ReplaceContent", "ResolveAid",
            "SetAttribute", "SetReferences", "SetRuleSettings", "undo", "redo", "refused");
    private static final long SEED = 20261130;

    private final Project project = new Sample().withProfile().withRow().withCircuit().project;
    private final Project behind = EcoreUtil.copy(project);
    private final EditHistory history = new EditHistory(DEPTH);
    private final ProjectMirror mirror = new ProjectMirror(project);
    private final Deque<Long> kept = new ArrayDeque<>();
    private final Deque<Long> takenBack = new ArrayDeque<>();
    private final Random random = new Random(SEED);
    private final Map<String, Integer> counts = new TreeMap<>();
    private int carriedOut;

    @Test
    void theProjectIsWhatTheKeptEditsGive(TestReporter report) {
        history.addListener(new EditHistory.Listener() {

            @Override
            public void changed(Set<String> elementIds) {
                // told of the elements themselves below
            }

            @Override
            public void touched(List<Identified> elements) {
                mirror.follow(ProjectMirror.states(project, elements));
            }
        });
        long early = 0;
        for (int step = 1; carriedOut < EDITS; step++) {
            walk();
            if (step % STOP == 0) {
                stop();
            }
            if (early == 0 && carriedOut >= EDITS / 5) {
                early = used();
            }
        }
        stop();
        thereAndBack();
        long late = used();
        report.publishEntry(counts + ", KiB in use after a fifth " + early / 1024 + ", at the end " + late / 1024);
        Set<String> missing = new TreeSet<>(KINDS);
        missing.removeAll(counts.keySet());
        assertEquals(Set.of(), missing, "was never carried out; what was, and how often each: " + counts);
        assertTrue(late < early + GROWTH, "bytes in use after a fifth of the walk " + early + ", at its end " + late);
    }

    private void walk() {
        int choice = random.nextInt(10);
        if (choice < 3 && !kept.isEmpty() && history.canUndo()) {
            for (int times = 1 + random.nextInt(random.nextInt(20) == 0 ? DEPTH : 4); times > 0 && history.canUndo(); times--) {
                history.undo();
                takenBack.push(kept.removeLast());
                count("undo");
            }
        } else if (choice < 5 && history.canRedo()) {
            for (int times = 1 + random.nextInt(4); times > 0 && history.canRedo(); times--) {
                history.redo();
                kept.addLast(takenBack.pop());
                count("redo");
            }
        } else {
            perform(random.nextLong());
        }
    }

    private void perform(long seed) {
        boolean looked = random.nextInt(20) == 0;
        String before = looked ? EditHarness.text(project) : null;
        RecordedEdit edit;
        try {
            edit = RandomEdits.draw(project, seed);
            history.perform(edit);
        } catch (EditException | SitingException | IllegalArgumentException e) {
            count("refused");
            if (looked) {
                assertEquals(before, EditHarness.text(project), () -> "left behind by the refused edit of seed " + seed + ": " + e);
            }
            return;
        }
        if (!edit.touched().isEmpty()) {
            carriedOut++;
            count(edit.getClass().getSimpleName());
            takenBack.clear();
            kept.addLast(seed);
            if (kept.size() > DEPTH) {
                RandomEdits.draw(behind, kept.removeFirst()).execute();
            }
        }
    }

    /** Takes back all that can be taken back, makes it again, and must be where it was. */
    private void thereAndBack() {
        String there = EditHarness.text(project);
        for (int i = 0; i < kept.size(); i++) {
            history.undo();
        }
        assertEquals(EditHarness.text(behind), EditHarness.text(project), "everything undone");
        for (int i = 0; i < kept.size(); i++) {
            history.redo();
        }
        assertEquals(there, EditHarness.text(project), "everything made again");
    }

    /** Compares the project with a copy of the beginning on which the edits that were kept are made, none of them undone. */
    private void stop() {
        Project again = EcoreUtil.copy(behind);
        for (long seed : kept) {
            RandomEdits.draw(again, seed).execute();
        }
        String text = EditHarness.text(project);
        assertEquals(text, EditHarness.text(again), () -> "made again after " + carriedOut + " edits");
        assertEquals(text, EditHarness.text(mirror.copy()), () -> "the copy that follows, after " + carriedOut + " edits");
        assertEquals(text, EditHarness.text(readBack()), () -> "written and read back after " + carriedOut + " edits");
    }

    private Project readBack() {
        try {
            return ProjectFile.load(new ByteArrayInputStream(ProjectFile.bytes(project)), "walk.slopewright");
        } catch (ProjectFileException e) {
            throw new AssertionError("what was written after " + carriedOut + " edits is refused", e);
        }
    }

    private void count(String what) {
        counts.merge(what, 1, Integer::sum);
    }

    private static long used() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
