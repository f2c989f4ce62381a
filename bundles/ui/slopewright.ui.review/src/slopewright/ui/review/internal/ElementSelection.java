package slopewright.ui.review.internal;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.core.runtime.ListenerList;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;

import slopewright.checks.Outcome;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;

/** The elements of the selected findings as the selection of a view, so that the property sheet shows them. */
public final class ElementSelection implements ISelectionProvider {

    private final FindingsTree table;
    private final Supplier<Optional<Project>> project;
    private final ListenerList<ISelectionChangedListener> listeners = new ListenerList<>();

    /** Makes the selection of a table. */
    public ElementSelection(FindingsTree table, Supplier<Optional<Project>> project) {
        this.table = table;
        this.project = project;
        table.onSelection(() -> {
            SelectionChangedEvent mapped = new SelectionChangedEvent(this, getSelection());
            listeners.forEach(listener -> listener.selectionChanged(mapped));
        });
    }

    @Override
    public ISelection getSelection() {
        return new StructuredSelection(project.get().map(opened -> elements(table, opened)).orElse(List.of()));
    }

    /** Returns the elements of the selected rows. */
    public static List<Identified> elements(FindingsTree table, Project project) {
        List<String> ids = table.selected().stream().map(Outcome::elementId).filter(Objects::nonNull).distinct().toList();
        return ids.stream().flatMap(id -> Ids.find(project, id).stream()).toList();
    }

    @Override
    public void setSelection(ISelection selection) {
        // findings are selected in the table only
    }

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.add(listener);
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.remove(listener);
    }
}
