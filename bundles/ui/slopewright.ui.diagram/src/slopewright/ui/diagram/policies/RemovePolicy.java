package slopewright.ui.diagram.policies;

import java.util.function.Supplier;

import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.ComponentEditPolicy;
import org.eclipse.gef.requests.GroupRequest;

import slopewright.edit.RecordedEdit;
import slopewright.ui.diagram.commands.HistoryCommand;

/** Lets an element be removed by an edit. */
public final class RemovePolicy extends ComponentEditPolicy {

    private final Supplier<RecordedEdit> edit;

    /**
     * Makes the policy.
     *
     * @param edit makes the edit that removes the element
     */
    public RemovePolicy(Supplier<RecordedEdit> edit) {
        this.edit = edit;
    }

    @Override
    protected Command createDeleteCommand(GroupRequest request) {
        return new HistoryCommand(edit.get());
    }
}
