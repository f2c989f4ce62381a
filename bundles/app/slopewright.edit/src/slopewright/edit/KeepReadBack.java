package slopewright.edit;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.ReadBacks;
import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.standards.SignedNames;

/** Keeps that a second person held the entries of elements against their source. */
public final class KeepReadBack extends RecordedEdit {
    private final Project project;
    private final List<Identified> elements;
    private final String person;
    private final LocalDate date;

    private KeepReadBack(Project project, List<Identified> elements, String person, LocalDate date) {
        super("Keep read-back");
        this.project = project;
        this.elements = elements;
        this.person = person;
        this.date = date;
    }

    /**
     * Keeps a read-back, instead of those that were kept of the same elements before.
     *
     * @param elements elements of one project; what is part of an element is read back with it
     * @param person   who did it, not the author of the project
     * @param date     when
     * @throws EditException where there is nothing to read back, nobody is named, or it is the author of the project
     */
    public static KeepReadBack of(Collection<? extends Identified> elements, String person, LocalDate date) {
        Set<Identified> holders = new LinkedHashSet<>();
        elements.forEach(element -> ReadBacks.holder(element).ifPresent(holders::add));
        if (holders.isEmpty()) {
            throw new EditException(Message.of("edit.nothing-to-read-back"));
        }
        Project project = Projects.project(holders.iterator().next())
                .orElseThrow(() -> new EditException(Message.of("edit.read-back-no-project")));
        if (!SignedNames.isName(person)) {
            throw new EditException(Message.of("edit.read-back-person"));
        }
        if (ReadBacks.isAuthor(project, person)) {
            throw new EditException(Message.said("edit.read-back-author", person));
        }
        return new KeepReadBack(project, List.copyOf(holders), person.strip(), date);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        Set<EObject> changed = new LinkedHashSet<>();
        changed.add(project);
        Set<String> ids = new LinkedHashSet<>(elements.stream().map(Identified::getId).toList());
        project.getReadBacks().stream().filter(readBack -> ids.contains(readBack.getElementId())).forEach(changed::add);
        return changed;
    }

    @Override
    protected void apply() {
        ReadBacks.keep(project, elements, person, date.toString());
    }
}
