package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import slopewright.evaluation.ReadBacks;
import slopewright.model.Aerodrome;
import slopewright.model.Identified;
import slopewright.model.Runway;
import slopewright.ui.MessageTexts;
import slopewright.ui.units.QuantityFormat;

/** What is read back of an element, in the words of the window: all that {@link ReadBacks} seals, in its order. */
final class ReadBackEntries {

    private static final String STEP = "  ";

    private final QuantityFormat format = QuantityFormat.preferred();
    private final List<String> lines = new ArrayList<>();

    private ReadBackEntries() {
    }

    /** Returns the entries, one a line, for reading aloud. */
    static List<String> of(Identified element) {
        ReadBackEntries entries = new ReadBackEntries();
        entries.lines.add(AttributeInfo.classLabel(element.eClass()));
        if (element.eContainer() instanceof Identified holder) {
            String place = holder instanceof Runway runway ? " " + (runway.getEnds().indexOf(element) + 1) : "";
            entries.lines.add(STEP + PropertyTexts.get("readBack.part-of", MessageTexts.path(holder) + place));
        }
        entries.write(element, STEP);
        if (element instanceof Aerodrome && element.eContainer() instanceof Identified project) {
            entries.lines.add(STEP + AttributeInfo.classLabel(project.eClass()));
            entries.write(project, STEP + STEP);
        }
        return entries.lines;
    }

    private void write(EObject element, String indent) {
        for (EStructuralFeature feature : ReadBacks.sealed(element)) {
            AttributeInfo info = AttributeInfo.of(element.eClass(), feature);
            if (feature instanceof EReference reference && reference.isContainment()) {
                parts(element, feature).filter(part -> !ReadBacks.isReadBack(part)).forEach(part -> {
                    lines.add(indent + AttributeInfo.classLabel(part.eClass()));
                    write(part, indent + STEP);
                });
            } else {
                lines.add(indent + info.label() + ": " + value((Identified) element, info));
            }
        }
    }

    private static Stream<EObject> parts(EObject element, EStructuralFeature feature) {
        Object held = element.eGet(feature);
        return held instanceof List<?> several ? several.stream().map(EObject.class::cast) : Stream.of((EObject) held);
    }

    /** The value with its unit; a number of which the window shows fewer digits than are sealed is given whole beside it. */
    private String value(Identified element, AttributeInfo info) {
        Object held = element.eGet(info.feature());
        if (held instanceof Double number) {
            String shown = format.showWithUnit(number, info.quantity());
            boolean whole = new QuantityFormat(false, false).read(new QuantityFormat(false, false).show(number, info.quantity()),
                    info.quantity()) == number;
            return whole ? shown : shown + " [" + number + "]";
        }
        return info.feature() instanceof EAttribute attribute && attribute.isMany() ? String.valueOf(held)
                : Field.of(element, info, format).text();
    }
}
