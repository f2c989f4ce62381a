package slopewright.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;

/**
 * A copy of a project that follows its edits without being copied again: after an edit only the elements that it touched are taken over.
 * The states of elements are read where the project lives ({@link #states}) and put into the copy where the copy lives
 * ({@link #follow}), which may be another thread. Elements are told by their ids, which every element has.
 */
public final class ProjectMirror {

    /**
     * One element as it was when it was read: what it holds itself, and the ids of what it contains and refers to.
     *
     * @param id         its id
     * @param type       its class
     * @param attributes values of its attributes, unset ones left out
     * @param links      ids of the elements it contains or refers to, by reference, in their order
     */
    public record State(String id, EClass type, Map<EAttribute, Object> attributes, Map<EReference, List<String>> links) {
    }

    private final Project copy;
    private final Map<String, EObject> byId = new HashMap<>();

    /** Copies a project. */
    public ProjectMirror(Project project) {
        Ids.assign(project);
        copy = ProjectFile.copy(project);
        Ids.elements(copy).forEach(element -> byId.put(element.getId(), element));
    }

    /** Returns the copy; it is the same object always. */
    public Project copy() {
        return copy;
    }

    /**
     * Reads elements that an edit has touched; those that are not in the project any more are passed over, for what held them is among
     * them too.
     *
     * @param project the project
     * @param touched the elements, see {@link RecordedEdit#touchedElements()}
     * @return their states, which no later change of the project changes
     */
    public static List<State> states(Project project, Collection<? extends Identified> touched) {
        List<State> states = new ArrayList<>();
        for (Identified element : touched) {
            if (EcoreUtil.isAncestor(project, element)) {
                states.add(state(element));
            }
        }
        return List.copyOf(states);
    }

    private static State state(Identified element) {
        Map<EAttribute, Object> attributes = new LinkedHashMap<>();
        for (EAttribute attribute : element.eClass().getEAllAttributes()) {
            if (element.eIsSet(attribute)) {
                attributes.put(attribute, element.eGet(attribute));
            }
        }
        Map<EReference, List<String>> links = new LinkedHashMap<>();
        for (EReference reference : element.eClass().getEAllReferences()) {
            if (!reference.isContainer() && !reference.isDerived()) {
                links.put(reference, targets(element, reference).stream().map(target -> ((Identified) target).getId()).toList());
            }
        }
        return new State(element.getId(), element.eClass(), attributes, links);
    }

    @SuppressWarnings("unchecked")
    private static List<EObject> targets(EObject element, EReference reference) {
        Object value = element.eGet(reference);
        return reference.isMany() ? (List<EObject>) value : value == null ? List.of() : List.of((EObject) value);
    }

    /**
     * Brings the copy to the states of some elements.
     *
     * @param states all states of one or several edits, in their order
     * @throws IllegalStateException where an element is referred to that neither the copy nor the states hold
     */
    public void follow(List<State> states) {
        Map<String, State> latest = new LinkedHashMap<>();
        states.forEach(state -> {
            latest.remove(state.id());
            latest.put(state.id(), state);
        });
        for (State state : latest.values()) {
            byId.computeIfAbsent(state.id(), id -> EcoreUtil.create(state.type()));
        }
        Set<EObject> released = new LinkedHashSet<>();
        latest.values().forEach(state -> release(state, released));
        latest.values().forEach(this::fill);
        for (EObject gone : released) {
            if (gone.eContainer() == null) {
                Ids.elements((Identified) gone).forEach(element -> byId.remove(element.getId()));
            }
        }
    }

    /** Takes out what an element does not contain any more, so that it can go elsewhere. */
    private void release(State state, Set<EObject> released) {
        EObject element = byId.get(state.id());
        state.links().forEach((reference, ids) -> {
            if (reference.isContainment()) {
                Set<String> kept = new HashSet<>(ids);
                for (EObject child : List.copyOf(targets(element, reference))) {
                    if (!kept.contains(((Identified) child).getId())) {
                        released.add(child);
                        EcoreUtil.remove(child);
                    }
                }
            }
        });
    }

    private void fill(State state) {
        EObject element = byId.get(state.id());
        for (EAttribute attribute : state.type().getEAllAttributes()) {
            Object value = state.attributes().get(attribute);
            if (value == null) {
                element.eUnset(attribute);
            } else if (!Objects.equals(element.eGet(attribute), value)) {
                element.eSet(attribute, value);
            }
        }
        state.links().forEach((reference, ids) -> link(element, reference, ids));
    }

    @SuppressWarnings("unchecked")
    private void link(EObject element, EReference reference, List<String> ids) {
        List<EObject> wanted = ids.stream().map(this::known).toList();
        if (!reference.isMany()) {
            EObject target = wanted.isEmpty() ? null : wanted.get(0);
            if (element.eGet(reference) != target) {
                element.eSet(reference, target);
            }
            return;
        }
        EList<EObject> now = (EList<EObject>) element.eGet(reference);
        if (now.size() + 1 == wanted.size() && now.equals(wanted.subList(0, now.size()))) {
            now.add(wanted.get(now.size()));
        } else if (!now.equals(wanted)) {
            now.clear();
            now.addAll(wanted);
        }
    }

    private EObject known(String id) {
        EObject found = byId.get(id);
        if (found == null) {
            throw new IllegalStateException("the element " + id + " is not known to the copy");
        }
        return found;
    }
}
