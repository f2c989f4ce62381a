package slopewright.ui.review.internal;

import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;

import slopewright.ui.AccessibleName;

/** The line above the findings: how it stands, which outcomes are shown, and words that rows must contain. */
public final class FindingsHead {

    private static final int SEARCH_WIDTH = 150;
    private static final int COLUMNS = 3;

    private final CLabel summary;
    private final Link restored;
    private final Combo filter;

    /**
     * Makes the line.
     *
     * @param parent   where it goes
     * @param tree     what it filters
     * @param takeBack what is done when the user prefers the saved file to the unsaved work that was brought back
     */
    public FindingsHead(Composite parent, FindingsTree tree, Runnable takeBack) {
        Composite head = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        GridLayoutFactory.fillDefaults().numColumns(COLUMNS).margins(6, 2).applyTo(head);
        summary = new CLabel(head, SWT.NONE);
        summary.setMargins(0, 0, 0, 0);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(60, SWT.DEFAULT).applyTo(summary);
        filter = new Combo(head, SWT.READ_ONLY);
        filter.setItems(Stream.of(OutcomeFilter.values()).map(OutcomeFilter::label).toArray(String[]::new));
        filter.select(0);
        filter.setToolTipText(Messages.get("findings.show"));
        AccessibleName.give(filter, Messages.get("findings.show"));
        filter.addListener(SWT.Selection, event -> tree.filter(OutcomeFilter.values()[filter.getSelectionIndex()]));
        Text search = new Text(head, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        SearchField.clearByEscape(search);
        search.setMessage(Messages.get("findings.search"));
        search.setToolTipText(Messages.get("findings.search.tip"));
        AccessibleName.give(search, Messages.get("findings.search.tip"));
        search.addListener(SWT.Modify, event -> tree.search(search.getText()));
        GridDataFactory.fillDefaults().hint(SearchField.width(search, SEARCH_WIDTH), SWT.DEFAULT).align(SWT.FILL, SWT.CENTER)
                .applyTo(search);
        restored = new Link(head, SWT.NONE);
        restored.addListener(SWT.Selection, event -> takeBack.run());
        GridDataFactory.fillDefaults().span(COLUMNS, 1).exclude(true).applyTo(restored);
        restored.setVisible(false);
    }

    /** Returns how it stands. */
    public String summary() {
        return summary.getText();
    }

    /** Says how it stands. */
    public void say(String text) {
        summary.setText(text);
        summary.setToolTipText(text);
    }

    /**
     * Says that unsaved work was brought back that can still be taken back.
     *
     * @param works of how many windows; 0 where there is none
     */
    public void offerSaved(int works) {
        boolean offered = works > 0;
        restored.setText(works > 1 ? Messages.get("findings.restored.several", works) : Messages.get("findings.restored"));
        if (restored.getVisible() != offered) {
            restored.setVisible(offered);
            GridDataFactory.fillDefaults().span(COLUMNS, 1).exclude(!offered).applyTo(restored);
            restored.getParent().getParent().getParent().layout(true, true);
        }
    }
}
