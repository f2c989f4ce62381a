package slopewright.model.util;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
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

    /** Returns the element with an id, empty where there is none. */
    public static Optional<Identified> find(Identified root, String id) {
        return elements(root).stream().filter(element -> id.equals(element.getId())).findFirst();
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
