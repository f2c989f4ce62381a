package slopewright.ui.elements;

import org.eclipse.jface.viewers.ComboBoxCellEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;

/** A cell with a list of choices whose value is the text: typed, as its beginning too, or taken from the list. */
final class ChoiceCellEditor extends ComboBoxCellEditor {

    ChoiceCellEditor(Composite parent) {
        super(parent, new String[0], SWT.NONE);
    }

    private CCombo combo() {
        return (CCombo) getControl();
    }

    @Override
    protected Object doGetValue() {
        return combo().getText();
    }

    @Override
    protected void doSetValue(Object value) {
        combo().setText(String.valueOf(value));
    }

    @Override
    protected void doSetFocus() {
        super.doSetFocus();
        combo().setSelection(new Point(0, combo().getText().length()));
    }
}
