package slopewright.model.util;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.model.Identified;
import slopewright.model.Project;

/** Ids of elements: readable, unique in their project, given once and never changed. */
public final class Ids {

    private Ids() {
    }

    /**
     * Gives an id to every element of a tree that has none: the name of its class and the next free number, in document order.
     *
     * @param root a project, or an element that belongs or will belong to one
     * @param project the project in which ids must be unique
     */
    public static void assign(Identified root, Project project) {
        Set<String> taken = new HashSet<>();
        collect(project, taken);
        collect(root, taken);
        for (Identified element : elements(root)) {
            if (element.getId() == null) {
                element.setId(next(element, taken));
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

    private static void collect(Identified root, Set<String> taken) {
        elements(root).forEach(element -> taken.add(element.getId()));
    }

    private static String next(Identified element, Set<String> taken) {
        String stem = element.eClass().getName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
        int number = 1;
        while (!taken.add(stem + "-" + number)) {
            number++;
        }
        return stem + "-" + number;
    }
}
