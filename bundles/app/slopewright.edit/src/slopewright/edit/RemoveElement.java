package slopewright.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;

/** Takes an element, with all it contains, out of its project, and every reference to it. */
public final class RemoveElement extends RecordedEdit {

    private record Use(EObject user, EStructuralFeature feature, EObject used) {
    }

    private final Identified element;
    private final EObject parent;
    private final List<Use> uses;

    private RemoveElement(String label, Identified element, List<Use> uses) {
        super(label);
        this.element = element;
        this.parent = element.eContainer();
        this.uses = uses;
    }

    /**
     * Removes an element.
     *
     * @param element an element of a project
     * @throws EditException where it is the project itself or part of none
     */
    public static RemoveElement of(Identified element) {
        return named("Remove " + Projects.label(element), element);
    }

    static RemoveElement named(String label, Identified element) {
        Project project = Projects.project(element).orElseThrow(() -> new EditException(Message.of("edit.remove-no-project")));
        if (element.eContainer() == null) {
            throw new EditException(Message.of("edit.remove-project"));
        }
        return new RemoveElement(label, element, uses(element, project));
    }

    private static List<Use> uses(Identified element, Project project) {
        Set<Identified> parts = new LinkedHashSet<>(Ids.elements(element));
        List<Use> uses = new ArrayList<>();
        for (Identified user : Ids.elements(project)) {
            if (!parts.contains(user)) {
                addUses(user, parts, uses);
            }
        }
        return uses;
    }

    private static void addUses(Identified user, Set<Identified> parts, List<Use> uses) {
        for (EReference reference : user.eClass().getEAllReferences()) {
            if (!reference.isContainment() && !reference.isContainer()) {
                Object value = user.eGet(reference);
                List<?> targets = value instanceof List<?> many ? many : value == null ? List.of() : List.of(value);
                targets.stream().filter(parts::contains).forEach(target -> uses.add(new Use(user, reference, (EObject) target)));
            }
        }
    }

    @Override
    protected Collection<? extends EObject> scope() {
        Set<EObject> changed = new LinkedHashSet<>();
        changed.add(parent);
        uses.forEach(use -> changed.add(use.user()));
        return changed;
    }

    @Override
    protected void apply() {
        uses.forEach(use -> EcoreUtil.remove(use.user(), use.feature(), use.used()));
        EcoreUtil.remove(element);
    }
}
