package slopewright.ui.plan.internal;

import java.nio.file.Path;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Listener;

import slopewright.model.io.ProjectFileException;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.DifferenceDialog;
import slopewright.ui.document.FileWatch;
import slopewright.ui.document.FileWatch.State;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.properties.DifferenceTable;

/**
 * A strip above the plan that is there only while another program has changed the file of the project: it says so, shows what differs,
 * and takes it over or leaves it. It looks when the window comes to the front and every few seconds.
 */
public final class FileBar extends Composite {

    /** How often the file is looked at, milliseconds. */
    public static final int LOOK_AGAIN_MS = 2000;

    private final ProjectDocument document;
    private final FileWatch watch;
    private final Label text;
    private final Button look;
    private final Button take;
    private final Button keep;
    private final Listener activated = event -> look();
    private FileWatch.Found shown;

    /** Makes the strip; its parent lays it out by a grid. */
    public FileBar(Composite parent, ProjectDocument document) {
        super(parent, SWT.NONE);
        this.document = document;
        this.watch = new FileWatch(document);
        setLayout(new GridLayout(4, false));
        setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        text = new Label(this, SWT.WRAP);
        text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        look = button("file.look", this::showDifference);
        take = button("file.take", this::takeOver);
        keep = button("file.keep", () -> {
            watch.accept();
            look();
        });
        exclude(this, true);
        getShell().addListener(SWT.Activate, activated);
        addListener(SWT.Dispose, event -> parent.getShell().removeListener(SWT.Activate, activated));
        lookLater();
    }

    private Button button(String key, Runnable work) {
        Button button = new Button(this, SWT.PUSH);
        button.setText(Messages.get(key));
        button.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false));
        button.addListener(SWT.Selection, event -> work.run());
        return button;
    }

    private void lookLater() {
        getDisplay().timerExec(LOOK_AGAIN_MS, () -> {
            if (!isDisposed()) {
                look();
                lookLater();
            }
        });
    }

    /** Looks at the file, and shows or hides the strip. */
    public void look() {
        FileWatch.Found found = watch.look();
        if (found == shown) {
            return;
        }
        shown = found;
        String name = document.path().map(Path::getFileName).map(String::valueOf).orElse("");
        text.setText(switch (found.state()) {
            case SAME -> "";
            case CHANGED -> Messages.get("file.changed", name, DifferenceTable.count(document.project(), found.version().orElseThrow()));
            case GONE -> Messages.get("file.gone", name);
            case UNREADABLE -> Messages.get("file.unreadable", name, found.problem());
        });
        exclude(look, found.state() != State.CHANGED);
        exclude(take, found.state() != State.CHANGED);
        exclude(keep, found.state() == State.SAME);
        exclude(this, found.state() == State.SAME);
        getParent().layout(true, true);
    }

    /** Returns what the strip says, nothing while it is not there. */
    public String text() {
        return text.getText();
    }

    private void showDifference() {
        int answer = new DifferenceDialog(getShell(), Messages.get("file.look"), Messages.get("file.question"),
                new DifferenceDialog.Sides(document.project(), Messages.get("save.here"), shown.version().orElseThrow(),
                        Messages.get("save.file-has")),
                Messages.get("file.take"), Messages.get("file.keep")).open();
        if (answer == 0) {
            takeOver();
        } else if (answer == 1) {
            watch.accept();
            look();
        }
    }

    private void takeOver() {
        try {
            document.takeOver(Messages.get("file.taken"));
        } catch (ProjectFileException e) {
            MessageDialog.openError(getShell(), Messages.get("file.taken"), MessageTexts.reason(e));
        }
        look();
    }

    private static void exclude(Control control, boolean hidden) {
        ((GridData) control.getLayoutData()).exclude = hidden;
        control.setVisible(!hidden);
    }
}
