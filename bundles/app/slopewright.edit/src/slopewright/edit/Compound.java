package slopewright.edit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

import org.eclipse.emf.ecore.EObject;

import slopewright.model.Identified;

/** Several edits that are one for the user. Each sees what those before it did; where one fails, all are taken back. */
public final class Compound extends RecordedEdit {

    private final List<Supplier<RecordedEdit>> makers;
    private List<RecordedEdit> parts = List.of();

    private Compound(String label, List<Supplier<RecordedEdit>> makers) {
        super(label);
        this.makers = makers;
    }

    /**
     * Joins edits.
     *
     * @param label what the user did
     * @param parts the edits in the order in which they are carried out
     */
    public static Compound of(String label, List<? extends RecordedEdit> parts) {
        return new Compound(label, parts.stream().map(part -> (Supplier<RecordedEdit>) () -> part).toList());
    }

    /**
     * Joins edits that are worked out one after the other, each from what those before it left.
     *
     * @param label  what the user did
     * @param makers make the edits, each called once those before it were carried out
     */
    public static Compound inTurn(String label, List<Supplier<RecordedEdit>> makers) {
        return new Compound(label, List.copyOf(makers));
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return List.of();
    }

    @Override
    protected void apply() {
        Deque<RecordedEdit> finished = new ArrayDeque<>();
        try {
            for (Supplier<RecordedEdit> maker : makers) {
                RecordedEdit part = maker.get();
                part.execute();
                finished.push(part);
            }
            List<RecordedEdit> done = new ArrayList<>(finished);
            Collections.reverse(done);
            parts = List.copyOf(done);
        } catch (RuntimeException e) {
            finished.forEach(RecordedEdit::undo);
            throw e;
        }
    }

    @Override
    public Set<String> touched() {
        Set<String> all = new LinkedHashSet<>();
        parts.forEach(part -> all.addAll(part.touched()));
        return Set.copyOf(all);
    }

    @Override
    public List<Identified> touchedElements() {
        Set<Identified> all = new LinkedHashSet<>();
        parts.forEach(part -> all.addAll(part.touchedElements()));
        return List.copyOf(all);
    }

    @Override
    public void undo() {
        super.undo();
        for (int i = parts.size() - 1; i >= 0; i--) {
            parts.get(i).undo();
        }
    }

    @Override
    public void redo() {
        super.redo();
        parts.forEach(RecordedEdit::redo);
    }
}
