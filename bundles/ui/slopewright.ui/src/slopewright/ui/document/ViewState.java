package slopewright.ui.document;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;

/**
 * What the views of one document look at together: the selected elements, the chosen aid and the pilot's eye. It is not part of the
 * project: it is neither saved nor undone. Used on the user interface thread.
 */
public final class ViewState {

    private final Project project;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final List<Runnable> selectionListeners = new CopyOnWriteArrayList<>();
    private List<String> selectedIds = List.of();
    private Optional<PickedPoint> picked = Optional.empty();
    private Optional<String> chosenId = Optional.empty();
    private Optional<Viewpoint> viewpoint = Optional.empty();

    ViewState(Project project) {
        this.project = project;
    }

    /** Returns the chosen aid: the one chosen last that the project still has, else the first one, empty where there is none. */
    public Optional<ApproachAid> aid() {
        List<ApproachAid> aids = Projects.aids(project);
        return chosenId.flatMap(id -> aids.stream().filter(aid -> id.equals(aid.getId())).findFirst()).or(() -> aids.stream().findFirst());
    }

    /**
     * Chooses an aid; listeners are told where that is another one.
     *
     * @param aidId id of the aid
     */
    public void choose(String aidId) {
        if (!chosenId.equals(Optional.of(aidId))) {
            chosenId = Optional.of(aidId);
            tell();
        }
    }

    /** Returns the elements that were selected last, in whichever view, as far as the project still has them; else the project itself. */
    public List<Identified> selection() {
        List<Identified> found = selectedIds.stream().flatMap(id -> Ids.find(project, id).stream()).toList();
        return found.isEmpty() ? List.of(project) : found;
    }

    /**
     * Selects elements in all views; those that follow the selection are told where it is another one.
     *
     * @param elements the elements; none leaves what was selected
     */
    public void select(List<? extends Identified> elements) {
        List<String> ids = elements.stream().map(Identified::getId).filter(Objects::nonNull).distinct().toList();
        if (!ids.isEmpty() && !ids.equals(selectedIds)) {
            selectedIds = ids;
            picked = Optional.empty();
            selectionListeners.forEach(Runnable::run);
        }
    }

    /** Selects a survey block for the sake of one of its points; those that follow the selection are told. */
    public void pick(PickedPoint point) {
        if (!picked.equals(Optional.of(point))) {
            selectedIds = List.of(point.blockId());
            picked = Optional.of(point);
            selectionListeners.forEach(Runnable::run);
        }
    }

    /** Returns the point that was picked, as long as nothing else was selected. */
    public Optional<PickedPoint> picked() {
        return picked;
    }

    /** Adds what is run when other elements are selected. */
    public void addSelectionListener(Runnable listener) {
        selectionListeners.add(listener);
    }

    /** Removes such a listener. */
    public void removeSelectionListener(Runnable listener) {
        selectionListeners.remove(listener);
    }

    /** Returns the pilot's eye, empty before one was placed; a view then takes a place of its own on the approach. */
    public Optional<Viewpoint> viewpoint() {
        return viewpoint;
    }

    /**
     * Moves the pilot's eye; listeners are told where that is another place.
     *
     * @param place the new place
     */
    public void look(Viewpoint place) {
        if (!viewpoint.equals(Optional.of(place))) {
            viewpoint = Optional.of(place);
            tell();
        }
    }

    /** Adds what is run after each change. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** Removes a listener. */
    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}
