package slopewright.edit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;

import slopewright.model.Identified;

/**
 * The edits of one project that can be taken back and made again, and whether the project differs from what was saved. Not safe for
 * several threads; the user interface uses it from its own.
 */
public final class EditHistory {

    /** How many edits are kept where nothing else is said. */
    public static final int USUAL_DEPTH = 500;

    /** Is told what each edit, undo and redo changed. */
    public interface Listener {

        /**
         * Called after the model has changed, and with no ids after a save.
         *
         * @param elementIds ids of the elements that were changed, added or removed
         */
        void changed(Set<String> elementIds);

        /**
         * Called as well, just before, with the elements themselves; those that were removed are in no project now.
         *
         * @param elements the elements, none after a save
         */
        default void touched(List<Identified> elements) {
            // of no interest unless overridden
        }
    }

    private final int depth;
    private final Deque<RecordedEdit> done = new ArrayDeque<>();
    private final Deque<RecordedEdit> undone = new ArrayDeque<>();
    private final List<Listener> listeners = new CopyOnWriteArrayList<>();
    private RecordedEdit saved;
    private boolean savedIsReachable = true;

    /** Makes an empty history of the usual depth. */
    public EditHistory() {
        this(USUAL_DEPTH);
    }

    /**
     * Makes an empty history.
     *
     * @param depth how many edits are kept, at least one; older ones cannot be undone
     */
    public EditHistory(int depth) {
        if (depth < 1) {
            throw new IllegalArgumentException("a history keeps at least one edit, not " + depth);
        }
        this.depth = depth;
    }

    /**
     * Carries an edit out and keeps it. An edit that changes nothing is not kept.
     *
     * @throws RuntimeException what the edit threw; then neither model nor history have changed
     */
    public void perform(RecordedEdit edit) {
        edit.execute();
        if (edit.touched().isEmpty()) {
            return;
        }
        if (undone.contains(saved)) {
            savedIsReachable = false;
        }
        undone.clear();
        done.push(edit);
        while (done.size() > depth) {
            drop(done.removeLast());
        }
        tell(edit);
    }

    /** Lets the oldest edit go: what it led to is now as far back as undo reaches. */
    private void drop(RecordedEdit oldest) {
        if (saved == null) {
            savedIsReachable = false;
        } else if (saved == oldest) {
            saved = null;
        }
    }

    /** Returns whether there is an edit to take back. */
    public boolean canUndo() {
        return !done.isEmpty();
    }

    /** Takes the last edit back; does nothing where there is none. */
    public void undo() {
        if (canUndo()) {
            RecordedEdit edit = done.peek();
            edit.undo();
            undone.push(done.pop());
            tell(edit);
        }
    }

    /** Returns whether there is an edit to make again. */
    public boolean canRedo() {
        return !undone.isEmpty();
    }

    /** Makes the edit again that was taken back last; does nothing where there is none. */
    public void redo() {
        if (canRedo()) {
            RecordedEdit edit = undone.peek();
            edit.redo();
            done.push(undone.pop());
            tell(edit);
        }
    }

    /** Returns what the next undo takes back, empty where there is nothing. */
    public String undoLabel() {
        return canUndo() ? done.peek().label() : "";
    }

    /** Returns what the next redo makes again, empty where there is nothing. */
    public String redoLabel() {
        return canRedo() ? undone.peek().label() : "";
    }

    /** Remembers that the project as it is now was saved. */
    public void markSaved() {
        saved = done.peek();
        savedIsReachable = true;
        listeners.forEach(listener -> {
            listener.touched(List.of());
            listener.changed(Set.of());
        });
    }

    /** Returns whether the project differs from what was saved, or from what it began with where nothing was. */
    public boolean isDirty() {
        return !savedIsReachable || done.peek() != saved;
    }

    /** Adds a listener; it is told on the thread of the edit. */
    public void addListener(Listener listener) {
        listeners.add(listener);
    }

    /** Removes a listener. */
    public void removeListener(Listener listener) {
        listeners.remove(listener);
    }

    private void tell(RecordedEdit edit) {
        listeners.forEach(listener -> {
            listener.touched(edit.touchedElements());
            listener.changed(edit.touched());
        });
    }
}
