package slopewright.ui.diagram.commands;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CompoundCommand;

import slopewright.edit.Compound;
import slopewright.edit.EditException;
import slopewright.edit.EditHistory;
import slopewright.edit.RecordedEdit;
import slopewright.siting.SitingException;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.internal.Messages;

/**
 * The command stack of a diagram. It keeps nothing itself: what can be undone, made again or saved is what the history of the project
 * says, so edits of the diagram and of the property sheet are in one row.
 */
public final class HistoryCommandStack extends CommandStack {

    private final EditHistory history;
    private final Consumer<String> problems;
    private final EditHistory.Listener relay = this::historyChanged;

    /**
     * Makes the stack of a history.
     *
     * @param history  the edits of the project
     * @param problems receives the reason where an edit cannot be made; the project is as it was then
     */
    public HistoryCommandStack(EditHistory history, Consumer<String> problems) {
        this.history = history;
        this.problems = problems;
        history.addListener(relay);
    }

    @SuppressWarnings("deprecation")
    private void historyChanged(Set<String> ids) {
        notifyListeners();
    }

    @Override
    public void execute(Command command) {
        if (command == null || !command.canExecute()) {
            return;
        }
        RecordedEdit edit = edit(command);
        try {
            history.perform(edit);
        } catch (SitingException | EditException e) {
            problems.accept(Messages.get("notice.cannot", lower(EditLabels.of(edit.label())), MessageTexts.reason(e)));
        }
    }

    private static String lower(String label) {
        return label.isEmpty() ? label : Character.toLowerCase(label.charAt(0)) + label.substring(1);
    }

    private static RecordedEdit edit(Command command) {
        if (command instanceof HistoryCommand one) {
            return one.edit();
        }
        if (command instanceof CompoundCommand many) {
            List<RecordedEdit> edits = new ArrayList<>();
            for (Object part : many.getCommands()) {
                edits.add(edit((Command) part));
            }
            return edits.size() == 1 ? edits.get(0) : Compound.of(label(many), edits);
        }
        throw new IllegalArgumentException(command.getClass().getName() + " stands for no edit");
    }

    private static String label(CompoundCommand command) {
        String label = command.getLabel();
        return label == null || label.isBlank() ? Messages.get("edit.several") : label;
    }

    @Override
    public boolean canUndo() {
        return history.canUndo();
    }

    @Override
    public boolean canRedo() {
        return history.canRedo();
    }

    @Override
    public void undo() {
        history.undo();
    }

    @Override
    public void redo() {
        history.redo();
    }

    @Override
    public Command getUndoCommand() {
        return history.canUndo() ? named(EditLabels.of(history.undoLabel())) : null;
    }

    @Override
    public Command getRedoCommand() {
        return history.canRedo() ? named(EditLabels.of(history.redoLabel())) : null;
    }

    private static Command named(String label) {
        return new Command(label) {
            // only its label is asked for
        };
    }

    @Override
    public boolean isDirty() {
        return history.isDirty();
    }

    @Override
    public void dispose() {
        history.removeListener(relay);
        super.dispose();
    }
}
