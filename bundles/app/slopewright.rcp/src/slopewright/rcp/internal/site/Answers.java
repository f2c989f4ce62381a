package slopewright.rcp.internal.site;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Makes the rows of the wizard: a label, a control, and room for a remark. What is typed replaces what a text that is come to held. */
final class Answers {

    private static final int CONTROL_WIDTH = 170;

    private Answers() {
    }

    static Label label(Composite parent, String words) {
        Label label = new Label(parent, SWT.NONE);
        label.setText(words);
        return label;
    }

    static Text text(Composite parent, String words, String first, Consumer<String> typed) {
        label(parent, words);
        Text text = new Text(parent, SWT.BORDER);
        text.setText(first);
        text.addListener(SWT.Modify, event -> typed.accept(text.getText()));
        text.addListener(SWT.FocusIn, event -> text.selectAll());
        GridDataFactory.swtDefaults().hint(CONTROL_WIDTH, SWT.DEFAULT).applyTo(text);
        return text;
    }

    /** Returns words in one line, for they are a name: what is pasted may have several. */
    static String line(String typed) {
        return typed.strip().replaceAll("\\h*\\R\\s*", " ");
    }

    static Combo combo(Composite parent, String words, List<String> choices, int first, Consumer<Integer> chosen) {
        label(parent, words);
        Combo combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setItems(choices.toArray(String[]::new));
        combo.select(first);
        combo.addListener(SWT.Selection, event -> chosen.accept(combo.getSelectionIndex()));
        GridDataFactory.swtDefaults().hint(CONTROL_WIDTH, SWT.DEFAULT).applyTo(combo);
        return combo;
    }
}
