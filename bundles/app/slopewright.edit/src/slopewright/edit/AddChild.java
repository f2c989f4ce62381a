package slopewright.edit;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;

/** Puts a new element into another one; it and all it contains get ids. */
public final class AddChild extends RecordedEdit {

    private final EObject parent;
    private final EReference reference;
    private final Identified child;

    private AddChild(String label, EObject parent, EReference reference, Identified child) {
        super(label);
        this.parent = parent;
        this.reference = reference;
        this.child = child;
    }

    /**
     * Adds a child at the end of a list, or in the place of a single one.
     *
     * @param parent    an element of a project
     * @param reference where in the parent it goes
     * @param child     an element that is nowhere yet
     * @throws EditException where the parent has no such place, the child does not fit, or it is somewhere already
     */
    public static AddChild of(EObject parent, EReference reference, Identified child) {
        return named("Add " + child.eClass().getName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT), parent,
                reference, child);
    }

    static AddChild named(String label, EObject parent, EReference reference, Identified child) {
        if (!parent.eClass().getEAllReferences().contains(reference) || !reference.isContainment()
                || !reference.getEReferenceType().isInstance(child)) {
            throw new EditException(Message.said("edit.no-part", child.eClass().getName(), reference.getName(), parent.eClass().getName()));
        }
        if (child.eContainer() != null) {
            throw new EditException(Message.said("edit.placed", Projects.label(child)));
        }
        return new AddChild(label, parent, reference, child);
    }

    /** Returns the element that is added. */
    public Identified child() {
        return child;
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return List.of(parent);
    }

    @Override
    protected void apply() {
        Project project = Projects.project(parent).orElseThrow(() -> new EditException(Message.of("edit.parent-no-project")));
        Ids.assign(child, project);
        if (reference.isMany()) {
            @SuppressWarnings("unchecked")
            List<EObject> children = (List<EObject>) parent.eGet(reference);
            children.add(child);
        } else {
            parent.eSet(reference, child);
        }
    }
}
