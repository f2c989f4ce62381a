package slopewright.ui.plan.internal.actions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.action.IAction;
import org.eclipse.ui.actions.ActionFactory;

import slopewright.edit.Compound;
import slopewright.edit.RecordedEdit;
import slopewright.edit.RemoveElement;
import slopewright.model.Identified;
import slopewright.model.util.Ids;
import slopewright.ui.elements.CopiedElements;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;

/**
 * Cut, copy, paste and duplicate in a plan, from one plan to another too. What is pasted stands where it stood, under a name of its own: in
 * the element that is selected where that can hold it, else in the one it came from, else in the first one that can.
 */
public final class PlanClipboard {

    private final PlanContext context;

    /** Makes it for a plan. */
    public PlanClipboard(PlanContext context) {
        this.context = context;
    }

    /** Returns the actions of the common menus and keys. */
    public List<IAction> actions() {
        return List.of(CommonAction.of(ActionFactory.CUT, () -> {
            copy();
            remove();
        }), CommonAction.of(ActionFactory.COPY, this::copy), CommonAction.of(ActionFactory.PASTE, this::paste));
    }

    /** Returns the selected elements that something holds and that are not in another selected one. */
    private List<Identified> chosen() {
        List<Identified> elements = new PlanSelection(context).elements();
        return elements.stream().filter(element -> element.eContainer() != null && element.eContainmentFeature().isMany())
                .filter(element -> elements.stream().noneMatch(other -> other != element && EcoreUtil.isAncestor(other, element))).toList();
    }

    /** Returns whether something is selected that can be copied. */
    boolean canCopy() {
        return !chosen().isEmpty();
    }

    private void copy() {
        List<Identified> elements = chosen();
        if (!elements.isEmpty()) {
            CopiedElements.of(elements).copy("");
        }
    }

    private void remove() {
        List<RecordedEdit> edits = chosen().stream().<RecordedEdit>map(RemoveElement::of).toList();
        if (!edits.isEmpty()) {
            context.document().history().perform(Compound.of(Messages.get("edit.cut"), edits));
        }
    }

    private void paste() {
        CopiedElements.onClipboard().ifPresent(copied -> add(copied.kept(), Messages.get("edit.paste")));
    }

    /** Puts a copy of what is selected beside it. */
    void duplicate() {
        add(CopiedElements.of(chosen()).kept(), Messages.get("edit.duplicate"));
    }

    private void add(List<CopiedElements.Kept> kept, String label) {
        List<RecordedEdit> edits = new ArrayList<>();
        for (CopiedElements.Kept one : kept) {
            holder(one).ifPresent(holder -> edits.add(one.into(holder, name -> Messages.get("paste.name", name))));
        }
        if (edits.isEmpty()) {
            context.notice(kept.isEmpty() ? "" : Messages.get("paste.nowhere"));
        } else {
            context.document().history().perform(Compound.of(label, edits));
        }
    }

    private Optional<EObject> holder(CopiedElements.Kept one) {
        List<Identified> candidates = new ArrayList<>(new PlanSelection(context).elements());
        Ids.find(context.project(), one.holderId()).ifPresent(candidates::add);
        candidates.addAll(Ids.elements(context.project()));
        return candidates.stream().filter(candidate -> one.reference().getEContainingClass().isSuperTypeOf(candidate.eClass()))
                .map(EObject.class::cast).findFirst();
    }
}
