package slopewright.ui.elements;

import java.util.function.Consumer;

import org.eclipse.jface.viewers.ColumnViewerEditorDeactivationEvent;
import org.eclipse.jface.viewers.ComboBoxCellEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;

/** A cell with a list of choices whose value is the text: typed, as its beginning too, or taken from the list. */
final class ChoiceCellEditor extends ComboBoxCellEditor {

    private Consumer<String> refusal = why -> {
        // nobody asked
    };

    ChoiceCellEditor(Composite parent) {
        super(parent, new String[0], SWT.NONE);
    }

    /** Names who is told why what was typed was not taken, where the cell is left with it. */
    void onRefusal(Consumer<String> told) {
        refusal = told;
    }

    /** Viewers leave a cell without asking for a value that is not valid. */
    @Override
    protected void deactivate(ColumnViewerEditorDeactivationEvent event) {
        String wrong = getValidator() == null ? null : getValidator().isValid(combo().getText());
        if (event.eventType == ColumnViewerEditorDeactivationEvent.EDITOR_SAVED && isActivated() && wrong != null) {
            refusal.accept(wrong);
        }
        super.deactivate(event);
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
