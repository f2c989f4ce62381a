package slopewright.ui.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import slopewright.checks.AsBuiltVerdicts;
import slopewright.checks.CheckResult;
import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.evaluation.asbuilt.AsBuilt;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.ui.AccessibleName;
import slopewright.ui.LateView;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.properties.OutcomeTexts;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.properties.CellEditing;
import slopewright.ui.review.internal.measured.MeasuredTable;
import slopewright.ui.theme.TypeScale;

/** The chosen aid as it was built: planned and measured values of every unit, what they come to, and what stands against acceptance. */
public final class MeasuredView extends LateView {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.review.measured";

    private static final double WIDE = 2.2;
    private static final int COMBO_WIDTH = 180;

    private final Runnable stateListener = this::update;
    private DocumentFollower follower;
    private Optional<ProjectDocument> listened = Optional.empty();
    private Combo aids;
    private Label hint;
    private MeasuredTable table;
    private StyledText summary;
    private List<ApproachAid> shown = List.of();

    private final class Follow implements DocumentListener {

        @Override
        public void changed(Set<String> elementIds) {
            update();
        }

        @Override
        public void checked(CheckResult result) {
            update();
        }

        @Override
        public void unchecked() {
            update();
        }
    }

    @Override
    protected void fill(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        Composite head = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 2).applyTo(head);
        aids = new Combo(head, SWT.READ_ONLY);
        aids.setToolTipText(Messages.get("measured.aid"));
        aids.addListener(SWT.Selection, event -> choose());
        hint = new Label(head, SWT.NONE);
        hint.setText(Messages.get("measured.hint"));
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(hint);
        GridDataFactory.fillDefaults().hint(TypeScale.px(COMBO_WIDTH), SWT.DEFAULT).applyTo(aids);
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        table = new MeasuredTable(sash, this::perform, this::say);
        AccessibleName.give(table.viewer().getTable(), getPartName());
        table.viewer().getTable().addListener(SWT.Resize, event -> aids.getDisplay().asyncExec(this::showFirstColumn));
        // rows that came or went while a cell was open are shown once it is closed
        CellEditing.begin(table.viewer(), ColumnViewerEditorActivationEvent.MOUSE_CLICK_SELECTION, this::update);
        table.viewer().getTable().addListener(SWT.MouseDoubleClick, event -> table.selectedId().ifPresent(id -> follower.reveal(id)));
        summary = new StyledText(sash, SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        AccessibleName.give(summary, getPartName());
        summary.setCaret(null);
        summary.setMargins(6, 4, 6, 4);
        summary.setAlwaysShowScrollBars(false);
        sash.setWeights(70, 30);
        sash.addListener(SWT.Resize, event -> {
            int wanted = sash.getSize().x > WIDE * sash.getSize().y ? SWT.HORIZONTAL : SWT.VERTICAL;
            if (sash.getOrientation() != wanted) {
                sash.setOrientation(wanted);
            }
        });
        follower = new DocumentFollower(getSite().getPage(), new Follow(), document -> switched());
        switched();
    }

    private void switched() {
        if (aids.isDisposed()) {
            return;
        }
        listened.ifPresent(document -> document.viewState().removeListener(stateListener));
        listened = follower == null ? Optional.empty() : follower.document();
        listened.ifPresent(document -> document.viewState().addListener(stateListener));
        update();
        aids.getDisplay().asyncExec(this::showFirstColumn);
    }

    /** The desktop scrolls sideways to what has the focus while the table gets its size; the letter of each unit stands at the left. */
    private void showFirstColumn() {
        if (!aids.isDisposed() && !table.viewer().isCellEditorActive()) {
            table.viewer().getTable().showColumn(table.viewer().getTable().getColumn(0));
        }
    }

    private void choose() {
        int index = aids.getSelectionIndex();
        if (index >= 0 && index < shown.size()) {
            follower.document().ifPresent(document -> document.viewState().choose(shown.get(index).getId()));
        }
    }

    private void update() {
        if (follower == null || aids.isDisposed()) {
            return;
        }
        Optional<ProjectDocument> document = follower.document();
        shown = document.map(opened -> Projects.aids(opened.project())).orElse(List.of());
        String[] labels = shown.stream().map(MessageTexts::path).toArray(String[]::new);
        if (!List.of(labels).equals(List.of(aids.getItems()))) {
            aids.setItems(labels);
            aids.getParent().layout();
        }
        Optional<ApproachAid> aid = document.flatMap(opened -> opened.viewState().aid());
        aids.select(aid.map(shown::indexOf).orElse(-1));
        try {
            Optional<AsBuilt> built = aid.map(chosen -> AsBuilt.of(document.get().evaluation(chosen).orThrow()));
            table.show(aid, built);
            summary.setText(built.map(MeasuredView::text).orElse(Messages.get("measured.none")));
        } catch (SitingException | IllegalArgumentException e) {
            table.show(aid, Optional.empty());
            summary.setText(Messages.get("measured.problem", MessageTexts.reason(e)));
        }
    }

    private static String text(AsBuilt built) {
        List<String> lines = new ArrayList<>();
        if (built.isMeasured()) {
            List<String> parts = new ArrayList<>();
            add(parts, "measured.eyeHeight", OptionalDouble.of(built.planned().mehtM()),
                    OptionalDouble.of(built.built().mehtM()));
            add(parts, "measured.wheels", built.planned().wheelClearanceM(), built.built().wheelClearanceM());
            add(parts, "measured.obstacles", built.plannedMarginM(), built.builtMarginM());
            lines.addAll(parts);
        } else {
            lines.add(Messages.get("measured.nothing"));
        }
        List<Message> against = Stream.concat(built.findings().stream(), AsBuiltVerdicts.messages(built.plan()).stream()).toList();
        lines.add(Messages.get(against.isEmpty() ? "measured.accept" : "measured.against"));
        against.forEach(finding -> lines.add("  " + MessageTexts.of(finding)));
        return String.join("\n", lines);
    }

    private static void add(List<String> parts, String key, OptionalDouble planned, OptionalDouble built) {
        if (planned.isPresent() && built.isPresent()) {
            String unit = "m";
            parts.add(String.format("%s: %s → %s", Messages.get(key), OutcomeTexts.quantity(planned, unit),
                    OutcomeTexts.quantity(built, unit)));
        }
    }

    /** Says something beside the choice of the aid, until something is taken. */
    private void say(String words) {
        hint.setText(words);
        hint.setToolTipText(words);
    }

    private void perform(RecordedEdit edit) {
        follower.document().ifPresent(document -> {
            try {
                document.history().perform(edit);
                say(Messages.get("measured.hint"));
            } catch (EditException e) {
                say(MessageTexts.reason(e));
            }
            table.viewer().getControl().getDisplay().asyncExec(this::update);
        });
    }

    /** Returns the table of units. */
    public TableViewer viewer() {
        return table.viewer();
    }

    /** Returns what stands beside the choice of the aid. */
    public String said() {
        return hint.getText();
    }

    /** Returns what stands below the table. */
    public String summary() {
        return summary.getText();
    }

    @Override
    protected void focus() {
        table.viewer().getControl().setFocus();
    }

    @Override
    public void dispose() {
        listened.ifPresent(document -> document.viewState().removeListener(stateListener));
        if (follower != null) {
            follower.dispose();
        }
        super.dispose();
    }
}
