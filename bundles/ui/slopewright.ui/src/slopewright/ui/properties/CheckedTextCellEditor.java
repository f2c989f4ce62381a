package slopewright.ui.properties;

import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.jface.window.DefaultToolTip;
import org.eclipse.jface.window.ToolTip;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import slopewright.ui.theme.ScreenTheme;

/** A text cell that says below itself, while the user types, why what was typed cannot be taken. */
public final class CheckedTextCellEditor extends TextCellEditor {

    private static final Color WRONG_ON_LIGHT = new Color(178, 34, 34);
    private static final Color WRONG_ON_DARK = new Color(255, 128, 114);

    private DefaultToolTip reason;

    /** Makes the editor of a cell. */
    public CheckedTextCellEditor(Composite parent) {
        super(parent);
    }

    @Override
    protected Control createControl(Composite parent) {
        Control control = super.createControl(parent);
        reason = new DefaultToolTip(control, ToolTip.NO_RECREATE, true);
        reason.setHideOnMouseDown(false);
        text.addListener(SWT.Modify, event -> show());
        text.addListener(SWT.FocusOut, event -> reason.hide());
        text.addListener(SWT.Hide, event -> reason.hide());
        return control;
    }

    private void show() {
        String wrong = getValidator() == null ? null : getValidator().isValid(text.getText());
        boolean isWrong = wrong != null && !wrong.isEmpty();
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
