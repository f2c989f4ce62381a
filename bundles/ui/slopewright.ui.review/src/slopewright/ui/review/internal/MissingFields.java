package slopewright.ui.review.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import slopewright.checks.Outcome;
import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.ui.MessageTexts;
import slopewright.ui.properties.AttributeInfo;
import slopewright.ui.properties.Field;
import slopewright.ui.units.QuantityFormat;

/** The entries that a finding waits for, so that they can be typed beside it: those of its element that are empty, nearest first. */
public final class MissingFields {

    private static final Map<String, List<String>> FIELDS = read();
    private static final int MOST = 8;

    /**
     * One entry.
     *
     * @param label what it is, with its element and the unit of what is typed
     * @param field the entry
     */
    public record Entry(String label, Field field) {
    }

    private MissingFields() {
    }

    private static Map<String, List<String>> read() {
        try (InputStream in = MissingFields.class.getResourceAsStream("missing-fields.tsv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> !line.startsWith("#"))
                    .map(line -> line.split("\t")).collect(Collectors.toUnmodifiableMap(row -> row[0], row -> List.of(row[1].split(" "))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Returns the empty entries that an outcome names as missing.
     *
     * @param outcome the outcome
     * @param project the project as it is now
     * @return at most eight; empty where no single entry fills what is missing
     */
    public static List<Entry> of(Outcome outcome, Project project) {
        Set<Entry> entries = new LinkedHashSet<>();
        Ids.find(project, String.valueOf(outcome.elementId())).ifPresent(element -> {
            List<Identified> around = around(element);
            for (Message missing : outcome.missing()) {
                for (String attribute : FIELDS.getOrDefault(missing.key(), List.of())) {
                    nearest(around, attribute).stream().map(owner -> entry(owner, attribute)).forEach(entries::add);
                }
            }
        });
        return entries.stream().limit(MOST).toList();
    }

    /** The element, what is in it, what it refers to, then what it stands in, step by step. */
    private static List<Identified> around(Identified element) {
        List<Identified> around = new ArrayList<>(Ids.elements(element));
        for (EObject referred : element.eCrossReferences()) {
            if (referred instanceof Identified other) {
                around.add(other);
            }
        }
        for (EObject outer = element.eContainer(); outer != null; outer = outer.eContainer()) {
            if (outer instanceof Identified other) {
                around.add(other);
            }
        }
        return around;
    }

    /** Returns the elements of the first kind that has the attribute, where it is empty. */
    private static List<Identified> nearest(List<Identified> around, String attribute) {
        return around.stream().filter(element -> element.eClass().getEStructuralFeature(attribute) != null).findFirst()
                .map(first -> around.stream().filter(element -> element.eClass() == first.eClass())
                        .filter(element -> isEmpty(element, attribute)).toList())
                .orElse(List.of());
    }

    private static boolean isEmpty(Identified element, String attribute) {
        Object value = element.eGet(element.eClass().getEStructuralFeature(attribute));
        return value == null || value instanceof String text && text.isBlank();
    }

    private static Entry entry(Identified owner, String attribute) {
        QuantityFormat format = QuantityFormat.preferred();
        EStructuralFeature feature = owner.eClass().getEStructuralFeature(attribute);
        AttributeInfo info = AttributeInfo.of(owner.eClass(), feature);
        Field field = Field.of(owner, info, format, Projects.project(owner));
        return new Entry(Messages.get("details.field", info.labelWithUnit(format), MessageTexts.path(owner)), field);
    }
}
