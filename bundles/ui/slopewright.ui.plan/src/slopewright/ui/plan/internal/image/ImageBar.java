package slopewright.ui.plan.internal.image;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import slopewright.ui.plan.internal.Messages;

/** The strip above a plan that leads through the scaling of a picture; hidden while none is scaled. */
public final class ImageBar extends Composite {

    private static final int FIELD_PX = 230;

    private final Label step;
    private final Text place;
    private final Label problem;
    private Consumer<String> typed = text -> {
        // nobody asks yet
    };
    private Runnable cancelled = () -> {
        // nothing to cancel yet
    };

    /** Makes the strip; its parent lays it out by a grid. */
    public ImageBar(Composite parent) {
        super(parent, SWT.NONE);
        setLayout(new GridLayout(4, false));
        step = new Label(this, SWT.WRAP);
        step.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        place = new Text(this, SWT.BORDER | SWT.SINGLE);
        GridData field = new GridData(SWT.FILL, SWT.CENTER, false, false);
        field.widthHint = FIELD_PX;
        place.setLayoutData(field);
        Button cancel = new Button(this, SWT.PUSH);
        cancel.setText(Messages.get("image.cancel"));
        problem = new Label(this, SWT.WRAP);
        problem.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, 4, 1));
        place.addListener(SWT.DefaultSelection, event -> typed.accept(place.getText()));
        place.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.ESC) {
                cancelled.run();
            }
        });
        place.getAccessible().addAccessibleListener(new AccessibleAdapter() {

            @Override
            public void getName(AccessibleEvent event) {
                event.result = step.getText();
            }
        });
        cancel.addListener(SWT.Selection, event -> cancelled.run());
        setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        close();
    }

    /** Sets what happens when coordinates are typed and when the scaling is cancelled. */
    void whenUsed(Consumer<String> onTyped, Runnable onCancelled) {
        typed = onTyped;
        cancelled = onCancelled;
    }

    /**
     * Shows a step.
     *
     * @param text   what to do
     * @param asked  whether coordinates can be typed
     * @param format how coordinates are typed
     */
    void show(String text, boolean asked, String format) {
        step.setText(text);
        problem.setText("");
        place.setText("");
        place.setMessage(format);
        exclude(place, !asked);
        exclude(problem, true);
        exclude(this, false);
        getParent().layout(true, true);
    }

    /** Says what was wrong with what was typed. */
    void problem(String text) {
        problem.setText(text);
        exclude(problem, false);
        getParent().layout(true, true);
    }

    /** Hides the strip. */
    void close() {
        exclude(this, true);
        getParent().layout(true, true);
    }

    /** Returns the field for coordinates. */
    public Text field() {
        return place;
    }

    private static void exclude(Control control, boolean hidden) {
        ((GridData) control.getLayoutData()).exclude = hidden;
        control.setVisible(!hidden);
    }
}
