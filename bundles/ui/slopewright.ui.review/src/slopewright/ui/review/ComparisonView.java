package slopewright.ui.review;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;

import slopewright.checks.compare.MarginKind;
import slopewright.edit.AddAid;
import slopewright.edit.Compound;
import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.edit.RemoveAid;
import slopewright.edit.ResolveAid;
import slopewright.edit.SetAttribute;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ProjectRules;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.Side;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSets;
import slopewright.ui.LateView;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.review.internal.ComparedOption;
import slopewright.ui.review.internal.MarginChart;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.review.internal.OptionPane;
import slopewright.ui.review.internal.OptionSheet;
import slopewright.ui.review.internal.OptionTable;
import slopewright.ui.review.internal.OptionTrial;
import slopewright.ui.review.internal.WeightsDialog;

/**
 * All families that may stand at one runway end or helipad, or all rule sets for one aid, laid out and checked side by side, with their
 * margins as a chart; one of them can be used.
 */
public final class ComparisonView extends LateView {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.review.comparison";

    private DocumentFollower follower;
    private OptionTrial trial;
    private Combo modes;
    private Combo places;
    private Combo sides;
    private Combo kinds;
    private Button compare;
    private Button place;
    private Button export;
    private Label state;
    private ProgressBar progress;
    private OptionPane pane;
    private OptionTable table;
    private List<? extends Identified> shownPlaces = List.of();
    private boolean outdated;

    private final class Follow implements DocumentListener {

        @Override
        public void changed(Set<String> elementIds) {
            updatePlaces();
            if (elementIds.isEmpty()) {
                table.viewer().refresh();
                drawChart();
            } else {
                outdated = true;
                sayIfOutdated();
            }
        }
    }

    private final class Progress implements OptionTrial.Listener {

        @Override
        public void advanced(int done, int of) {
            if (!progress.isDisposed()) {
                progress.setMaximum(of);
                progress.setSelection(done);
                tell(Messages.get("comparison.running", done, of));
            }
        }

        @Override
        public void ended(List<ComparedOption> found) {
            if (!progress.isDisposed()) {
                show(found);
            }
        }
    }

    @Override
    protected void fill(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        createHead(parent);
        createState(parent);
        pane = new OptionPane(parent);
        table = pane.table();
        trial = new OptionTrial(parent.getDisplay(), new Progress());
        table.viewer().addSelectionChangedListener(event -> updateButtons());
        table.viewer().addDoubleClickListener(event -> useSelected());
        follower = new DocumentFollower(getSite().getPage(), new Follow(), document -> documentSwitched());
        documentSwitched();
    }

    private void createHead(Composite parent) {
        Composite head = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        RowLayoutFactory.fillDefaults().wrap(true).center(true).spacing(4).margins(6, 2).applyTo(head);
        modes = combo(head, "comparison.mode", "comparison.families", "comparison.ruleSets");
        places = combo(head, "comparison.place");
        sides = combo(head, "comparison.side", "comparison.left", "comparison.right", "comparison.both", "comparison.each-side");
        compare = new Button(head, SWT.PUSH);
        compare.setText(Messages.get("comparison.compare"));
        place = new Button(head, SWT.PUSH);
        place.setText(Messages.get("comparison.use"));
        place.setToolTipText(Messages.get("comparison.use.tip"));
        Button weigh = new Button(head, SWT.PUSH);
        weigh.setText(Messages.get("comparison.weights") + "…");
        weigh.addListener(SWT.Selection, event -> weigh());
        export = new Button(head, SWT.PUSH);
        export.setText(Messages.get("comparison.export"));
        export.addListener(SWT.Selection, event -> export());
        kinds = combo(head, "comparison.chart");
        kinds.setItems(Stream.of(MarginKind.values()).map(MarginChart::label).toArray(String[]::new));
        kinds.select(0);
        modes.addListener(SWT.Selection, event -> documentSwitched());
        kinds.addListener(SWT.Selection, event -> drawChart());
        compare.addListener(SWT.Selection, event -> compareOrCancel());
        place.addListener(SWT.Selection, event -> useSelected());
    }

    private static Combo combo(Composite parent, String tip, String... items) {
        Combo combo = new Combo(parent, SWT.READ_ONLY);
        combo.setItems(Stream.of(items).map(item -> Messages.get(item)).toArray(String[]::new));
        combo.select(0);
        combo.setToolTipText(Messages.get(tip));
        return combo;
    }

    private void createState(Composite parent) {
        Composite line = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 0).applyTo(line);
        state = new Label(line, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(state);
        progress = new ProgressBar(line, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().hint(140, 8).align(SWT.FILL, SWT.CENTER).exclude(true).applyTo(progress);
        progress.setVisible(false);
    }

    private void tell(String text) {
        state.setText(text);
        state.requestLayout();
    }

    private boolean byRuleSet() {
        return modes.getSelectionIndex() == 1;
    }

    private void documentSwitched() {
        if (follower == null || places.isDisposed()) {
            return;
        }
        trial.cancel();
        outdated = false;
        pane.show(List.of());
        updatePlaces();
        tell(Messages.get(shownPlaces.isEmpty() ? "comparison.noPlace" : "comparison.ready"));
        sides.setEnabled(!byRuleSet());
        updateButtons();
    }

    private void updatePlaces() {
        if (follower == null || places.isDisposed()) {
            return;
        }
        List<? extends Identified> before = places.getSelectionIndex() < 0 ? List.of() : chosen();
        Optional<Project> project = follower.document().map(ProjectDocument::project);
        shownPlaces = project.<List<? extends Identified>>map(opened -> byRuleSet()
                ? Projects.aids(opened).stream().filter(aid -> Families.find(String.valueOf(aid.getFamilyKey())).isPresent()).toList()
                : Projects.hosts(opened)).orElse(List.of());
        List<String> names = new ArrayList<>(shownPlaces.stream().map(MessageTexts::path).toList());
        if (!byRuleSet() && names.size() > 1) {
            names.add(Messages.get("comparison.each-place"));
        }
        places.setItems(names.toArray(String[]::new));
        int kept = before.size() > 1 ? shownPlaces.size() : before.isEmpty() ? 0 : Math.max(0, shownPlaces.indexOf(before.get(0)));
        places.select(Math.min(kept, names.size() - 1));
        places.getParent().getParent().layout(true, true);
    }

    private void updateButtons() {
        boolean running = trial != null && trial.isRunning();
        say(Messages.get(running ? "comparison.cancel" : "comparison.compare"));
        compare.setEnabled(running || !shownPlaces.isEmpty());
        progress.setVisible(running);
        ((GridData) progress.getLayoutData()).exclude = !running;
        progress.requestLayout();
        export.setEnabled(!running && !outdated && !table.shown().isEmpty());
        place.setEnabled(!running && table.selected().filter(option -> option.siting().isPresent()).isPresent());
        compare.getParent().layout();
    }

    /**
     * Writes on the button. The desktop leaves it bare where its text changes twice before it was laid out: it is laid out once more,
     * and is given back the keys that it then loses.
     */
    private void say(String text) {
        if (compare.getText().equals(text)) {
            return;
        }
        compare.setText(text);
        compare.getDisplay().asyncExec(() -> {
            if (!compare.isDisposed()) {
                boolean hasFocus = compare.isFocusControl();
                compare.setSize(0, 0);
                compare.getParent().layout();
                if (hasFocus) {
                    compare.setFocus();
                }
            }
        });
    }

    /** The places that are compared: the chosen one, or each. */
    private List<? extends Identified> chosen() {
        int index = places.getSelectionIndex();
        return index < 0 ? List.of() : index < shownPlaces.size() ? List.of(shownPlaces.get(index)) : shownPlaces;
    }

    /** The sides that are compared: the chosen one, or each. */
    private List<Side> chosenSides() {
        int index = Math.max(0, sides.getSelectionIndex());
        return index < Side.values().length ? List.of(Side.values()[index]) : List.of(Side.values());
    }

    private void weigh() {
        WeightsDialog dialog = new WeightsDialog(getSite().getShell(), table.weights());
        if (dialog.open() == Window.OK) {
            table.weigh(dialog.weights());
        }
    }

    private void export() {
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.SAVE);
        dialog.setText(Messages.get("comparison.export"));
        dialog.setFilterExtensions(new String[] {"*.csv", "*.xlsx"});
        dialog.setFileName("comparison.csv");
        dialog.setOverwrite(true);
        Optional.ofNullable(dialog.open()).ifPresent(name -> tell(export(Path.of(name))));
    }

    /**
     * Writes what is shown into a file.
     *
     * @param file a file whose name ends in {@code .csv} or {@code .xlsx}
     * @return what there is to say about it
     */
    public String export(Path file) {
        return OptionSheet.write(table.shown(), table.weights(), file);
    }

    private void drawChart() {
        pane.draw(MarginKind.values()[Math.max(0, kinds.getSelectionIndex())]);
    }

    /** Returns the table; its elements appear when the comparison has ended. */
    public TableViewer viewer() {
        return table.viewer();
    }

    /** Returns what the chart says, a line for each bar. */
    public List<String> chartLines() {
        return pane.chart().lines();
    }

    /** Returns what stands below the table, a line for each option whose reasons are cut in it. */
    public String reasons() {
        return pane.reasons();
    }

    /** Returns the line above the table. */
    public String state() {
        return state.getText();
    }

    private void compareOrCancel() {
        if (trial.isRunning()) {
            trial.cancel();
            tell(Messages.get("comparison.cancelled"));
            updateButtons();
        } else {
            compare();
        }
    }

    /** Lays out and checks every family at the chosen place, or the chosen aid under every rule set, in the background. */
    public void compare() {
        List<? extends Identified> where = chosen();
        if (where.isEmpty()) {
            tell(Messages.get("comparison.noPlace"));
            return;
        }
        List<Supplier<ComparedOption>> options;
        try {
            ProjectEvaluation snapshot = follower.document().orElseThrow().snapshot();
            options = where.stream().flatMap(each -> byRuleSet() ? ruleSets(snapshot, each).stream()
                    : chosenSides().stream().flatMap(side -> families(snapshot, each, side).stream())).toList();
        } catch (IllegalArgumentException e) {
            tell(MessageTexts.reason(e));
            return;
        }
        outdated = false;
        progress.setSelection(0);
        tell(Messages.get("comparison.running", 0, options.size()));
        trial.start(options);
        updateButtons();
    }

    private static List<Supplier<ComparedOption>> families(ProjectEvaluation snapshot, Identified host, Side side) {
        boolean atRunway = host instanceof RunwayEnd;
        return Families.all().stream().filter(family -> atRunway ? family.atRunways() : family.atHelipads())
                .map(family -> (Supplier<ComparedOption>) () -> ComparedOption.of(snapshot, host.getId(), family, side)).toList();
    }

    private static List<Supplier<ComparedOption>> ruleSets(ProjectEvaluation snapshot, Identified aid) {
        return RuleSets.all().stream()
                .map(rules -> (Supplier<ComparedOption>) () -> ComparedOption.under(snapshot, aid.getId(), rules)).toList();
    }

    private void show(List<ComparedOption> found) {
        pane.show(found);
        long laid = found.stream().filter(option -> option.siting().isPresent()).count();
        IntSummaryStatistics rules = found.stream().filter(option -> option.siting().isPresent())
                .mapToInt(ComparedOption::rulesApplied).summaryStatistics();
        tell(Messages.get(byRuleSet() ? "comparison.judged" : "comparison.laid", laid, found.size()) + (laid == 0 ? ""
                : " " + Messages.get("comparison.rules", rules.getMin(), rules.getMax())));
        updateButtons();
        sayIfOutdated();
    }

    /** What was compared before an edit, or while it was made, is of another project: it is said so, and nobody hands it on. */
    private void sayIfOutdated() {
        if (outdated && !trial.isRunning() && !table.shown().isEmpty()) {
            tell(Messages.get("comparison.stale"));
            updateButtons();
        }
    }

    private void useSelected() {
        Optional<ProjectDocument> document = follower.document();
        Optional<ComparedOption> wanted = table.selected().filter(option -> option.siting().isPresent());
        Optional<Identified> where = wanted.flatMap(option -> document.flatMap(opened -> Ids.find(opened.project(),
                option.place().hostId())));
        if (document.isEmpty() || where.isEmpty() || wanted.isEmpty()) {
            return;
        }
        try {
            String placed = where.get() instanceof ApproachAid aid ? judge(document.get(), aid, wanted.get())
                    : place(document.get(), (ApproachHost) where.get(), wanted.get());
            follower.reveal(placed);
        } catch (SitingException | EditException | IllegalArgumentException e) {
            tell(MessageTexts.reason(e));
        }
    }

    private String place(ProjectDocument document, ApproachHost host, ComparedOption wanted) {
        List<RecordedEdit> parts = new ArrayList<>();
        host.getAids().forEach(aid -> parts.add(RemoveAid.of(aid)));
        AddAid add = AddAid.solve(host, wanted.family().key(), document.rules(), wanted.place().side().orElse(Side.LEFT));
        parts.add(add);
        document.history().perform(Compound.of(Messages.get("edit.use", wanted.name()), parts));
        return add.aid().getId();
    }

    /** The aid is laid out again as the other rule set has it, and judged by it from then on. */
    private static String judge(ProjectDocument document, ApproachAid aid, ComparedOption wanted) {
        document.history().perform(Compound.of(Messages.get("edit.use", wanted.name()), List.of(
                SetAttribute.of(aid, Literals.APPROACH_AID__RULE_SET_KEY, wanted.ruleSet()),
                ResolveAid.of(aid, ProjectRules.of(document.project(), Optional.of(wanted.ruleSet()))))));
        return aid.getId();
    }

    @Override
    protected void focus() {
        modes.setFocus();
    }

    @Override
    public void dispose() {
        if (trial != null) {
            trial.cancel();
        }
        if (follower != null) {
            follower.dispose();
        }
        super.dispose();
    }
}
