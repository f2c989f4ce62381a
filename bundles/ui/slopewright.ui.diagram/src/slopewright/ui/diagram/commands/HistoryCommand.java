package slopewright.ui.diagram.commands;

import org.eclipse.gef.commands.Command;

import slopewright.edit.RecordedEdit;

/** A command that stands for one edit. It is carried out, taken back and made again by {@link HistoryCommandStack} only. */
public final class HistoryCommand extends Command {

    private final RecordedEdit edit;

    /** Makes the command of an edit. */
    public HistoryCommand(RecordedEdit edit) {
        super(edit.label());
        this.edit = edit;
    }

    /** Returns the edit. */
    public RecordedEdit edit() {
        return edit;
    }

    @Override
    public void execute() {
        throw new IllegalStateException("'" + getLabel() + "' must go through the history of its project");
    }
}
