package slopewright.ui.plan.internal.actions;

import org.eclipse.jface.action.Action;
import org.eclipse.ui.actions.ActionFactory;

/** What an entry of the common menus does while a plan is the active editor. */
final class CommonAction extends Action {

    private final Runnable work;

    private CommonAction(String id, Runnable work) {
        this.work = work;
        setId(id);
    }

    static CommonAction of(ActionFactory factory, Runnable work) {
        return new CommonAction(factory.getId(), work);
    }

    @Override
    public void run() {
        work.run();
    }
}
