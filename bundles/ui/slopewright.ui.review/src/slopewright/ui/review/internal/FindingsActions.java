package slopewright.ui.review.internal;

import java.util.List;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;

import slopewright.checks.Outcome;
import slopewright.ui.review.internal.FindingsModel.Grouping;

/** What the user can do with the findings as a whole: group them, copy them, write them into a file. */
public final class FindingsActions {

    private final FindingsTree tree;
    private final IActionBars bars;
    private final Shell shell;

    /** Puts the actions into the bars of a view. */
    public FindingsActions(FindingsTree tree, IActionBars bars, Shell shell) {
        this.tree = tree;
        this.bars = bars;
        this.shell = shell;
        IToolBarManager bar = bars.getToolBarManager();
        for (IAction action : List.of(grouping("findings.byVerdict", Grouping.VERDICT, ReviewImages.BY_VERDICT),
                grouping("findings.byElement", Grouping.ELEMENT, ReviewImages.BY_ELEMENT),
                grouping("findings.byRule", Grouping.RULE, ReviewImages.BY_RULE),
                grouping("findings.list", Grouping.NONE, ReviewImages.LIST))) {
            bar.add(action);
            bars.getMenuManager().add(action);
        }
        IAction export = action("findings.export", this::export);
        export.setImageDescriptor(ReviewImages.EXPORT.descriptor());
        bar.add(new Separator());
        bar.add(export);
        bars.getMenuManager().add(new Separator());
        bars.getMenuManager().add(export);
        bars.setGlobalActionHandler(ActionFactory.COPY.getId(), action("findings.copy", this::copy));
    }

    private IAction grouping(String key, Grouping by, ReviewImages image) {
        IAction made = new Action(Messages.get(key), IAction.AS_RADIO_BUTTON) {
            @Override
            public void run() {
                if (isChecked()) {
                    tree.group(by);
                }
            }
        };
        made.setToolTipText(Messages.get(key));
        made.setImageDescriptor(image.descriptor());
        made.setChecked(tree.grouping() == by);
        return made;
    }

    /** Makes an action of a text in the catalogue. */
    public static IAction action(String key, Runnable work) {
        IAction made = new Action(Messages.get(key)) {
            @Override
            public void run() {
                work.run();
            }
        };
        made.setToolTipText(Messages.get(key));
        return made;
    }

    /** Returns the selected outcomes, or all that are shown where none is selected. */
    public List<Outcome> chosen() {
        List<Outcome> selected = tree.selected();
        return selected.isEmpty() ? tree.shown() : selected;
    }

    /** Copies the chosen outcomes. */
    public void copy() {
        FindingsCopy.toClipboard(chosen(), shell.getDisplay());
    }

    private void export() {
        bars.getStatusLineManager().setMessage(FindingsCopy.toFile(tree.shown(), shell));
    }
}
