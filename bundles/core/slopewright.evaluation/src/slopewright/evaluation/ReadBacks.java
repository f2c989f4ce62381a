package slopewright.evaluation;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.model.Aerodrome;
import slopewright.model.GroundLevel;
import slopewright.model.Identified;
import slopewright.model.Named;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.ReviewNote;
import slopewright.model.Runway;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage;
import slopewright.model.util.Ids;
import slopewright.standards.SignedNames;

/**
 * Read-backs: a second person held the entries of an element against the sheet that they come from. A level, a length or a longitude that
 * only one place states can be wrong and still be likely; no rule finds it, two people do. What was read back is sealed: a later change of
 * one digit, of the name or of the date breaks the seal.
 * <p>
 * What has a name of its own, and a ground level, is read back by itself, with all that it holds and that is not, and with what holds it:
 * an aid at another end of the runway is another aid. Of the ends of a runway the order counts too, for the first is where its distances
 * begin. An entry on which no result rests ({@link KeptForTheRecord}) is not sealed, so that a remark can be written at any time; the
 * vertical datum is sealed nevertheless, for it says what every height means, and so are epoch and accuracy of the coordinates. Entries
 * that are not set leave no trace, so that a seal holds when the model gains an attribute.
 * <p>
 * What the project itself says for all that it holds, the rule set, the stage and the values that replace published ones, is read back with
 * the aerodrome. Its date is not: every read-back is held against it (rule REC-03), so that it can move on without breaking seals.
 * Neither are notes and confirmations, which others write later over their own names; a confirmation that has another value than the
 * rule set confirms nothing.
 */
public final class ReadBacks {
    private static final Set<String> SEALED_NEVERTHELESS = Set.of("Aerodrome.verticalDatum", "Aerodrome.coordinateEpoch",
            "Aerodrome.coordinateAccuracyM");
    private static final Set<String> WRITTEN_LATER = Set.of("Project.date", "Project.confirmations", "Project.reviewNotes",
            "Project.readBacks");

    /** What is sealed of an element of each class, by name. */
    private static final Map<EClass, List<EStructuralFeature>> SEALED = SlopewrightPackage.eINSTANCE.getEClassifiers().stream()
            .filter(EClass.class::isInstance).map(EClass.class::cast)
            .collect(Collectors.toUnmodifiableMap(Function.identity(), type -> type.getEAllStructuralFeatures().stream()
                    .filter(ReadBacks::isSealed).sorted(Comparator.comparing(EStructuralFeature::getName)).toList()));

    /** How an element stands to what was read back of it. */
    public enum State {
        /** It has entries as they were read back. */
        SAME,
        /** An entry of it, or of the read-back, was changed since. */
        CHANGED,
        /** It was not read back. */
        ABSENT
    }

    private ReadBacks() {
    }

    /** Returns the elements of a project that are read back, in document order. */
    public static List<Identified> elements(Project project) {
        return project.getAerodrome() == null ? List.of()
                : Ids.elements(project).stream().filter(element -> element != project && isReadBack(element)).toList();
    }

    /** Returns those of some elements that are read back. */
    public static List<Identified> among(List<Identified> elements) {
        return elements.stream().filter(ReadBacks::isReadBack).toList();
    }

    /** Returns what is read back as one with an element: itself, or what holds it; empty for the project and for notes. */
    public static Optional<Identified> holder(Identified element) {
        for (EObject part = element; part instanceof Identified found && !(part instanceof Project); part = part.eContainer()) {
            if (isReadBack(found)) {
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    /** Returns what is set and sealed of an element, in the order of the seal; for showing it in words. */
    public static List<EStructuralFeature> sealed(EObject element) {
        return SEALED.get(element.eClass()).stream().filter(element::eIsSet).toList();
    }

    /** Returns whether an element is read back by itself, and not with what holds it. */
    public static boolean isReadBack(EObject element) {
        return element instanceof Named && !(element instanceof ReviewNote) && !(element instanceof Project)
                || element instanceof GroundLevel;
    }

    /** Returns the entries of an element and of what is read back with it, one a line: for reading aloud, and for the seal. */
    public static List<String> entries(Identified element) {
        List<String> lines = new ArrayList<>();
        lines.add(element.eClass().getName());
        if (element.eContainer() instanceof Identified container) {
            lines.add("  held by " + container.getId() + " as " + element.eContainmentFeature().getName()
                    + (container instanceof Runway runway ? " " + (runway.getEnds().indexOf(element) + 1) : ""));
        }
        write(element, "", lines);
        if (element instanceof Aerodrome && element.eContainer() instanceof Project project) {
            lines.add("  project: Project");
            write(project, "  ", lines);
        }
        return lines;
    }

    private static boolean isSealed(EStructuralFeature feature) {
        String name = feature.getEContainingClass().getName() + "." + feature.getName();
        return !feature.isTransient() && !WRITTEN_LATER.contains(name)
                && (SEALED_NEVERTHELESS.contains(name) || !KeptForTheRecord.contains(feature));
    }

    private static void write(EObject element, String indent, List<String> lines) {
        for (EStructuralFeature feature : sealed(element)) {
            String name = indent + "  " + feature.getName() + " = ";
            if (feature instanceof EAttribute attribute) {
                lines.add(name + EcoreUtil.convertToString(attribute.getEAttributeType(), element.eGet(attribute))
                        .replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r"));
            } else if (!((EReference) feature).isContainment()) {
                lines.add(name + String.join(" ", list(element, feature).stream().map(target -> ((Identified) target).getId()).toList()));
            } else {
                list(element, feature).stream().filter(part -> !isReadBack(part)).forEach(part -> {
                    lines.add(indent + "  " + feature.getName() + ": " + part.eClass().getName());
                    write(part, indent + "  ", lines);
                });
            }
        }
    }

    private static List<EObject> list(EObject element, EStructuralFeature feature) {
        List<EObject> found = new ArrayList<>();
        if (feature.isMany()) {
            ((List<?>) element.eGet(feature)).forEach(target -> found.add((EObject) target));
        } else {
            found.add((EObject) element.eGet(feature));
        }
        return found;
    }

    /**
     * Returns the seal of what is read back: SHA-256 of the id, the person, the date and the entries, one a line, in lower-case
     * hexadecimal.
     */
    public static String seal(Identified element, String person, String date) {
        String text = String.join("\n", element.getId(), String.valueOf(person), String.valueOf(date),
                String.join("\n", entries(element)));
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Returns whether the entries of an element are those of a read-back. */
    public static boolean holds(ReadBack readBack, Identified element) {
        return seal(element, readBack.getPerson(), readBack.getDate()).equals(readBack.getSha256());
    }

    /**
     * Returns whether a name is that of the author of a project, see {@link SignedNames}.
     *
     * @param project the project; where it names no author, nobody is
     * @param person  a name, may be null
     */
    public static boolean isAuthor(Project project, String person) {
        return SignedNames.isSame(project.getAuthor(), person);
    }

    /** Returns the read-backs of a project by the id of their element; of two of one element, the first. */
    public static Map<String, ReadBack> byElement(Project project) {
        Map<String, ReadBack> found = new HashMap<>();
        project.getReadBacks().forEach(readBack -> found.putIfAbsent(String.valueOf(readBack.getElementId()), readBack));
        return found;
    }

    /** Returns how an element, or what holds it, stands to what was read back of it. */
    public static State state(Project project, Identified element) {
        return state(byElement(project), element);
    }

    /** Returns the same for many elements, with what {@link #byElement} gives of their project. */
    public static State state(Map<String, ReadBack> byElement, Identified element) {
        Optional<Identified> holder = holder(element);
        Optional<ReadBack> readBack = holder.map(found -> byElement.get(found.getId()));
        return readBack.isEmpty() ? State.ABSENT : holds(readBack.get(), holder.get()) ? State.SAME : State.CHANGED;
    }

    /**
     * Keeps that elements were read back, instead of what was kept of them before.
     *
     * @param project  the project, changed
     * @param elements elements that are read back, see {@link #elements(Project)}
     * @param person   who held the entries against their source
     * @param date     when, year, month, day
     * @throws IllegalArgumentException where an element is read back with what holds it
     */
    public static void keep(Project project, List<? extends Identified> elements, String person, String date) {
        Map<String, ReadBack> known = byElement(project);
        for (Identified element : elements) {
            if (!isReadBack(element)) {
                throw new IllegalArgumentException(element.getId() + " is read back with what holds it");
            }
            ReadBack readBack = known.computeIfAbsent(element.getId(), id -> {
                ReadBack made = SlopewrightFactory.eINSTANCE.createReadBack();
                project.getReadBacks().add(made);
                return made;
            });
            readBack.setElementId(element.getId());
            readBack.setPerson(person);
            readBack.setDate(date);
            readBack.setSha256(seal(element, person, date));
        }
        Ids.assign(project);
    }

    /** Takes out the read-backs of elements that are no longer there. */
    public static void tidy(Project project) {
        List<String> ids = elements(project).stream().map(Identified::getId).toList();
        project.getReadBacks().removeIf(readBack -> !ids.contains(readBack.getElementId()));
    }
}
