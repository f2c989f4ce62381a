package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import slopewright.model.Identified;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Projects;

/** The parts of an element that are shown in its sheet: what it has one of, and the few that have no place in the plan. */
final class ElementParts {

    /**
     * A part with the heading of its group.
     *
     * @param group   the heading
     * @param element the part
     */
    record Part(String group, Identified element) {
    }

    private static final Set<EReference> LISTS = Set.of(Literals.APPROACH_AID__INSPECTIONS, Literals.AERODROME__CIRCUITS,
            Literals.AERODROME__BACKGROUND_IMAGES, Literals.AERODROME__EQUIPMENT_TYPES, Literals.EQUIPMENT_TYPE__PRINTED_DESCENTS,
            Literals.EQUIPMENT_TYPE__BRIGHTNESS_LEVELS);

    private ElementParts() {
    }

    static List<Part> of(Identified element) {
        List<Part> parts = new ArrayList<>();
        collect(element, "", parts);
        return parts;
    }

    private static void collect(Identified element, String prefix, List<Part> parts) {
        for (EReference reference : element.eClass().getEAllContainments()) {
            if (!reference.isMany() && element.eGet(reference) instanceof Identified child) {
                add(child, prefix + AttributeInfo.of(element.eClass(), reference).label(), parts);
            } else if (LISTS.contains(reference)) {
                int number = 0;
                for (Object part : (List<?>) element.eGet(reference)) {
                    number++;
                    Identified child = (Identified) part;
                    add(child, prefix + AttributeInfo.classLabel(child.eClass()) + " " + number, parts);
                }
            }
        }
    }

    private static void add(Identified child, String group, List<Part> parts) {
        parts.add(new Part(group, child));
        boolean aerodrome = Projects.project(child).filter(project -> project.getAerodrome() == child).isPresent();
        collect(child, aerodrome ? "" : group + ", ", parts);
    }

    /** Returns the id of a value of a part in the sheet of the whole. */
    static String id(Identified part, EStructuralFeature feature) {
        return part.getId() + " " + feature.getName();
    }

    /** Returns lines to be put below others; empty where there are none. */
    static String lines(List<String> lines) {
        return lines.isEmpty() ? "" : "\n" + String.join("\n", lines);
    }
}
