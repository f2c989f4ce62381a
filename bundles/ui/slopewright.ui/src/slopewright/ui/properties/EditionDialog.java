package slopewright.ui.properties;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import slopewright.ui.AccessibleName;

/** Asks whether a project is to move to the newer edition, with every outcome that would differ. */
final class EditionDialog extends MessageDialog {

    private static final int WIDTH = 760;
    private static final int HEIGHT = 260;

    private final String lines;

    EditionDialog(Shell shell, String title, String question, String lines) {
        super(shell, title, null, question, WARNING, 1, PropertyTexts.get("edition.move"), PropertyTexts.get("edition.stay"));
        this.lines = lines;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    @Override
    protected Control createCustomArea(Composite parent) {
        Text text = new Text(parent, SWT.BORDER | SWT.MULTI | SWT.READ_ONLY | SWT.V_SCROLL | SWT.H_SCROLL);
        AccessibleName.give(text, getShell().getText());
        text.setText(lines);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, HEIGHT).applyTo(text);
        return text;
    }
}
