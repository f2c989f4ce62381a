package slopewright.model.internal;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.KeptValues;
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
        return KeptValues.obstacle(element).or(() -> lostReference(project, element));
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
}
