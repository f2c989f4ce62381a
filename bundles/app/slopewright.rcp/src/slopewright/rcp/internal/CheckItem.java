package slopewright.rcp.internal;

import java.util.Optional;

import org.eclipse.jface.action.ContributionItem;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;

import slopewright.checks.CheckResult;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.properties.OutcomeTexts;

/**
 * Says in the status line how the checks of the active project stand: under way, how many outcomes there are of each verdict, or why there
 * are none.
 */
public final class CheckItem extends ContributionItem {

    private final IWorkbenchWindow window;
    private Optional<CLabel> label = Optional.empty();
    private Optional<DocumentFollower> follower = Optional.empty();

    /**
     * Creates the item.
     *
     * @param window the window whose active editor counts
     */
    public CheckItem(IWorkbenchWindow window) {
        super("slopewright.rcp.checking");
        this.window = window;
    }

    @Override
    public void fill(Composite parent) {
        CLabel made = StatusLayout.label(parent);
        label = Optional.of(made);
        made.addListener(SWT.MouseUp, event -> follower.flatMap(DocumentFollower::document).filter(ProjectDocument::isChecking)
                .ifPresent(ProjectDocument::stopChecking));
        made.addListener(SWT.Dispose, event -> {
            follower.ifPresent(DocumentFollower::dispose);
            follower = Optional.empty();
            label = Optional.empty();
        });
        made.getDisplay().asyncExec(this::follow);
    }

    private void follow() {
        IWorkbenchPage page = window.getActivePage();
        if (page != null && follower.isEmpty() && label.isPresent()) {
            follower = Optional.of(new DocumentFollower(page, new DocumentListener() {

                @Override
                public void checked(CheckResult result) {
                    show();
                }

                @Override
                public void stateChanged() {
                    show();
                }
            }, document -> show()));
            show();
        }
    }

    private void show() {
        String text = follower.flatMap(DocumentFollower::document).map(CheckItem::state).orElse("");
        label.filter(shown -> !shown.isDisposed() && !text.equals(shown.getText())).ifPresent(shown -> StatusLayout.say(shown, text));
    }

    private static String state(ProjectDocument document) {
        if (document.checkProblem().isPresent()) {
            return Messages.get("check.problem", document.checkProblem().get());
        }
        if (document.isChecking() || document.lastResult().isEmpty()) {
            return Messages.get("check.running", document.checkPercent());
        }
        if (document.isCheckStopped()) {
            return Messages.get("check.stopped");
        }
        return OutcomeTexts.counts(document.lastResult().get().counts());
    }
}
