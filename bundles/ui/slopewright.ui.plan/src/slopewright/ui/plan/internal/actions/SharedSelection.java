package slopewright.ui.plan.internal.actions;

import java.util.List;
import java.util.Optional;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.jface.viewers.StructuredSelection;

import slopewright.model.Identified;
import slopewright.ui.document.ViewState;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanNavigator;

/**
 * The one selection of a document, as far as the plan shows it: what is selected here is what all views look at, and what is selected in
 * another view is selected here, where it stands or is part of what stands. The view of the plan stays where it is.
 */
public final class SharedSelection {

    /** Of more elements nobody sees which they are. */
    private static final int MOST_FOLLOWED = 60;

    private final PlanContext context;
    private final PlanNavigator navigator;
    private final Runnable follower = this::follow;
    private boolean isFollowing;

    /** Makes it for a plan, whose viewer is there. */
    public SharedSelection(PlanContext context, PlanNavigator navigator) {
        this.context = context;
        this.navigator = navigator;
        state().addSelectionListener(follower);
    }

    private ViewState state() {
        return context.document().viewState();
    }

    /** Tells all views what is selected in the plan. */
    public void tell() {
        PlanSelection selection = new PlanSelection(context);
        if (!isFollowing) {
            state().select(selection.elements());
        }
        selection.aid().ifPresent(aid -> state().choose(aid.getId()));
    }

    private void follow() {
        GraphicalViewer viewer = context.diagram().viewer();
        List<Identified> wanted = state().selection();
        if (isFollowing || viewer.getControl() == null || new PlanSelection(context).elements().equals(wanted)) {
            return;
        }
        List<EditPart> parts = wanted.stream().limit(MOST_FOLLOWED).map(element -> navigator.part(element.getId()))
                .flatMap(Optional::stream).map(EditPart.class::cast).distinct().toList();
        isFollowing = true;
        try {
            viewer.setSelection(new StructuredSelection(parts));
        } finally {
            isFollowing = false;
        }
    }

    /** Ends it. */
    public void dispose() {
        state().removeSelectionListener(follower);
    }
}
