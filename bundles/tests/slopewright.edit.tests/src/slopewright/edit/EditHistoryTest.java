package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.model.Runway;
import slopewright.model.SlopewrightPackage.Literals;

/** The history: order, depth, dirty state and listeners. */
class EditHistoryTest {

    private final Sample sample = new Sample();
    private final Runway runway = sample.aerodrome.getRunways().get(0);

    private RecordedEdit width(double widthM) {
        return SetAttribute.of(runway, Literals.RUNWAY__WIDTH_M, widthM);
    }

    @Test
    void labelsFollowTheStack() {
        EditHistory history = new EditHistory();
        assertEquals("", history.undoLabel());
        history.undo();
        history.redo();
        history.perform(width(30));
        history.perform(SetAttribute.of(runway, Literals.RUNWAY__CODE_NUMBER, 3));
        assertEquals("Change code number", history.undoLabel());
        history.undo();
        assertEquals("Change width m", history.undoLabel());
        assertEquals("Change code number", history.redoLabel());
        history.perform(width(20));
        assertFalse(history.canRedo());
        assertEquals("", history.redoLabel());
    }

    @Test
    void anEditThatChangesNothingIsNotKept() {
        EditHistory history = new EditHistory();
        history.perform(width(45));
        assertFalse(history.canUndo());
        assertFalse(history.isDirty());
    }

    /** XML 1.0, 2.2: these are no characters, whoever pastes them; with one of them nothing of the project could be saved. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 0x0B, 0x1F, 0xD83D, 0xFFFE})
    void whatNoFileCanKeepIsRefusedAndLeavesEverythingAsItWas(int character) {
        EditHistory history = new EditHistory();
        history.perform(width(30));
        String name = String.format("U+%04X", character);
        RecordedEdit odd = Compound.of("Paste", List.of(width(40), SetAttribute.of(runway, Literals.NAMED__REMARKS,
                "odd " + (char) character + " one")));
        EditException refused = assertThrows(EditException.class, () -> history.perform(odd));
        assertTrue(refused.getMessage().contains(name), refused.getMessage());
        assertEquals(30.0, runway.getWidthM());
        assertEquals("Change width m", history.undoLabel());
        history.perform(SetAttribute.of(runway, Literals.NAMED__REMARKS, "tab\tand line\nand \uD83D\uDE00"));
        assertEquals("tab\tand line\nand \uD83D\uDE00", runway.getRemarks());
    }

    @Test
    void dirtyIsTrueToWhatWasSaved() {
        EditHistory history = new EditHistory();
        history.perform(width(30));
        history.markSaved();
        assertFalse(history.isDirty());
        history.undo();
        assertTrue(history.isDirty());
        history.redo();
        assertFalse(history.isDirty());
        history.undo();
        history.perform(width(20));
        assertTrue(history.isDirty());
        history.undo();
        assertTrue(history.isDirty(), "what was saved cannot be reached any more");
        history.markSaved();
        assertFalse(history.isDirty());
    }

    @Test
    void depthIsBoundedAndTheOldestGoesFirst() {
        EditHistory history = new EditHistory(3);
        for (int i = 1; i <= 5; i++) {
            history.perform(width(45 + i));
        }
        while (history.canUndo()) {
            history.undo();
        }
        assertEquals(47.0, runway.getWidthM(), "two of five edits are beyond the depth");
        assertTrue(history.isDirty(), "the beginning cannot be reached any more");
        assertThrows(IllegalArgumentException.class, () -> new EditHistory(0));
    }

    @Test
    void whatWasSavedStaysReachableAtTheDepth() {
        EditHistory history = new EditHistory(2);
        history.perform(width(46));
        history.markSaved();
        history.perform(width(47));
        history.perform(width(48));
        history.undo();
        history.undo();
        assertEquals(46.0, runway.getWidthM());
        assertFalse(history.canUndo());
        assertFalse(history.isDirty(), "this is what was saved");
        history.redo();
        assertTrue(history.isDirty());
    }

    @Test
    void listenersHearEveryChangeWithItsIds() {
        EditHistory history = new EditHistory();
        List<Set<String>> heard = new ArrayList<>();
        EditHistory.Listener listener = heard::add;
        history.addListener(listener);
        history.perform(width(30));
        history.undo();
        history.redo();
        history.markSaved();
        history.removeListener(listener);
        history.undo();
        Set<String> id = Set.of(runway.getId());
        assertEquals(List.of(id, id, id, Set.of()), heard);
    }

    @Test
    void anEditIsCarriedOutOnce() {
        RecordedEdit edit = width(30);
        assertThrows(IllegalStateException.class, edit::undo);
        edit.execute();
        assertThrows(IllegalStateException.class, edit::execute);
        assertThrows(IllegalStateException.class, edit::redo);
        edit.undo();
        assertThrows(IllegalStateException.class, edit::undo);
    }

    @Test
    void aThousandEditsKeepNoAdapterAndComeBack() {
        sample.withRow();
        String before = EditHarness.text(sample.project);
        EditHistory history = new EditHistory(1000);
        for (int i = 0; i < 1000; i++) {
            history.perform(MoveAid.by(sample.end.getAids().get(0), i % 2 == 0 ? 0.5 : -0.25, 0.001));
        }
        while (history.canUndo()) {
            history.undo();
        }
        assertEquals(before, EditHarness.text(sample.project));
        assertFalse(history.isDirty());
    }
}
