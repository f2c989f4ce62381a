package slopewright.ui.profile.internal.section;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;

import slopewright.ui.profile.internal.Messages;

/** Says why there is no section and what to do, with a link that does it. */
public final class EmptyPage {

    private final Composite page;
    private final Link link;
    private Runnable action = () -> {
        // nothing yet
    };

    /** Makes a page without words. */
    public EmptyPage(Composite parent) {
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(12, 12).applyTo(page);
        link = new Link(page, SWT.WRAP);
        link.setVisible(false);
        link.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = link.getText().isEmpty() ? Messages.get("empty.name") : link.getText().replaceAll("</?a>", "");
            }
        });
        GridDataFactory.fillDefaults().grab(true, false).applyTo(link);
        link.addListener(SWT.Selection, event -> action.run());
    }

    /** Returns its control. */
    public Composite control() {
        return page;
    }

    /**
     * Says something.
     *
     * @param text      the text, with what does something between {@code <a>} and {@code </a>}
     * @param newAction what the link does
     */
    public void say(String text, Runnable newAction) {
        action = newAction;
        if (!text.equals(link.getText())) {
            link.setText(text);
            link.setVisible(!text.isEmpty());
            page.layout(true);
        }
    }

    /** Gives the keys to what it says. */
    public void focus() {
        link.setFocus();
    }

    /** Returns what it says. */
    public String text() {
        return link.getText();
    }
}
