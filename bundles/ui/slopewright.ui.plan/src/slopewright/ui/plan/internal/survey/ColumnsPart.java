package slopewright.ui.plan.internal.survey;

import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import slopewright.exchange.survey.TableForm;
import slopewright.exchange.survey.TablePreview;
import slopewright.ui.plan.internal.Messages;

/** Asks how a table is read: for each of its columns, with the first values in it, what it holds. */
final class ColumnsPart extends Composite {

    private static final int HEIGHT = 190;
    private static final int SHOWN_VALUES = 3;

    private final SurveyChoices choices;
    private final TablePreview table;
    private final Runnable changed;
    private final Map<String, Combo> meanings = new LinkedHashMap<>();
    private final Combo separator;
    private final Combo encoding;
    private final Combo decimals;
    private final Button feet;

    /**
     * Makes the part.
     *
     * @param parent  a grid
     * @param choices the choices, with a table
     * @param changed is called after each change
     */
    ColumnsPart(Composite parent, SurveyChoices choices, Runnable changed) {
        super(parent, SWT.NONE);
        this.choices = choices;
        this.table = choices.table().orElseThrow();
        this.changed = changed;
        TableForm form = choices.form().orElseThrow();
        GridLayoutFactory.fillDefaults().numColumns(4).applyTo(this);
        List<String> separators = Stream.of("comma", "semicolon", "tab", "bar").map(key -> Messages.get("import.separator." + key))
                .toList();
        separator = combo("import.separator", separators, SurveyChoices.SEPARATORS.indexOf(form.separator()));
        encoding = combo("import.encoding", SurveyChoices.ENCODINGS.stream().map(Charset::displayName).toList(),
                SurveyChoices.ENCODINGS.indexOf(form.encoding()));
        decimals = combo("import.decimals", List.of(Messages.get("import.decimals.point"), Messages.get("import.decimals.comma")),
                form.decimalComma() ? 1 : 0);
        feet = new Button(this, SWT.CHECK);
        feet.setText(Messages.get("import.feet"));
        feet.setSelection(form.feet());
        feet.addListener(SWT.Selection, event -> choose());
        GridDataFactory.fillDefaults().span(2, 1).applyTo(feet);
        columns(form);
    }

    private Combo combo(String key, List<String> items, int first) {
        new Label(this, SWT.NONE).setText(Messages.get(key));
        return combo(this, key, items, first);
    }

    private Combo combo(Composite parent, String key, List<String> items, int first) {
        Combo combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setItems(items.toArray(String[]::new));
        combo.select(first);
        combo.setData("question", key);
        combo.addListener(SWT.Selection, event -> choose());
        return combo;
    }

    private void columns(TableForm form) {
        ScrolledComposite room = new ScrolledComposite(this, SWT.V_SCROLL | SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, true).span(4, 1).hint(SWT.DEFAULT, HEIGHT).applyTo(room);
        Composite grid = new Composite(room, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(3).applyTo(grid);
        List<String> words = Stream.concat(Stream.of(Messages.get("import.left-out")), TableForm.MEANINGS.stream()
                .map(meaning -> Messages.get("import.as." + meaning))).toList();
        for (int i = 0; i < table.columns().size(); i++) {
            String column = table.columns().get(i);
            int at = i;
            new Label(grid, SWT.NONE).setText(column.replace("&", "&&"));
            Label values = new Label(grid, SWT.NONE);
            values.setText(String.join("   ", table.rows().stream().limit(SHOWN_VALUES).map(row -> row.get(at).strip().replace("&", "&&"))
                    .toList()));
            GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(values);
            int first = 1 + TableForm.MEANINGS.indexOf(form.columns().getOrDefault(column, ""));
            meanings.put(column, combo(grid, "column." + column, words, first));
        }
        grid.setSize(grid.computeSize(SWT.DEFAULT, SWT.DEFAULT));
        room.setContent(grid);
        room.setExpandHorizontal(true);
    }

    private void choose() {
        Map<String, String> taken = new LinkedHashMap<>();
        List<String> known = new ArrayList<>(TableForm.MEANINGS);
        meanings.forEach((column, combo) -> {
            int chosen = combo.getSelectionIndex();
            taken.put(column, chosen < 1 ? "" : known.get(chosen - 1));
        });
        choices.choose(new TableForm(SurveyChoices.SEPARATORS.get(Math.max(0, separator.getSelectionIndex())),
                decimals.getSelectionIndex() == 1, feet.getSelection(),
                SurveyChoices.ENCODINGS.get(Math.max(0, encoding.getSelectionIndex())), taken));
        changed.run();
    }
}
