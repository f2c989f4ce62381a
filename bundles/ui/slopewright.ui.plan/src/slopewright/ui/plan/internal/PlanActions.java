package slopewright.ui.plan.internal;

import java.util.List;

import org.eclipse.gef.KeyHandler;
import org.eclipse.gef.KeyStroke;
import org.eclipse.gef.ui.actions.ActionBarContributor;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.ui.actions.ActionFactory;

/** Connects the actions of the workbench with those of the active plan. */
public final class PlanActions extends ActionBarContributor {

    @Override
    protected void buildActions() {
        // the menus of the workbench offer them already
    }

    @Override
    protected void declareGlobalActionKeys() {
        List.of(ActionFactory.DELETE, ActionFactory.SELECT_ALL, ActionFactory.CUT, ActionFactory.COPY, ActionFactory.PASTE,
                ActionFactory.NEXT, ActionFactory.PREVIOUS).forEach(factory -> addGlobalActionKey(factory.getId()));
    }

    /** Adds the keys of the common actions to a keyboard; they count where the workbench does not take them first. */
    public static KeyHandler withKeys(KeyHandler keys, ActionRegistry registry) {
        put(keys, KeyStroke.getPressed(SWT.DEL, SWT.DEL, 0), registry.getAction(ActionFactory.DELETE.getId()));
        put(keys, KeyStroke.getPressed((char) 26, 'z', SWT.CTRL), registry.getAction(ActionFactory.UNDO.getId()));
        put(keys, KeyStroke.getPressed((char) 25, 'y', SWT.CTRL), registry.getAction(ActionFactory.REDO.getId()));
        return keys;
    }

    private static void put(KeyHandler keys, KeyStroke stroke, IAction action) {
        if (action != null) {
            keys.put(stroke, action);
        }
    }
}
