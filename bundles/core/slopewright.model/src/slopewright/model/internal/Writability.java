package slopewright.model.internal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;

/** Finds what no project file can hold. */
public final class Writability {

    private Writability() {
    }

    /** Returns what stands in the way of writing a project, with the name of the element; empty where nothing does. */
    public static Optional<Message> obstacle(Project project) {
        return Ids.elements(project).stream().flatMap(element -> obstacle(project, element).stream()).findFirst();
    }

    private static Optional<Message> obstacle(Project project, Identified element) {
        for (EAttribute attribute : element.eClass().getEAllAttributes()) {
            Object value = element.eGet(attribute);
            if (value instanceof Double number && !Double.isFinite(number)) {
                return Optional.of(Message.said("project-file.no-number", attribute.getName(), Projects.path(element)));
            }
            OptionalInt alien = value instanceof String text ? text.codePoints().filter(c -> !isKept(c)).findFirst() : OptionalInt.empty();
            if (alien.isPresent()) {
                return Optional.of(Message.said("project-file.character", attribute.getName(), element.getId(),
                        String.format("U+%04X", alien.getAsInt())));
            }
        }
        return lostReference(project, element);
    }

    private static Optional<Message> lostReference(Project project, Identified element) {
        for (EReference reference : element.eClass().getEAllReferences()) {
            if (!reference.isContainment() && !reference.isContainer()) {
                Object value = element.eGet(reference);
                for (Object target : value instanceof List<?> many ? many : Optional.ofNullable(value).stream().toList()) {
                    if (target instanceof Identified other && !EcoreUtil.isAncestor(project, other)) {
                        return Optional.of(Message.said("project-file.outside", Projects.path(element), Projects.label(other)));
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Tells whether XML 1.0 can hold a character. */
    private static boolean isKept(int c) {
        return c == '\t' || c == '\n' || c == '\r' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
    }
}
