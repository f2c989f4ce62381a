package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;

import slopewright.checks.Outcome;
import slopewright.checks.compare.ProjectDifference.Change;
import slopewright.checks.compare.ProjectDifference.OutcomeChange;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.ui.MessageTexts;
import slopewright.ui.units.QuantityFormat;

/** The difference between two versions of a project in words, the same everywhere in the window. */
public final class ChangeTexts {

    private ChangeTexts() {
    }

    /**
     * Returns the name of the attribute that changed.
     *
     * @param change  a change
     * @param project one of the two versions, in which the element is looked up
     * @return the name; what the element is where it was added or removed as a whole
     */
    public static String what(Change change, Project project) {
        Optional<Identified> element = Ids.find(project, change.element());
        if (change.attribute().isEmpty()) {
            return element.map(found -> AttributeInfo.classLabel(found.eClass())).orElse("");
        }
        return info(change, element).map(AttributeInfo::label).orElse(change.attribute());
    }

    /** Returns a value before or after a change, with its unit; a word for nothing. */
    public static String value(Change change, Project project, String text) {
        if (text.isEmpty()) {
            return PropertyTexts.get("change.nothing");
        }
        Optional<AttributeInfo> info = info(change, Ids.find(project, change.element()));
        if (info.isEmpty() || !(info.get().feature() instanceof EAttribute attribute)) {
            return text;
        }
        if (attribute.getEAttributeType() instanceof EEnum type && type.getEEnumLiteral(text) != null) {
            Enumerator literal = type.getEEnumLiteral(text).getInstance();
            return AttributeInfo.choice(literal);
        }
        boolean number = attribute.getEAttributeType().getInstanceClass() == Double.class;
        return number ? QuantityFormat.preferred().showWithUnit(Double.parseDouble(text), info.get().quantity()) : text;
    }

    private static Optional<AttributeInfo> info(Change change, Optional<Identified> element) {
        return element.filter(found -> found.eClass().getEStructuralFeature(change.attribute()) != null)
                .map(found -> AttributeInfo.of(found.eClass(), found.eClass().getEStructuralFeature(change.attribute())));
    }

    /** Returns what kind of change it is: changed, added, removed. */
    public static String kind(Change change) {
        return PropertyTexts.get("change." + change.kind());
    }

    /**
     * Returns a change as one line.
     *
     * @param change  a change
     * @param project one of the two versions
     */
    public static String line(Change change, Project project) {
        if (change.attribute().isEmpty()) {
            return PropertyTexts.get("change.line.whole", MessageTexts.of(change.path()), kind(change));
        }
        return PropertyTexts.get("change.line", MessageTexts.of(change.path()), what(change, project),
                value(change, project, change.before()), value(change, project, change.after()));
    }

    /** Returns an outcome that differs as one line. */
    public static String line(OutcomeChange change) {
        return PropertyTexts.get("change.outcome", change.rule(), MessageTexts.of(change.path()), outcome(change.before()),
                outcome(change.after()));
    }

    /** Returns a verdict with its margin; a word for none. */
    public static String outcome(Optional<Outcome> outcome) {
        return outcome.map(found -> {
            String margin = OutcomeTexts.margin(found);
            return OutcomeTexts.verdict(found) + (margin.isEmpty() ? "" : " (" + margin + ")");
        }).orElseGet(() -> PropertyTexts.get("change.none"));
    }

    /**
     * Returns the first lines of a list and how many more there are.
     *
     * @param lines the lines
     * @param most  how many are shown
     */
    public static List<String> firstOf(List<String> lines, int most) {
        if (lines.size() <= most) {
            return lines;
        }
        List<String> shown = new ArrayList<>(lines.subList(0, most));
        shown.add(PropertyTexts.get("change.more", lines.size() - most));
        return shown;
    }
}
