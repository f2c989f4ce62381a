package slopewright.ui.properties;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

import slopewright.edit.EditException;
import slopewright.edit.KeepReadBack;
import slopewright.evaluation.ReadBacks;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.util.KeptValues;
import slopewright.ui.AccessibleName;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.theme.TypeScale;

/**
 * Asks which elements a second person held against the sheets that they come from: all that are read back stand in a list with their
 * state, and the entries of the one that is looked at beside it, for reading aloud.
 */
public final class ReadBackDialog extends TitleAreaDialog {

    private static final int LIST_WIDTH = 520;
    private static final int ENTRIES_WIDTH = 330;
    private static final int HEIGHT = 330;
    private static final int DATE_WIDTH = 110;

    private final Project project;
    private final LocalDate today;
    private final Set<Identified> ticked = new LinkedHashSet<>();
    private final List<Identified> elements;
    private Table list;
    private StyledText entries;
    private Text name;
    private Text date;
    private KeepReadBack edit;

    /**
     * Makes the dialog.
     *
     * @param shell   the window
     * @param project the project
     * @param first   what is ticked at first; where nothing is, all that is not read back as it stands
     * @param today   the day that is kept unless another is typed
     */
    public ReadBackDialog(Shell shell, Project project, Collection<? extends Identified> first, LocalDate today) {
        super(shell);
        this.project = project;
        this.today = today;
        elements = ReadBacks.elements(project);
        first.forEach(element -> ReadBacks.holder(element).ifPresent(ticked::add));
        if (ticked.isEmpty()) {
            elements.stream().filter(isOpen()).forEach(ticked::add);
        }
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** Asks, and keeps what is answered as one edit. */
    public static void ask(Shell shell, ProjectDocument document, Collection<? extends Identified> first) {
        ReadBackDialog dialog = new ReadBackDialog(shell, document.project(), first, LocalDate.now());
        if (dialog.open() == Window.OK) {
            document.history().perform(dialog.edit());
        }
    }

    private Predicate<Identified> isOpen() {
        Map<String, ReadBack> known = ReadBacks.byElement(project);
        return element -> ReadBacks.state(known, element) != ReadBacks.State.SAME;
    }

    /** Returns the edit that keeps what was answered. */
    public KeepReadBack edit() {
        return edit;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        getShell().setText(PropertyTexts.get("readBack.title"));
        setTitle(PropertyTexts.get("readBack.title"));
        setMessage(PropertyTexts.get("readBack.hint"));
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(area);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        list = new Table(area, SWT.CHECK | SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        AccessibleName.give(list, getShell().getText());
        list.setHeaderVisible(true);
        column("readBack.element", 300);
        column("readBack.state", 210);
        GridDataFactory.fillDefaults().grab(true, true).hint(LIST_WIDTH, HEIGHT).applyTo(list);
        Map<String, ReadBack> known = ReadBacks.byElement(project);
        elements.forEach(element -> row(element, known));
        list.addListener(SWT.Selection, event -> chosen((TableItem) event.item));
        entries = new StyledText(area, SWT.BORDER | SWT.READ_ONLY | SWT.V_SCROLL | SWT.H_SCROLL);
        AccessibleName.give(entries, getShell().getText());
        entries.setCaret(null);
        GridDataFactory.fillDefaults().grab(true, true).hint(ENTRIES_WIDTH, HEIGHT).applyTo(entries);
        Composite row = new Composite(area, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(6).applyTo(row);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(row);
        tick(row, "readBack.all", element -> true);
        tick(row, "readBack.open", isOpen());
        tick(row, "readBack.none", element -> false);
        Composite who = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).applyTo(who);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(who);
        new Label(who, SWT.NONE).setText(PropertyTexts.get("readBack.who"));
        name = new Text(who, SWT.BORDER);
        name.addListener(SWT.Modify, event -> review());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(name);
        new Label(who, SWT.NONE).setText(PropertyTexts.get("readBack.date"));
        date = new Text(who, SWT.BORDER);
        date.setText(today.toString());
        date.addListener(SWT.Modify, event -> review());
        GridDataFactory.fillDefaults().hint(DATE_WIDTH, SWT.DEFAULT).applyTo(date);
        name.setFocus();
        return area;
    }

    private void column(String key, int width) {
        TableColumn column = new TableColumn(list, SWT.NONE);
        column.setText(PropertyTexts.get(key));
        column.setWidth(TypeScale.px(width));
    }

    private void row(Identified element, Map<String, ReadBack> known) {
        TableItem item = new TableItem(list, SWT.NONE);
        ReadBack kept = known.get(element.getId());
        String state = "readBack." + ReadBacks.state(known, element).name().toLowerCase(Locale.ROOT);
        item.setText(new String[] {MessageTexts.path(element), kept == null ? PropertyTexts.get(state)
                : PropertyTexts.get(state, kept.getPerson(), kept.getDate())});
        item.setData(element);
        item.setChecked(ticked.contains(element));
    }

    private void tick(Composite row, String key, Predicate<Identified> wanted) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(PropertyTexts.get(key));
        button.addListener(SWT.Selection, event -> {
            Stream.of(list.getItems()).forEach(item -> item.setChecked(wanted.test((Identified) item.getData())));
            review();
        });
    }

    private void chosen(TableItem item) {
        entries.setText(String.join("\n", ReadBackEntries.of((Identified) item.getData())));
        review();
    }

    private void review() {
        List<Identified> wanted = new ArrayList<>(Stream.of(list.getItems()).filter(TableItem::getChecked)
                .map(item -> (Identified) item.getData()).toList());
        String fault = null;
        try {
            LocalDate day = LocalDate.parse(date.getText().strip());
            edit = KeepReadBack.of(wanted, name.getText(), day);
            fault = day.isAfter(today) ? PropertyTexts.get("readBack.future", day)
                    : KeptValues.alien(name.getText()).map(letter -> PropertyTexts.get("field.character", letter)).orElse(null);
        } catch (EditException e) {
            fault = MessageTexts.reason(e);
        } catch (DateTimeParseException e) {
            fault = PropertyTexts.get("readBack.bad-date");
        }
        setErrorMessage(fault);
        Button ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(fault == null);
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        super.createButtonsForButtonBar(parent);
        getButton(IDialogConstants.OK_ID).setEnabled(false);
    }
}
