package slopewright.ui.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerComparator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.ui.part.ViewPart;

import slopewright.edit.AddAid;
import slopewright.edit.Compound;
import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.edit.RemoveAid;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Side;
import slopewright.siting.SitingException;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.review.internal.Contender;
import slopewright.ui.review.internal.ContenderColumn;

/** All families that may stand at one runway end or helipad, laid out and checked side by side; one of them can be placed. */
public final class ComparisonView extends ViewPart {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.review.comparison";

    private DocumentFollower follower;
    private Combo hosts;
    private Combo sides;
    private Label state;
    private Button place;
    private TableViewer viewer;
    private ContenderColumn sorted = ContenderColumn.FAILURES;
    private List<ApproachHost> shownHosts = List.of();
    private Job job;
    private int request;

    private final class Follow implements DocumentListener {

        @Override
        public void changed(Set<String> elementIds) {
            updateHosts();
        }
    }

    @Override
    public void createPartControl(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        Composite head = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        RowLayoutFactory.fillDefaults().wrap(true).center(true).spacing(4).margins(6, 2).applyTo(head);
        new Label(head, SWT.NONE).setText("At");
        hosts = new Combo(head, SWT.READ_ONLY);
        sides = new Combo(head, SWT.READ_ONLY);
        sides.setItems("left", "right", "both sides");
        sides.select(0);
        Button compare = new Button(head, SWT.PUSH);
        compare.setText("&Compare");
        place = new Button(head, SWT.PUSH);
        place.setText("&Use this one");
        place.setToolTipText("Place the selected family instead of what stands there; can be undone");
        state = new Label(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).indent(6, 0).applyTo(state);
        createTable(parent);
        compare.addListener(SWT.Selection, event -> compare());
        place.addListener(SWT.Selection, event -> placeSelected());
        follower = new DocumentFollower(getSite().getPage(), new Follow(), document -> updateHosts());
        updateHosts();
    }

    private void createTable(Composite parent) {
        viewer = new TableViewer(parent, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(viewer.getControl());
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        for (ContenderColumn column : ContenderColumn.values()) {
            TableViewerColumn made = new TableViewerColumn(viewer, SWT.LEFT);
            TableColumn widget = made.getColumn();
            widget.setText(column.title());
            widget.setWidth(column.width());
            made.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> column.text((Contender) element)));
            widget.addListener(SWT.Selection, event -> {
                sorted = column;
                viewer.getTable().setSortColumn(widget);
                viewer.getTable().setSortDirection(SWT.UP);
                viewer.refresh();
            });
        }
        viewer.setComparator(new ViewerComparator() {
            @Override
            public int compare(Viewer shown, Object one, Object other) {
                return sorted.order().compare((Contender) one, (Contender) other);
            }
        });
        viewer.addSelectionChangedListener(event -> updatePlace());
        viewer.addDoubleClickListener(event -> placeSelected());
        viewer.setInput(List.of());
        updatePlace();
    }

    private void updateHosts() {
        if (follower == null || hosts.isDisposed()) {
            return;
        }
        int before = Math.max(0, hosts.getSelectionIndex());
        shownHosts = follower.document().map(document -> Projects.hosts(document.project())).orElse(List.of());
        hosts.setItems(shownHosts.stream().map(Projects::path).toArray(String[]::new));
        hosts.select(Math.min(before, shownHosts.size() - 1));
        hosts.getParent().getParent().layout(true, true);
    }

    private void updatePlace() {
        place.setEnabled(selected().filter(one -> one.siting().isPresent()).isPresent());
    }

    private Optional<Contender> selected() {
        return Optional.ofNullable((Contender) viewer.getStructuredSelection().getFirstElement());
    }

    private Optional<ApproachHost> host() {
        int index = hosts.getSelectionIndex();
        return index < 0 || index >= shownHosts.size() ? Optional.empty() : Optional.of(shownHosts.get(index));
    }

    private Side side() {
        return Side.values()[Math.max(0, sides.getSelectionIndex())];
    }

    /** Returns the table; its elements appear when the comparison has ended. */
    public TableViewer viewer() {
        return viewer;
    }

    /** Lays out and checks every family at the chosen runway end or helipad in the background. */
    public void compare() {
        if (job != null) {
            job.cancel();
        }
        Optional<ApproachHost> host = host();
        if (host.isEmpty()) {
            state.setText("Open a project with a runway end or a helipad first.");
            return;
        }
        int number = ++request;
        Display display = viewer.getControl().getDisplay();
        String id = host.get().getId();
        Side side = side();
        boolean atRunway = host.get() instanceof RunwayEnd;
        List<IndicatorFamily> families = Families.all().stream().filter(one -> atRunway ? one.atRunways() : one.atHelipads()).toList();
        Project snapshot = follower.document().map(document -> EcoreUtil.copy(document.project())).orElseThrow();
        state.setText("Comparing " + families.size() + " families…");
        job = Job.create("Compare families", (IProgressMonitor monitor) -> {
            List<Contender> found = new ArrayList<>();
            for (IndicatorFamily family : families) {
                if (monitor.isCanceled()) {
                    return Status.CANCEL_STATUS;
                }
                found.add(Contender.of(snapshot, id, family, side));
            }
            if (!display.isDisposed()) {
                display.asyncExec(() -> show(found, number));
            }
            return Status.OK_STATUS;
        });
        job.schedule();
    }

    private void show(List<Contender> found, int number) {
        if (number != request || viewer.getControl().isDisposed()) {
            return;
        }
        viewer.setInput(found);
        long laid = found.stream().filter(one -> one.siting().isPresent()).count();
        state.setText(laid + " of " + found.size() + " families can be laid out here.");
    }

    private void placeSelected() {
        Optional<ProjectDocument> document = follower.document();
        Optional<ApproachHost> host = host();
        Optional<Contender> chosen = selected().filter(one -> one.siting().isPresent());
        if (document.isEmpty() || host.isEmpty() || chosen.isEmpty()) {
            return;
        }
        try {
            List<RecordedEdit> parts = new ArrayList<>();
            for (ApproachAid aid : host.get().getAids()) {
                parts.add(RemoveAid.of(aid));
            }
            AddAid add = AddAid.solve(host.get(), chosen.get().family().key(), document.get().rules(), side());
            parts.add(add);
            document.get().history().perform(Compound.of("Use " + chosen.get().family().name(), parts));
            follower.reveal(add.aid().getId());
        } catch (SitingException | EditException | IllegalArgumentException e) {
            state.setText(e.getMessage());
        }
    }

    @Override
    public void setFocus() {
        hosts.setFocus();
    }

    @Override
    public void dispose() {
        if (job != null) {
            job.cancel();
        }
        if (follower != null) {
            follower.dispose();
        }
        super.dispose();
    }
}
