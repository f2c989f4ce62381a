package slopewright.fuzz;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;

/** Changes an entry of a project so that the project stays one: numbers a little or much, words for other words, parts for none. */
final class Entries {

    private static final List<String> WORDS = List.of("", "A", "2026-02-30", "2019-01-01", "2031-12-31", "four-unit-row", "two-bar",
            "tri-colour", "icao:9th", "icao:5th", "faa", "casa", "easa", "somewhere else");

    private Entries() {
    }

    /** An attribute or reference of an element that is set and may be unset. */
    record Entry(Identified element, EStructuralFeature feature) {

        String name() {
            return feature.getEContainingClass().getName() + "." + feature.getName();
        }
    }

    /** Returns the entries that are set, beside ids and parts. */
    static List<Entry> of(Identified root) {
        List<Entry> entries = new ArrayList<>();
        for (Identified element : Ids.elements(root)) {
            for (EStructuralFeature feature : element.eClass().getEAllStructuralFeatures()) {
                if (feature instanceof EAttribute attribute && !feature.isTransient() && feature.isChangeable() && !attribute.isID()
                        && element.eIsSet(feature)) {
                    entries.add(new Entry(element, feature));
                }
            }
        }
        return entries;
    }

    static void change(Project project, Breaker breaker) {
        if (breaker.upTo(8) == 0) {
            part(project, breaker);
            return;
        }
        Entry entry = breaker.one(of(project));
        change(entry, breaker);
    }

    /** Changes one entry. */
    static void change(Entry entry, Breaker breaker) {
        EAttribute attribute = (EAttribute) entry.feature();
        Identified element = entry.element();
        Object value = element.eGet(attribute);
        if (attribute.getEAttributeType() instanceof EEnum words) {
            element.eSet(attribute, breaker.one(words.getELiterals()).getInstance());
        } else if (breaker.upTo(8) == 0) {
            element.eUnset(attribute);
        } else if (value instanceof Boolean flag) {
            element.eSet(attribute, !flag);
        } else if (value instanceof Integer count) {
            element.eSet(attribute, count + breaker.upTo(7) - 3);
        } else if (value instanceof Double number) {
            element.eSet(attribute, breaker.near(number));
        } else if (value instanceof String) {
            element.eSet(attribute, breaker.one(WORDS));
        }
    }

    /** Takes a part out, or puts a second one like it beside it. */
    private static void part(Project project, Breaker breaker) {
        List<Identified> parts = Ids.elements(project).stream().filter(part -> part.eContainer() != null).toList();
        Identified part = breaker.one(parts);
        if (breaker.upTo(2) == 0) {
            EcoreUtil.delete(part, true);
        } else if (part.eContainmentFeature().isMany()) {
            copy(part);
            Ids.assign(project);
        }
    }

    /** Puts a copy of a part behind it, whose parts have no ids yet. */
    @SuppressWarnings("unchecked")
    static Identified copy(Identified part) {
        Identified copy = EcoreUtil.copy(part);
        Ids.elements(copy).forEach(each -> each.setId(null));
        ((EList<EObject>) part.eContainer().eGet(part.eContainmentFeature())).add(copy);
        return copy;
    }
}
