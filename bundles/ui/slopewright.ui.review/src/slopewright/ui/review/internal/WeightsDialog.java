package slopewright.ui.review.internal;

import java.util.EnumMap;
import java.util.Map;

import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;

import slopewright.checks.compare.Criterion;
import slopewright.ui.AccessibleName;

/** Asks how much each criterion counts in a comparison. */
public final class WeightsDialog extends TitleAreaDialog {
    private final Map<Criterion, Integer> weights = new EnumMap<>(Criterion.class);

    /** Makes the dialog with the weights as they are. */
    public WeightsDialog(Shell shell, Map<Criterion, Integer> now) {
        super(shell);
        weights.putAll(now);
        setHelpAvailable(false);
    }

    /** Returns the weights as they were chosen. */
    public Map<Criterion, Integer> weights() {
        return Map.copyOf(weights);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        getShell().setText(Messages.get("comparison.weights"));
        setTitle(Messages.get("comparison.weights"));
        setMessage(Messages.get("comparison.weights.hint", Criterion.MOST));
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 10).applyTo(area);
        for (Criterion criterion : Criterion.values()) {
            new Label(area, SWT.NONE).setText(OptionSheet.label(criterion));
            Spinner spinner = new Spinner(area, SWT.BORDER);
            spinner.setValues(weights.getOrDefault(criterion, 0), 0, Criterion.MOST, 0, 1, 1);
            AccessibleName.give(spinner, OptionSheet.label(criterion));
            spinner.addListener(SWT.Modify, event -> weights.put(criterion, spinner.getSelection()));
            GridDataFactory.swtDefaults().applyTo(spinner);
        }
        return area;
    }
}
