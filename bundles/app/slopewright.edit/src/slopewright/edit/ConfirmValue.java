package slopewright.edit;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.Confirmations;
import slopewright.messages.Message;
import slopewright.model.Project;
import slopewright.model.ValueConfirmation;

/** Keeps in a project that somebody held a value against the document, sealed, instead of what was said of it before. */
public final class ConfirmValue extends RecordedEdit {
    private final Project project;
    private final ValueConfirmation confirmation;

    private ConfirmValue(Project project, ValueConfirmation confirmation) {
        super("Confirm value");
        this.project = project;
        this.confirmation = confirmation;
    }

    /**
     * Keeps a confirmation.
     *
     * @param project      the project
     * @param confirmation what was said, part of nothing yet
     * @throws EditException where source, person or date is missing, or it is part of something already
     */
    public static ConfirmValue of(Project project, ValueConfirmation confirmation) {
        if (confirmation.eContainer() != null) {
            throw new EditException(Message.of("edit.confirmation-placed"));
        }
        if (!Confirmations.isWhole(confirmation)) {
            throw new EditException(Message.of("edit.confirmation"));
        }
        return new ConfirmValue(project, confirmation);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        Set<EObject> changed = new LinkedHashSet<>();
        changed.add(project);
        changed.addAll(project.getConfirmations());
        return changed;
    }

    @Override
    protected void apply() {
        Confirmations.keep(project, confirmation);
    }
}
