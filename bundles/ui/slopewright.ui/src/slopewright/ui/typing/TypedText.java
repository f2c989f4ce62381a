package slopewright.ui.typing;

import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;

/** A field that is being typed into: what is cut, copied, pasted and deleted there is its text, and not the rows of the table. */
public final class TypedText {

    private final Text text;

    private TypedText(Text text) {
        this.text = text;
    }

    /** Returns the field that has the focus, empty where none has it. */
    public static Optional<TypedText> focused() {
        Control focus = Display.getCurrent().getFocusControl();
        return focus instanceof Text field && field.getEditable() ? Optional.of(new TypedText(field)) : Optional.empty();
    }

    /** Cuts what is selected. */
    public void cut() {
        text.cut();
    }

    /** Copies what is selected. */
    public void copy() {
        text.copy();
    }

    /** Pastes at the caret. */
    public void paste() {
        text.paste();
    }

    /** Selects everything. */
    public void selectAll() {
        text.selectAll();
    }

    /** Deletes what is selected, else the letter behind the caret. */
    public void delete() {
        Point selected = text.getSelection();
        if (selected.x == selected.y) {
            text.setSelection(selected.x, Math.min(text.getCharCount(), selected.x + 1));
        }
        text.insert("");
    }
}
