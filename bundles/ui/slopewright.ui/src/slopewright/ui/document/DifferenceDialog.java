package slopewright.ui.document;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

import slopewright.model.Project;
import slopewright.ui.properties.DifferenceTable;

/** Asks a question about two versions of a project, with what differs between them. */
public final class DifferenceDialog extends MessageDialog {

    private static final int WIDTH = 760;
    private static final int HEIGHT = 260;

    private final Sides sides;

    /**
     * Two versions.
     *
     * @param older  the older one
     * @param before what it is called
     * @param newer  the newer one
     * @param after  what it is called
     */
    public record Sides(Project older, String before, Project newer, String after) {
    }

    /**
     * Makes the dialog.
     *
     * @param shell    over which it opens
     * @param title    its title
     * @param question what is asked
     * @param sides    the versions
     * @param answers  the labels of the buttons; {@link #open()} returns which was chosen
     */
    public DifferenceDialog(Shell shell, String title, String question, Sides sides, String... answers) {
        super(shell, title, null, question, WARNING, 0, answers);
        this.sides = sides;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    @Override
    protected Control createCustomArea(Composite parent) {
        DifferenceTable table = new DifferenceTable(parent, sides.before(), sides.after());
        table.show(sides.older(), sides.newer());
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, HEIGHT).applyTo(table.control());
        return table.control();
    }
}
