package slopewright.rcp.internal;

import org.eclipse.jface.action.ContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;

/** Keeps the caution in sight in the status line; a click shows it at full length. */
public final class CautionItem extends ContributionItem {

    private final IAction showAll;

    /**
     * Creates the item.
     *
     * @param showAll shows the cautions at full length
     */
    public CautionItem(IAction showAll) {
        super("slopewright.rcp.caution");
        this.showAll = showAll;
    }

    /** Returns the caution in one line. */
    public static String text() {
        return Messages.get("caution.line");
    }

    @Override
    public void fill(Composite parent) {
        CLabel label = StatusLayout.label(parent);
        label.setText(text());
        label.setToolTipText(Messages.get("caution.show-all"));
        label.setImage(PlatformUI.getWorkbench().getSharedImages().getImage(ISharedImages.IMG_OBJS_WARN_TSK));
        label.addListener(SWT.MouseUp, event -> showAll.run());
        // the type of the window is known only after the label was made
        label.getDisplay().asyncExec(() -> {
            if (!label.isDisposed()) {
                parent.layout();
            }
        });
    }
}
