package slopewright.ui.plan.internal.outline;

import java.util.List;
import java.util.Set;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.views.contentoutline.ContentOutlinePage;

import slopewright.checks.CheckResult;
import slopewright.model.Identified;
import slopewright.ui.AccessibleName;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ElementRevealer;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanMenu;

/** The outline of a plan: its elements as a tree with their findings. What is selected in one is selected in the other. */
public final class PlanOutline extends ContentOutlinePage {

    private static final int LEVELS = 4;

    private final PlanContext context;
    private final PlanMenu menu;
    private final ActionRegistry registry;
    private final ElementRevealer revealer;
    private final OutlineContent content = new OutlineContent();
    private final ISelectionChangedListener planListener = this::selectedInPlan;
    private OutlineLabels labels;
    private boolean following;
    private final DocumentListener listener = new DocumentListener() {

        @Override
        public void changed(Set<String> elementIds) {
            getTreeViewer().refresh();
        }

        @Override
        public void checked(CheckResult result) {
            labels.take(context.project(), result);
            getTreeViewer().refresh();
        }

        @Override
        public void unchecked() {
            labels.forget();
            getTreeViewer().refresh();
        }
    };

    /**
     * Makes the outline of a plan.
     *
     * @param context  the context
     * @param menu     what the context menu offers
     * @param registry the common actions of the editor
     * @param revealer selects elements in the plan
     */
    public PlanOutline(PlanContext context, PlanMenu menu, ActionRegistry registry, ElementRevealer revealer) {
        this.context = context;
        this.menu = menu;
        this.registry = registry;
        this.revealer = revealer;
    }

    private ProjectDocument document() {
        return context.document();
    }

    @Override
    public void createControl(Composite parent) {
        super.createControl(parent);
        TreeViewer viewer = getTreeViewer();
        labels = new OutlineLabels(new LocalResourceManager(JFaceResources.getResources(), viewer.getControl()));
        viewer.setUseHashlookup(true);
        viewer.setContentProvider(content);
        viewer.setLabelProvider(new DelegatingStyledCellLabelProvider(labels));
        document().lastResult().ifPresent(result -> labels.take(context.project(), result));
        viewer.setInput(List.of(context.project()));
        viewer.expandToLevel(LEVELS);
        collapseGroups();
        AccessibleName.give(viewer.getControl(), Messages.get("outline.name"));
        viewer.addSelectionChangedListener(this::selectedHere);
        context.diagram().viewer().addSelectionChangedListener(planListener);
        document().addListener(listener);
        MenuManager popup = new MenuManager();
        popup.setRemoveAllWhenShown(true);
        popup.addMenuListener(menu::buildContextMenu);
        viewer.getControl().setMenu(popup.createContextMenu(viewer.getControl()));
        getSite().getActionBars().setGlobalActionHandler(ActionFactory.DELETE.getId(), registry.getAction(ActionFactory.DELETE.getId()));
    }

    private void collapseGroups() {
        if (context.project().getAerodrome() != null) {
            for (OutlineGroup.Kind kind : OutlineGroup.Kind.values()) {
                getTreeViewer().setExpandedState(new OutlineGroup(kind, context.project().getAerodrome()), false);
            }
        }
    }

    /** Returns the tree. */
    public Tree tree() {
        return getTreeViewer().getTree();
    }

    private void selectedHere(SelectionChangedEvent event) {
        Object node = event.getStructuredSelection().getFirstElement();
        if (!following && node instanceof Identified element) {
            following = true;
            try {
                revealer.reveal(element.getId());
            } finally {
                following = false;
            }
        }
    }

    private void selectedInPlan(SelectionChangedEvent event) {
        ISelection selection = event.getSelection();
        boolean isSingle = selection instanceof IStructuredSelection parts && parts.size() == 1;
        Object part = isSingle ? ((IStructuredSelection) selection).getFirstElement() : null;
        if (!following && part instanceof EditPart shown && shown.getModel() instanceof Identified element) {
            following = true;
            try {
                getTreeViewer().setSelection(new StructuredSelection(content.shownFor(element)), true);
            } finally {
                following = false;
            }
        }
    }

    @Override
    public void dispose() {
        context.diagram().viewer().removeSelectionChangedListener(planListener);
        document().removeListener(listener);
        super.dispose();
    }
}
