package slopewright.ui.plan.internal.policies;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.messages.Message;

/** What stands for an edit that cannot be made, so that the user is told why when trying. */
final class Refusal extends RecordedEdit {

    private final String reason;

    Refusal(String label, String reason) {
        super(label);
        this.reason = reason;
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return List.of();
    }

    @Override
    protected void apply() {
        throw new EditException(Message.said("plain", reason));
    }
}
