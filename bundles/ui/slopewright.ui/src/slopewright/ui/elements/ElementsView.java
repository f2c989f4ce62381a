package slopewright.ui.elements;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

import slopewright.edit.AddChild;
import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.ui.AccessibleName;
import slopewright.ui.LateView;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.theme.TypeScale;
import slopewright.ui.units.QuantityFormat;

/**
 * Everything that a project holds, as tables: on the left the kinds of elements, on the right those of the chosen kind. They are made,
 * typed, pasted from a spreadsheet, copied, duplicated and removed here, one step of undo each.
 */
public final class ElementsView extends LateView {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.elements";

    private final List<ElementKind> kinds = ElementKind.all();
    private DocumentFollower follower;
    private Table list;
    private Combo owners;
    private Button add;
    private Button duplicate;
    private Button remove;
    private Button readBack;
    private Text filter;
    private Label said;
    private ElementTable table;
    private ElementActions actions;
    private List<Identified> offered = List.of();
    private int kind;
    private boolean behind;
    private boolean refused;
    private FirstLetters letters;

    private final class Follow implements DocumentListener {

        @Override
        public void changed(Set<String> elementIds) {
            updateSoon();
        }
    }

    @Override
    protected void fill(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        list = new Table(sash, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        AccessibleName.give(list, getPartName());
        new TableColumn(list, SWT.NONE).setWidth(TypeScale.px(215));
        new TableColumn(list, SWT.RIGHT).setWidth(TypeScale.px(48));
        kinds.forEach(each -> new TableItem(list, SWT.NONE).setText(each.label()));
        list.select(0);
        list.addListener(SWT.Selection, event -> choose(list.getSelectionIndex()));
        letters = FirstLetters.install(list, () -> kinds.stream().map(ElementKind::label).toList(), index -> {
            list.select(index);
            list.showSelection();
            choose(index);
        });
        Composite right = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(right);
        createHead(right);
        table = new ElementTable(right, this::perform, this::refuse);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table.viewer().getControl());
        AccessibleName.give(table.viewer().getControl(), getPartName());
        table.viewer().addSelectionChangedListener(event -> enable());
        table.viewer().getControl().addListener(SWT.KeyDown, this::key);
        list.addListener(SWT.KeyDown, this::key);
        said = new Label(right, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).indent(6, 2).applyTo(said);
        sash.setWeights(24, 76);
        actions = new ElementActions(this, getViewSite().getActionBars());
        actions.menu(table.viewer().getControl());
        getSite().setSelectionProvider(table.viewer());
        follower = new DocumentFollower(getSite().getPage(), new Follow(), document -> update());
        update();
    }

    private void createHead(Composite right) {
        Composite head = new Composite(right, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        GridLayoutFactory.fillDefaults().numColumns(7).margins(6, 2).applyTo(head);
        add = button(head, "elements.add", this::add);
        owners = new Combo(head, SWT.READ_ONLY);
        owners.setToolTipText(Messages.get("elements.owner.tip"));
        GridDataFactory.fillDefaults().hint(150, SWT.DEFAULT).applyTo(owners);
        duplicate = button(head, "elements.duplicate", this::duplicate);
        remove = button(head, "elements.remove", this::remove);
        button(head, "elements.paste", () -> actions.paste());
        readBack = button(head, "elements.read-back", () -> actions.readBack());
        filter = new Text(head, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage(Messages.get("elements.filter"));
        GridDataFactory.fillDefaults().grab(true, false).hint(120, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(filter);
        filter.addListener(SWT.Modify, event -> {
            table.filter(filter.getText());
            say(table.count());
        });
    }

    private static Button button(Composite parent, String key, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(Messages.get(key));
        button.setToolTipText(Messages.get(key + ".tip"));
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    /** Insert adds, Ctrl and D makes a copy, F3 shows the row in the plan; Enter in the list of kinds opens the first row, or makes one. */
    private void key(Event event) {
        if (event.keyCode == SWT.INSERT) {
            add();
        } else if (event.widget == list && (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR)) {
            event.doit = false;
            shown().stream().findFirst().ifPresentOrElse(table::begin, this::add);
        } else if (event.stateMask == SWT.MOD1 && event.keyCode == 'd') {
            duplicate();
        } else if (event.keyCode == SWT.F3) {
            actions.show();
        }
    }

    Optional<ProjectDocument> document() {
        return follower == null ? Optional.empty() : follower.document();
    }

    private Optional<Project> project() {
        return document().map(ProjectDocument::project);
    }

    /** Returns the kind that is shown. */
    public ElementKind kind() {
        return kinds.get(kind);
    }

    /** Shows a kind. */
    public void show(ElementKind wanted) {
        list.select(kinds.indexOf(wanted));
        choose(kinds.indexOf(wanted));
    }

    private void choose(int index) {
        if (index >= 0) {
            kind = index;
            filter.setText("");
            refused = false;
            update();
        }
    }

    /** A cell that is being typed into stays open while the edit before it is heard of. */
    private void updateSoon() {
        if (!behind && list != null && !list.isDisposed()) {
            behind = true;
            list.getDisplay().asyncExec(() -> {
                behind = false;
                if (!list.isDisposed()) {
                    update();
                }
            });
        }
    }

    private void update() {
        Optional<Project> project = project();
        for (int i = 0; i < kinds.size(); i++) {
            ElementKind each = kinds.get(i);
            list.getItem(i).setText(1, project.filter(open -> each.isListed()).map(open -> String.valueOf(each.elements(open).size()))
                    .orElse(""));
        }
        table.show(sheet(), project.map(kind()::elements).orElse(List.of()));
        offerOwners(project.map(kind()::owners).orElse(List.of()));
        if (!refused) {
            say(project.isPresent() ? table.count() : Messages.get("elements.no-project"));
        }
        enable();
    }

    void reveal(Identified row) {
        follower.reveal(row.getId());
    }

    Optional<ElementSheet> sheet() {
        return project().map(open -> new ElementSheet(kind(), open, QuantityFormat.preferred()));
    }

    private void offerOwners(List<Identified> found) {
        List<String> labels = new ArrayList<>(found.stream().map(MessageTexts::path).toList());
        Optional<Identified> before = owner();
        offered = found;
        if (!labels.equals(List.of(owners.getItems()))) {
            owners.setItems(labels.toArray(String[]::new));
        }
        owners.select(Math.max(0, before.map(found::indexOf).orElse(0)));
        owners.setVisible(kind().isSpread());
        ((GridData) owners.getLayoutData()).exclude = !kind().isSpread();
        owners.getParent().layout(true);
    }

    /** Returns what a new element is put into. */
    Optional<Identified> owner() {
        int index = owners.getSelectionIndex();
        return index >= 0 && index < offered.size() ? Optional.of(offered.get(index)) : offered.stream().findFirst();
    }

    private void enable() {
        boolean open = project().isPresent() && kind().isListed();
        add.setEnabled(open && owner().isPresent());
        duplicate.setEnabled(open && !selected().isEmpty() && kind().reference().filter(place -> place.isMany()).isPresent());
        remove.setEnabled(open && !selected().isEmpty());
        readBack.setEnabled(project().isPresent());
        if (actions != null) {
            actions.enable(duplicate.isEnabled());
        }
    }

    /** Says why something was not done; that stays until something is. */
    private void refuse(String why) {
        refused = true;
        say(why);
    }

    private void say(String words) {
        said.setText(words);
        said.setToolTipText(words);
    }

    /** Returns what is said below the table. */
    public String said() {
        return said.getText();
    }

    /** Carries an edit out, or says why that cannot be done; returns whether it was. */
    boolean perform(RecordedEdit edit) {
        if (document().isEmpty()) {
            return false;
        }
        try {
            document().get().history().perform(edit);
            refused = false;
            if (!table.viewer().isCellEditorActive()) {
                update();
            }
            return true;
        } catch (EditException | IllegalArgumentException e) {
            refuse(MessageTexts.reason(e));
            return false;
        }
    }

    /** Adds an element and opens its first cell. */
    public void add() {
        if (add.isEnabled()) {
            AddChild edit = sheet().orElseThrow().add(owner().orElseThrow());
            filter.setText("");
            if (perform(edit)) {
                table.begin(edit.child());
            }
        }
    }

    void duplicate() {
        if (duplicate.isEnabled()) {
            perform(sheet().orElseThrow().duplicate(selected()));
        }
    }

    void remove() {
        if (remove.isEnabled()) {
            perform(sheet().orElseThrow().remove(selected()));
        }
    }

    /**
     * Adds a row for each line of a text; where a cell makes no sense, nothing is added and it is said below the table.
     *
     * @param text lines with tabulators
     */
    public void paste(String text) {
        sheet().ifPresent(sheet -> {
            try {
                perform(sheet.paste(text, owner()));
            } catch (IllegalArgumentException e) {
                refuse(e.getMessage());
            }
        });
    }

    /** Adds copies of elements, to what held them, else to what is chosen. */
    void paste(List<CopiedElements.Kept> kept) {
        sheet().ifPresent(sheet -> {
            try {
                perform(sheet.paste(kept, owner()));
            } catch (IllegalArgumentException e) {
                refuse(e.getMessage());
            }
        });
    }

    void selectAll() {
        table.viewer().setSelection(new StructuredSelection(shown()));
    }

    /** Returns the selected elements. */
    public List<Identified> selected() {
        return table.selected();
    }

    /** Returns the elements that are shown, in their order. */
    public List<Identified> shown() {
        return table.shown();
    }

    /** Returns the table of elements. */
    public Table table() {
        return table.viewer().getTable();
    }

    /** Returns the table of kinds. */
    public Table kinds() {
        return list;
    }

    @Override
    protected void focus() {
        update();
        letters.forget();
        list.setFocus();
    }

    @Override
    public void dispose() {
        if (follower != null) {
            follower.dispose();
        }
        super.dispose();
    }
}
