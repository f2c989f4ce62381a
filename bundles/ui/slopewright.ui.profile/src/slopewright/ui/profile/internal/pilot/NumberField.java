package slopewright.ui.profile.internal.pilot;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import slopewright.ui.profile.internal.Messages;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** A number that is typed, with its name and unit; taken over by Enter or when the field is left, brought back by Escape. */
public final class NumberField {

    private static final int WIDTH = 74;

    private final Label label;
    private final Text text;
    private final String key;
    private final Quantity quantity;
    private final double step;
    private final DoubleFunction<Optional<String>> taker;
    private final Consumer<Optional<String>> problem;
    private String shown = "";

    /**
     * Makes a field.
     *
     * @param parent   where it stands, in two columns
     * @param key      key of its name
     * @param quantity what it is
     * @param step     to what it is rounded when shown, in the unit of the model
     * @param taker    takes a typed number; returns why it cannot, empty where it can
     * @param problem  is told what is wrong with what is typed, empty where nothing is
     */
    NumberField(Composite parent, String key, Quantity quantity, double step, DoubleFunction<Optional<String>> taker,
            Consumer<Optional<String>> problem) {
        this.key = key;
        this.quantity = quantity;
        this.step = step;
        this.taker = taker;
        this.problem = problem;
        label = new Label(parent, SWT.NONE);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).grab(true, false).applyTo(label);
        text = Named.name(new Text(parent, SWT.BORDER | SWT.RIGHT), Messages.get(key));
        text.setToolTipText(Messages.get(key + ".tip"));
        GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(text);
        text.addListener(SWT.DefaultSelection, event -> take());
        text.addListener(SWT.FocusOut, event -> take());
        text.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.ESC) {
                text.setText(shown);
                problem.accept(Optional.empty());
                event.doit = false;
            }
        });
        relabel();
    }

    private void relabel() {
        String unit = quantity == Quantity.NUMBER ? "s" : QuantityFormat.preferred().unit(quantity);
        String name = Messages.get(key) + (unit.isEmpty() ? "" : " (" + unit + ")");
        if (!name.equals(label.getText())) {
            label.setText(name);
        }
    }

    private void take() {
        if (text.getText().equals(shown)) {
            return;
        }
        try {
            Optional<String> refused = taker.apply(QuantityFormat.preferred().read(text.getText(), quantity));
            if (refused.isEmpty()) {
                shown = text.getText();
            }
            problem.accept(refused);
        } catch (IllegalArgumentException e) {
            problem.accept(Optional.of(String.valueOf(e.getMessage())));
        }
    }

    /** Shows a number, in the unit of the model, unless something is being typed. */
    void show(double value) {
        relabel();
        boolean typing = text.isFocusControl() && !text.getText().equals(shown);
        String fresh = QuantityFormat.preferred().show(Math.rint(value / step) / Math.rint(1 / step), quantity);
        if (!typing && !fresh.equals(text.getText())) {
            text.setText(fresh);
            shown = fresh;
        }
    }

    /** Returns its text field. */
    public Text text() {
        return text;
    }
}
