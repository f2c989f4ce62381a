package slopewright.ui.properties;

import java.util.function.BiConsumer;

import org.eclipse.jface.viewers.ColumnViewerEditorDeactivationEvent;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.jface.window.DefaultToolTip;
import org.eclipse.jface.window.ToolTip;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import slopewright.ui.theme.ScreenTheme;

/**
 * A text cell that says below itself, while the user types, why what was typed cannot be taken. Enter does not close it then; where it is
 * left all the same, it tells whoever asked what was not taken.
 */
public final class CheckedTextCellEditor extends TextCellEditor {

    private static final Color WRONG_ON_LIGHT = new Color(178, 34, 34);
    private static final Color WRONG_ON_DARK = new Color(255, 128, 114);

    private DefaultToolTip reason;
    private BiConsumer<String, String> refusal = (typed, why) -> {
        // nobody asked
    };

    /** Makes the editor of a cell. */
    public CheckedTextCellEditor(Composite parent) {
        super(parent);
    }

    /** Names who is told what was typed and why it was not taken, where the cell is left with it. */
    public void onRefusal(BiConsumer<String, String> told) {
        refusal = told;
    }

    @Override
    protected Control createControl(Composite parent) {
        Control control = super.createControl(parent);
        reason = new DefaultToolTip(control, ToolTip.RECREATE, true);
        reason.setHideOnMouseDown(false);
        text.addListener(SWT.Modify, event -> show());
        text.addListener(SWT.FocusOut, event -> reason.hide());
        text.addListener(SWT.Hide, event -> reason.hide());
        return control;
    }

    private String wrong() {
        String wrong = getValidator() == null ? null : getValidator().isValid(text.getText());
        return wrong == null ? "" : wrong;
    }

    @Override
    protected void handleDefaultSelection(SelectionEvent event) {
        if (wrong().isEmpty()) {
            super.handleDefaultSelection(event);
        } else {
            show();
        }
    }

    @Override
    protected void focusLost() {
        tell();
        super.focusLost();
    }

    /** Viewers leave a cell without asking for a value that is not valid. */
    @Override
    protected void deactivate(ColumnViewerEditorDeactivationEvent event) {
        if (event.eventType == ColumnViewerEditorDeactivationEvent.EDITOR_SAVED) {
            tell();
        }
        super.deactivate(event);
    }

    private void tell() {
        if (isActivated() && !wrong().isEmpty()) {
            refusal.accept(text.getText(), wrong());
        }
    }

    private void show() {
        String wrong = wrong();
        boolean isWrong = !wrong.isEmpty();
        text.setForeground(isWrong ? ScreenTheme.isDark() ? WRONG_ON_DARK : WRONG_ON_LIGHT : text.getParent().getForeground());
        text.setToolTipText(isWrong ? wrong : null);
        if (isWrong && text.isVisible()) {
            reason.setText(wrong);
            reason.show(new Point(0, text.getSize().y));
        } else {
            reason.hide();
        }
    }

    @Override
    public void deactivate() {
        if (reason != null) {
            reason.hide();
        }
        super.deactivate();
    }
}
