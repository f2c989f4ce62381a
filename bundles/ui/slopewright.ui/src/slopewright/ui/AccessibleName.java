package slopewright.ui;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;

/** Gives controls a name that a screen reader speaks. */
public final class AccessibleName extends AccessibleAdapter {

    private static final List<Class<?>> OWN = List.of(Text.class, Combo.class, Spinner.class, Scale.class);

    private final String name;

    private AccessibleName(String name) {
        this.name = name;
    }

    /**
     * Gives a control a name.
     *
     * @param control the control
     * @param name    what it is called
     */
    public static void give(Control control, String name) {
        control.getAccessible().addAccessibleListener(new AccessibleName(name));
        if (control instanceof Tree || control instanceof Table) {
            label(new Canvas((Composite) control, SWT.NO_FOCUS), control, name);
        } else if (OWN.stream().anyMatch(kind -> kind.isInstance(control)) && (control.getParent().getLayout() == null
                || control.getParent().getLayout() instanceof GridLayout)) {
            Canvas label = new Canvas(control.getParent(), SWT.NO_FOCUS);
            GridData nowhere = new GridData();
            nowhere.exclude = true;
            label.setLayoutData(nowhere);
            label(label, control, name);
        }
    }

    /**
     * A list or field is one of the desktop's own and asks nobody for its name, but it is told what it is labelled by; nobody needs to see
     * that. Only what the toolkit draws itself can be such a label and have a name.
     */
    private static void label(Canvas label, Control control, String name) {
        label.setVisible(false);
        label.getAccessible().addAccessibleListener(new AccessibleName(name));
        control.getAccessible().addRelation(ACC.RELATION_LABELLED_BY, label.getAccessible());
        label.getAccessible().addRelation(ACC.RELATION_LABEL_FOR, control.getAccessible());
    }

    @Override
    public void getName(AccessibleEvent event) {
        if (event.childID == ACC.CHILDID_SELF) {
            event.result = name;
        }
    }
}
