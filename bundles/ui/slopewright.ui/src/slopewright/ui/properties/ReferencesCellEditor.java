package slopewright.ui.properties;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.DialogCellEditor;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.dialogs.ListSelectionDialog;

import slopewright.model.Identified;
import slopewright.ui.MessageTexts;

/** Lets the user tick the elements that another one refers to. */
final class ReferencesCellEditor extends DialogCellEditor {

    private final String title;
    private final List<Identified> candidates;

    ReferencesCellEditor(Composite parent, String title, List<Identified> candidates) {
        super(parent);
        this.title = title;
        this.candidates = candidates;
    }

    static String text(Object value) {
        List<?> elements = value instanceof List<?> list ? list : List.of();
        return elements.stream().map(element -> MessageTexts.label((Identified) element)).collect(Collectors.joining(", "));
    }

    @Override
    protected Object openDialogBox(Control parent) {
        LabelProvider labels = new LabelProvider() {
            @Override
            public String getText(Object element) {
                return MessageTexts.label((Identified) element);
            }
        };
        ListSelectionDialog dialog = ListSelectionDialog.of(candidates.toArray()).title(title).message(PropertyTexts.get("field.tick"))
                .contentProvider(ArrayContentProvider.getInstance()).labelProvider(labels)
                .preselect(getValue() instanceof List<?> list ? list.toArray() : new Object[0]).create(parent.getShell());
        return dialog.open() == Window.OK ? Arrays.asList(dialog.getResult()) : null;
    }

    @Override
    protected void updateContents(Object value) {
        super.updateContents(text(value));
    }
}
