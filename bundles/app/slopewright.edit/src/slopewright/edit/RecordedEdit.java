package slopewright.edit;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.change.ChangeDescription;

import slopewright.edit.internal.ElementRecorder;
import slopewright.model.Identified;
import slopewright.model.util.KeptValues;

/**
 * One intention of the user, carried out on the model so that it can be taken back and made again. Only the elements that the edit
 * names are recorded, never the whole tree, so an edit of a unit costs the same on a small site and on a large one. An edit that
 * throws leaves the model as it was.
 */
public abstract class RecordedEdit {

    private final String label;
    private ChangeDescription change;
    private boolean done;
    private Set<String> touched = Set.of();
    private List<Identified> elements = List.of();

    /**
     * Names the edit.
     *
     * @param label what the user did, as it stands after "Undo": "Move aid"
     */
    protected RecordedEdit(String label) {
        this.label = Objects.requireNonNull(label);
    }

    /** Returns the elements that {@link #apply()} changes directly: attributes set, references changed, children added or removed. */
    protected abstract Collection<? extends EObject> scope();

    /**
     * Changes the model.
     *
     * @throws EditException where it cannot be done; what was changed up to then is taken back
     */
    protected abstract void apply();

    /** Returns what the user did, as it stands after "Undo". */
    public String label() {
        return label;
    }

    /** Returns the ids of the elements that were changed, added or removed; empty before the first execution. */
    public Set<String> touched() {
        return touched;
    }

    /**
     * Carries the edit out, once.
     *
     * @throws IllegalStateException where it was carried out already
     * @throws EditException         where it would leave a value that no project file can keep; then the model is as it was
     * @throws RuntimeException      what {@link #apply()} threw; then the model is as it was
     */
    public void execute() {
        if (change != null) {
            throw new IllegalStateException("the edit '" + label + "' was carried out already");
        }
        ElementRecorder recorder = new ElementRecorder(scope());
        try {
            apply();
            recorder.touched().forEach(RecordedEdit::refuseUnkeepable);
            change = recorder.endRecording();
        } catch (RuntimeException e) {
            recorder.endRecording().apply();
            throw e;
        } finally {
            recorder.dispose();
        }
        elements = List.copyOf(recorder.touched());
        touched = ids(elements);
        done = true;
    }

    /** What cannot be saved would keep all other work from being saved with it. */
    private static void refuseUnkeepable(Identified element) {
        KeptValues.obstacle(element).ifPresent(reason -> {
            throw new EditException(reason);
        });
    }

    /**
     * Returns the elements that were changed, added or removed; empty before the first execution. They stay the same objects when the
     * edit is undone and made again.
     */
    public List<Identified> touchedElements() {
        return elements;
    }

    private static Set<String> ids(Collection<Identified> elements) {
        Set<String> ids = new LinkedHashSet<>();
        elements.stream().map(Identified::getId).filter(Objects::nonNull).forEach(ids::add);
        return Set.copyOf(ids);
    }

    /**
     * Takes the edit back.
     *
     * @throws IllegalStateException where it is not in effect
     */
    public void undo() {
        reverse(true, "undone");
    }

    /**
     * Carries the edit out again.
     *
     * @throws IllegalStateException where it was not taken back
     */
    public void redo() {
        reverse(false, "redone");
    }

    private void reverse(boolean wasDone, String word) {
        if (change == null || done != wasDone) {
            throw new IllegalStateException("the edit '" + label + "' cannot be " + word + " now");
        }
        change.applyAndReverse();
        done = !wasDone;
    }
}
