package slopewright.checks.internal.data;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;

/** The attributes of the model that are dates, looked up once a class. */
final class DateAttributes {
    private final Map<EClass, List<EAttribute>> known = new HashMap<>();

    /** Returns the attributes of a class that are dates. */
    List<EAttribute> of(EClass type) {
        return known.computeIfAbsent(type, found -> found.getEAllAttributes().stream()
                .filter(attribute -> attribute.getName().equals("date") || attribute.getName().endsWith("Date")).toList());
    }
}
