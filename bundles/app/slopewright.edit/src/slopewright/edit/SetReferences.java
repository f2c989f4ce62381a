package slopewright.edit;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

import slopewright.messages.Message;

/** Changes which elements an element refers to, such as the aeroplane groups of a runway end or the equipment of an aid. */
public final class SetReferences extends RecordedEdit {

    private final EObject element;
    private final EReference reference;
    private final List<EObject> targets;

    private SetReferences(EObject element, EReference reference, List<EObject> targets) {
        super("Change " + reference.getName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT));
        this.element = element;
        this.reference = reference;
        this.targets = targets;
    }

    /**
     * Sets a reference.
     *
     * @param element   the element
     * @param reference one of its references that contains nothing
     * @param targets   what it refers to from now on; of a single reference none or one
     * @throws EditException where the element has no such reference or a target does not fit; the message says so
     */
    public static SetReferences of(EObject element, EReference reference, Collection<? extends EObject> targets) {
        if (!element.eClass().getEAllReferences().contains(reference) || reference.isContainment()) {
            throw new EditException(Message.said("edit.no-reference", element.eClass().getName(), reference.getName()));
        }
        if (!reference.isMany() && targets.size() > 1) {
            throw new EditException(Message.said("edit.one-element", reference.getName(), targets.size()));
        }
        if (!targets.stream().allMatch(reference.getEReferenceType()::isInstance)) {
            String type = reference.getEReferenceType().getName();
            throw new EditException(Message.said("edit.other-type", reference.getName(), type));
        }
        return new SetReferences(element, reference, List.copyOf(targets));
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return List.of(element);
    }

    @Override
    protected void apply() {
        if (!reference.isMany()) {
            element.eSet(reference, targets.isEmpty() ? null : targets.get(0));
            return;
        }
        @SuppressWarnings("unchecked")
        List<EObject> present = (List<EObject>) element.eGet(reference);
        if (!present.equals(targets)) {
            present.clear();
            present.addAll(targets);
        }
    }
}
