package slopewright.rcp.internal;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;

/** An entry of the menus that runs something of its own. */
final class ShellAction extends Action {

    private final Runnable work;

    private ShellAction(String id, String text, int style, Runnable work) {
        super(text, style);
        this.work = work;
        setId(id);
    }

    /**
     * Returns an entry.
     *
     * @param id   its id, also of its command
     * @param text what it is called
     * @param work what it does
     */
    static ShellAction of(String id, String text, Runnable work) {
        ShellAction action = new ShellAction(id, text, IAction.AS_PUSH_BUTTON, work);
        action.setActionDefinitionId(id);
        return action;
    }

    /** Returns an entry with a tick. */
    static ShellAction tick(String id, String text, Runnable work) {
        ShellAction action = new ShellAction(id, text, IAction.AS_CHECK_BOX, work);
        action.setActionDefinitionId(id);
        return action;
    }

    @Override
    public void run() {
        work.run();
    }
}
