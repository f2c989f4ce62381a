package slopewright.model.util;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.model.Identified;
import slopewright.model.Project;

/** Ids of elements: readable, unique in their project, given once and never changed. */
public final class Ids {

    private Ids() {
    }

    /**
     * Gives an id to every element of a tree that has none, or the one of an element before it, as a copy has: the name of its class
     * and the next free number, in document order.
     *
     * @param root a project, or an element that belongs or will belong to one
     * @param project the project in which ids must be unique
     */
    public static void assign(Identified root, Project project) {
        List<Identified> elements = elements(root);
        Map<String, Identified> owners = new HashMap<>();
        (root == project ? elements : elements(project)).forEach(element -> owners.putIfAbsent(element.getId(), element));
        elements.forEach(element -> owners.putIfAbsent(element.getId(), element));
        Map<String, Integer> numbers = new HashMap<>();
        for (Identified element : elements) {
            if (element.getId() == null || owners.get(element.getId()) != element) {
                element.setId(next(element, owners, numbers));
            }
        }
    }

    /** Gives an id to every element of a project that has none. */
    public static void assign(Project project) {
        assign(project, project);
    }

    /** Returns every element of a tree in document order, the root first. */
    public static List<Identified> elements(Identified root) {
        List<Identified> elements = new ArrayList<>();
        elements.add(root);
        for (Iterator<EObject> all = EcoreUtil.getAllProperContents(root, false); all.hasNext();) {
            if (all.next() instanceof Identified element) {
                elements.add(element);
            }
        }
        return elements;
    }

    /**
     * Returns every element of a class in a tree, in document order. What can hold none, as a hundred thousand obstacles hold no equipment,
     * is not walked through.
     *
     * @param root a project or a part of one
     * @param type the class
     * @return the elements, the root among them where it is one
     */
    public static List<Identified> elements(Identified root, EClass type) {
        List<Identified> found = new ArrayList<>();
        collect(root, type, new HashMap<>(), found);
        return found;
    }

    private static void collect(EObject parent, EClass type, Map<EClass, Boolean> holders, List<Identified> found) {
        if (type.isInstance(parent) && parent instanceof Identified element) {
            found.add(element);
        }
        for (EReference reference : parent.eClass().getEAllContainments()) {
            if (mayBeOrHold(reference.getEReferenceType(), type, holders)) {
                Object held = parent.eGet(reference);
                List<?> children = held instanceof List<?> list ? list : held == null ? List.of() : List.of(held);
                children.forEach(child -> collect((EObject) child, type, holders, found));
            }
        }
    }

    /** Returns whether an object of a class, or of one below it, can be of a type or hold such a one. */
    private static boolean mayBeOrHold(EClass candidate, EClass type, Map<EClass, Boolean> holders) {
        Boolean known = holders.putIfAbsent(candidate, false); // false while its own parts are looked at: they may hold the class again
        if (known != null) {
            return known;
        }
        boolean holds = false;
        for (EClassifier classifier : candidate.getEPackage().getEClassifiers()) {
            if (classifier instanceof EClass below && candidate.isSuperTypeOf(below)) {
                holds |= type.isSuperTypeOf(below) || below.getEAllContainments().stream()
                        .anyMatch(part -> mayBeOrHold(part.getEReferenceType(), type, holders));
            }
        }
        holders.put(candidate, holds);
        return holds;
    }

    /** Returns the element with an id, empty where there is none. */
    public static Optional<Identified> find(Identified root, String id) {
        if (id.equals(root.getId())) {
            return Optional.of(root);
        }
        for (Iterator<EObject> all = EcoreUtil.getAllProperContents(root, false); all.hasNext();) {
            if (all.next() instanceof Identified element && id.equals(element.getId())) {
                return Optional.of(element);
            }
        }
        return Optional.empty();
    }

    private static String next(Identified element, Map<String, Identified> owners, Map<String, Integer> numbers) {
        String stem = element.eClass().getName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
        String id;
        do {
            id = stem + "-" + numbers.merge(stem, 1, Integer::sum);
        } while (owners.putIfAbsent(id, element) != null);
        return id;
    }
}
