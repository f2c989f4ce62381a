package slopewright.ui.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.handlers.IHandlerService;

import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.drawing.section.SurveyPointAt;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.GroundUsed;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.ui.LateView;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.PickedPoint;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.Viewpoint;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.profile.internal.section.EmptyPage;
import slopewright.ui.profile.internal.section.ReadoutPanel;
import slopewright.ui.profile.internal.section.SectionBar;
import slopewright.ui.profile.internal.section.SectionCanvas;
import slopewright.ui.profile.internal.section.SectionKeys;
import slopewright.ui.profile.internal.section.SectionReading;
import slopewright.ui.profile.internal.section.SectionRound;
import slopewright.ui.profile.internal.section.SectionSource;
import slopewright.ui.profile.internal.section.SectionTools;
import slopewright.ui.theme.ScreenTheme;

/**
 * The vertical section along the approach of the chosen aid: what every beam shows where, the obstacle surface with the obstacles, the
 * glide path, the wheels over the threshold. Beams and units can be dragged; a click places the pilot's eye.
 */
public final class SectionView extends LateView {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.profile.section";

    private static final String OPEN_PROJECT = "slopewright.rcp.openProject";
    private static final int READOUT_WIDTH = 290;
    private static final int LEAST_CANVAS_WIDTH = 300;
    private static final double ZOOM = 1.4;

    private DocumentFollower follower;
    private Composite root;
    private StackLayout stack;
    private Composite page;
    private EmptyPage empty;
    private SectionBar bar;
    private Optional<AidEvaluation> groundOf = Optional.empty();
    private Optional<Message> ground = Optional.empty();
    private SectionCanvas canvas;
    private SectionTools tools;
    private ReadoutPanel readout;
    private SectionSource source;
    private Optional<ProjectDocument> document = Optional.empty();
    private Optional<String> shownAidId = Optional.empty();
    private boolean stale;
    private final Runnable viewStateChanged = this::viewStateChanged;
    private final Runnable selected = this::showPicked;
    private final Runnable repaint = this::repaint;
    private final IPropertyChangeListener preferences = event -> restate();

    private final class Follow implements DocumentListener {

        @Override
        public void changed(Set<String> elementIds) {
            restate();
        }

        @Override
        public void pointsRead() {
            restate();
        }
    }

    private final class Work implements SectionTools.Target {

        @Override
        public void read() {
            showReading();
        }

        @Override
        public void tryOut(String heading, List<ReadoutPanel.Row> rows) {
            readout.show(heading, List.of(), rows);
        }

        @Override
        public void perform(RecordedEdit edit) {
            try {
                document.ifPresent(open -> open.history().perform(edit));
            } catch (EditException e) {
                readout.show(MessageTexts.reason(e), List.of(), List.of());
            }
        }

        @Override
        public void look(FramePoint place) {
            source.host().ifPresent(host -> document.ifPresent(open -> open.viewState().look(new Viewpoint(host.getId(), place))));
        }

        @Override
        public void select(Identified element) {
            document.ifPresent(open -> open.viewState().select(List.of(element)));
        }

        @Override
        public void pick(SurveyPointAt point) {
            document.ifPresent(open -> open.viewState().pick(new PickedPoint(point.block().getId(), point.index())));
        }
    }

    @Override
    protected void fill(Composite parent) {
        root = new Composite(parent, SWT.NONE);
        stack = new StackLayout();
        root.setLayout(stack);
        empty = new EmptyPage(root);
        page = new Composite(root, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
        bar = new SectionBar(page, aid -> document.ifPresent(open -> open.viewState().choose(aid.getId())), group -> {
            source.choose(group);
            show();
        }, factor -> canvas.exaggerate(factor));
        Composite body = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 0).applyTo(body);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        canvas = new SectionCanvas(body);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas.control());
        readout = new ReadoutPanel(body);
        GridDataFactory.fillDefaults().hint(READOUT_WIDTH, SWT.DEFAULT).grab(false, true).applyTo(readout.control());
        body.addListener(SWT.Resize, event -> makeRoom(body));
        source = new SectionSource(canvas::widthMm);
        Work work = new Work();
        tools = new SectionTools(source, canvas, work);
        SectionKeys.install(source, canvas, tools, work);
        SectionRound.install(source, canvas, this::showReading, getViewSite().getActionBars());
        createActions();
        root.addListener(SWT.Paint, event -> refreshStale());
        canvas.beforePaint(this::refreshStale);
        ScreenTheme.addListener(repaint);
        Preferences.store().addPropertyChangeListener(preferences);
        follower = new DocumentFollower(getSite().getPage(), new Follow(), this::switched);
        switched(follower.document());
    }

    private void makeRoom(Composite body) {
        boolean wide = body.getClientArea().width >= READOUT_WIDTH + LEAST_CANVAS_WIDTH;
        Control panel = readout.control();
        if (panel.getVisible() != wide) {
            panel.setVisible(wide);
            GridDataFactory.fillDefaults().hint(READOUT_WIDTH, SWT.DEFAULT).grab(false, true).exclude(!wide).applyTo(panel);
            body.layout(true);
        }
    }

    private void createActions() {
        IToolBarManager manager = getViewSite().getActionBars().getToolBarManager();
        add(manager, "whole", () -> canvas.fit(SectionCanvas.Extent.WHOLE));
        add(manager, "near", () -> canvas.fit(SectionCanvas.Extent.NEAR));
        add(manager, "zoom-in", () -> canvas.view().zoom(ZOOM));
        add(manager, "zoom-out", () -> canvas.view().zoom(1 / ZOOM));
    }

    private void add(IToolBarManager manager, String name, Runnable work) {
        Action action = new Action(Messages.get("section." + name)) {

            @Override
            public void run() {
                work.run();
            }
        };
        action.setToolTipText(Messages.get("section." + name + ".tip"));
        action.setImageDescriptor(ImageDescriptor.createFromURL(SectionView.class.getResource("/icons/" + name + ".svg")));
        manager.add(action);
        getViewSite().getActionBars().getMenuManager().add(action);
    }

    private void switched(Optional<ProjectDocument> newDocument) {
        forget();
        document = newDocument;
        document.ifPresent(open -> {
            open.viewState().addListener(viewStateChanged);
            open.viewState().addSelectionListener(selected);
        });
        shownAidId = Optional.empty();
        restate();
    }

    private void forget() {
        document.ifPresent(open -> {
            open.viewState().removeListener(viewStateChanged);
            open.viewState().removeSelectionListener(selected);
        });
    }

    /** Rings the survey point that was picked here or in the plan. */
    private void showPicked() {
        if (canvas != null && !canvas.control().isDisposed()) {
            canvas.picked(document.flatMap(open -> open.viewState().picked()).flatMap(point -> canvas.section().flatMap(shown -> shown
                    .surveyPoint(point.blockId(), point.index()))));
        }
    }

    /** Reads everything anew, now where it is seen, else before it is seen next. */
    private void restate() {
        stale = true;
        if (root != null && !root.isDisposed() && source != null && root.isVisible()) {
            refreshStale();
        }
    }

    /** Another aid is a matter of reading everything anew; another place of the eye is not. */
    private void viewStateChanged() {
        Optional<String> aidId = document.flatMap(open -> open.viewState().aid()).map(ApproachAid::getId);
        if (stale || !aidId.equals(shownAidId)) {
            restate();
        } else {
            canvas.eye(eye());
            showReading();
        }
    }

    private void refreshStale() {
        if (stale) {
            stale = false;
            tools.cancel();
            source.follow(document);
            show();
        }
    }

    private void show() {
        bar.update(source);
        canvas.show(source.section());
        Optional<String> aidId = source.aid().map(ApproachAid::getId);
        if (source.section().isPresent() && !aidId.equals(shownAidId)) {
            shownAidId = aidId;
            canvas.fit(SectionCanvas.Extent.WHOLE);
        }
        canvas.eye(eye());
        showPicked();
        Control top = source.section().isPresent() ? page : empty.control();
        if (source.section().isEmpty()) {
            explain();
        }
        if (stack.topControl != top) {
            stack.topControl = top;
            root.layout(true);
        }
        showReading();
    }

    private Optional<FramePoint> eye() {
        String hostId = source.host().map(ApproachHost::getId).orElse("");
        return document.flatMap(open -> open.viewState().viewpoint()).filter(viewpoint -> hostId.equals(viewpoint.hostId()))
                .map(Viewpoint::eye);
    }

    private void explain() {
        if (document.isEmpty()) {
            empty.say(Messages.get("section.empty.project"), this::openProject);
        } else if (source.aid().isEmpty()) {
            empty.say(Messages.get("section.empty.aid"), () -> follower.editor().ifPresent(getSite().getPage()::activate));
        } else {
            ApproachAid aid = source.aid().get();
            empty.say(Messages.get("section.empty.layout", MessageTexts.label(aid), source.problem().orElse("")), () -> follower.reveal(aid
                    .getId()));
        }
    }

    private void openProject() {
        try {
            getSite().getService(IHandlerService.class).executeCommand(OPEN_PROJECT, null);
        } catch (CommandException e) {
            ILog.of(SectionView.class).error(e.getMessage(), e);
        }
    }

    private void repaint() {
        if (canvas != null && !canvas.control().isDisposed()) {
            canvas.repaint();
            showReading();
        }
    }

    private void showReading() {
        Optional<FramePoint> place = canvas.crosshair().or(canvas::eye);
        if (canvas.section().isEmpty() || place.isEmpty()) {
            readout.show(Messages.get("section.read.hint"), List.of(), List.of());
            return;
        }
        SectionReading reading = SectionReading.at(canvas.section().get(), place.get());
        List<ReadoutPanel.Row> rows = new ArrayList<>(reading.rows());
        rows.add(new ReadoutPanel.Row(Messages.get("section.read.ground"), ground(canvas.section().get().drawn().evaluation()),
                ReadoutPanel.Sign.NONE));
        readout.show(Messages.get(canvas.crosshair().isPresent() ? "section.read.here" : "section.read.eye"), reading.lamps(), rows);
    }

    /** The ground is looked up once for an evaluation, not at each step of the mouse; it is worded in the units that are chosen now. */
    private String ground(AidEvaluation evaluation) {
        if (groundOf.filter(known -> known == evaluation).isEmpty()) {
            groundOf = Optional.of(evaluation);
            ground = Optional.of(GroundUsed.of(evaluation));
        }
        return MessageTexts.of(ground.orElseThrow());
    }

    /** Returns what paints the section. */
    public SectionCanvas canvas() {
        return canvas;
    }

    /** Returns the choices above the section. */
    public SectionBar bar() {
        return bar;
    }

    /** Returns the readout beside the section. */
    public ReadoutPanel readout() {
        return readout;
    }

    /** Returns what is said where there is no section, empty where there is one. */
    public Optional<String> explanation() {
        return stack.topControl == empty.control() ? Optional.of(empty.text()) : Optional.empty();
    }

    @Override
    protected void focus() {
        if (stack.topControl == page) {
            canvas.control().setFocus();
        } else {
            empty.control().setFocus();
        }
    }

    @Override
    public void dispose() {
        ScreenTheme.removeListener(repaint);
        Preferences.store().removePropertyChangeListener(preferences);
        forget();
        if (follower != null) {
            follower.dispose();
        }
        super.dispose();
    }
}
