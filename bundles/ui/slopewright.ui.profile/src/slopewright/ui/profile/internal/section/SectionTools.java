package slopewright.ui.profile.internal.section;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

import slopewright.drawing.section.BeamEdge;
import slopewright.drawing.section.SurveyPointAt;
import slopewright.edit.RecordedEdit;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.util.Ids;
import slopewright.siting.UnitPlan;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.trial.TrialVerdict;

/**
 * Works the section by mouse: the crosshair follows the pointer, the wheel zooms about it, dragging the ground moves the view and a click
 * on it picks the survey point that is drawn there, or else places the pilot's eye; an edge of a beam, a light unit and the eye can be
 * dragged. Escape gives a drag up.
 */
public final class SectionTools {

    /** Does what the tools ask for. */
    public interface Target {

        /** The crosshair, or what is under it, has changed. */
        void read();

        /** Shows what an edit would give. */
        void tryOut(String heading, List<ReadoutPanel.Row> rows);

        /** Carries an edit out. */
        void perform(RecordedEdit edit);

        /** Places the pilot's eye. */
        void look(FramePoint place);

        /** Selects an element in every pane. */
        void select(Identified element);

        /** Picks a point of a survey block in every pane. */
        void pick(SurveyPointAt point);
    }

    private static final double STEP = 1.2;
    private static final double CLICK_PX = 4;
    private static final double SNAP_PX = 6;
    private static final double MINUTES = 60;
    private static final double HUNDREDTHS = 100;
    private static final double STEPS_PER_M = 10;
    private static final double LEAST_BASE_M = 1;

    private final SectionSource source;
    private final SectionCanvas canvas;
    private final Target target;
    private Optional<Grip> grip = Optional.empty();
    private boolean moved;
    private double pressX;
    private double pressY;
    private double lastX;
    private double lastY;
    private Optional<FramePoint> eyeBefore = Optional.empty();
    private Optional<SectionTrial> trial = Optional.empty();
    private OptionalDouble solvedM = OptionalDouble.empty();
    private Optional<Function<ApproachAid, RecordedEdit>> edit = Optional.empty();

    private Optional<TrialVerdict> verdict = Optional.empty();
    private Optional<Runnable> told = Optional.empty();

    /** Listens to a canvas. */
    public SectionTools(SectionSource source, SectionCanvas canvas, Target target) {
        this.source = source;
        this.canvas = canvas;
        this.target = target;
        Control control = canvas.control();
        control.addListener(SWT.MouseMove, this::move);
        control.addListener(SWT.MouseDown, this::down);
        control.addListener(SWT.MouseUp, this::up);
        control.addListener(SWT.MouseDoubleClick, this::add);
        control.addListener(SWT.MouseWheel, this::wheel);
        control.addListener(SWT.MouseExit, event -> leave());
    }

    private WorldView view() {
        return canvas.view();
    }

    /** Returns the place under a pixel, beside the centre line where the pilot's eye is. */
    FramePoint place(double x, double y) {
        return new FramePoint(view().worldX(x), canvas.eye().map(FramePoint::rightM).orElse(0.0), view().worldY(y));
    }

    /** Returns whether something is being dragged. */
    public boolean isDragging() {
        return grip.isPresent();
    }

    private void wheel(Event event) {
        view().zoomAt(event.x, event.y, event.count > 0 ? STEP : 1 / STEP);
        event.doit = false;
        point(event.x, event.y);
    }

    private void leave() {
        if (!isDragging()) {
            canvas.crosshair(Optional.empty());
            canvas.highlight(Optional.empty());
            target.read();
        }
    }

    private void point(double x, double y) {
        canvas.crosshair(canvas.section().map(section -> place(x, y)));
        target.read();
    }

    private void down(Event event) {
        canvas.control().setFocus();
        if (canvas.section().isEmpty() || event.button > 2 || isDragging()) {
            return;
        }
        grip = Optional.of(event.button == 2 ? Grip.of(Grip.Kind.GROUND)
                : Grip.at(canvas, event.x, event.y));
        moved = event.button == 2;
        pressX = event.x;
        pressY = event.y;
        lastX = event.x;
        lastY = event.y;
        eyeBefore = canvas.eye();
    }

    private void move(Event event) {
        if (grip.isEmpty()) {
            hover(event);
            return;
        }
        moved |= Math.hypot(event.x - pressX, event.y - pressY) > CLICK_PX;
        if (!moved) {
            return;
        }
        Grip held = grip.get();
        switch (held.kind()) {
            case GROUND -> {
                view().pan(event.x - lastX, event.y - lastY);
                point(event.x, event.y);
            }
            case EYE -> {
                canvas.crosshair(Optional.of(place(event.x, event.y)));
                target.look(place(event.x, event.y));
            }
            case UNIT -> shift(held.unit().orElseThrow(), event);
            case POINT -> ground(held.point().orElseThrow(), event);
            case EDGE -> turn(held.edge().orElseThrow(), event);
        }
        lastX = event.x;
        lastY = event.y;
    }

    private void hover(Event event) {
        Grip under = Grip.at(canvas, event.x, event.y);
        canvas.highlight(under.edge());
        int cursor = switch (under.kind()) {
            case GROUND -> SWT.CURSOR_CROSS;
            case EYE -> SWT.CURSOR_HAND;
            case UNIT -> SWT.CURSOR_SIZEWE;
            case POINT -> SWT.CURSOR_SIZEALL;
            case EDGE -> SWT.CURSOR_SIZENS;
        };
        canvas.control().setCursor(canvas.control().getDisplay().getSystemCursor(cursor));
        point(event.x, event.y);
    }

    private SectionTrial trial() {
        if (trial.isEmpty()) {
            SectionTrial fresh = new SectionTrial(source);
            trial = Optional.of(fresh);
            solvedM = fresh.solvedDistanceM();
        }
        return trial.get();
    }

    private static Optional<String> only(UnitPlan unit, Event event) {
        return (event.stateMask & SWT.MOD1) != 0 ? Optional.of(unit.id()) : Optional.empty();
    }

    private static boolean isExact(Event event) {
        return (event.stateMask & SWT.SHIFT) != 0;
    }

    /** Turns a beam, or all of them, so that its edge goes through the pointer; to whole minutes unless held exact. */
    private void turn(BeamEdge edge, Event event) {
        FramePoint lens = edge.unit().place();
        double base = lens.alongM() - view().worldX(event.x);
        if (base < LEAST_BASE_M) {
            return;
        }
        double wanted = edge.unit().settingDeg() + Angles.elevationDeg(view().worldY(event.y) - lens.heightM(), base) - edge.angleDeg();
        double setting = isExact(event) ? wanted : Math.round(wanted * MINUTES) / MINUTES;
        double by = setting - edge.unit().settingDeg();
        Optional<String> only = only(edge.unit(), event);
        SectionTrial.Result result = attempt(SectionEdits.turn(by, only));
        canvas.highlight(result.section().map(section -> new BeamEdge(section.siting().units().stream()
                .filter(unit -> unit.id().equals(edge.unit().id())).findFirst().orElse(edge.unit()), edge.angleDeg() + by)));
        String change = ScreenWords.signed(by, ScreenWords.degrees(Math.abs(by)));
        canvas.crosshair(Optional.of(place(event.x, event.y)));
        canvas.note(Optional.of(edge.unit().id() + "  " + ScreenWords.degrees(setting) + "  (" + change + ")"));
        String heading = only.isPresent() ? Messages.get("section.drag.turn-one", edge.unit().id()) : Messages.get("section.drag.turn-all");
        say(heading, change, by, result);
    }

    /** Moves the aid, or one unit of it, with the pointer: to tenths of a metre, or to the distance of the rule set, unless held exact. */
    private void shift(UnitPlan unit, Event event) {
        Optional<String> only = only(unit, event);
        double by = (event.x - pressX) / view().scale();
        SectionTrial trying = trial();
        if (!isExact(event)) {
            double toSolved = only.isPresent() ? Double.NaN
                    : solvedM.orElse(Double.NaN) - source.section().map(section -> section.siting().distanceM()).orElse(Double.NaN);
            by = Math.abs(by - toSolved) * view().scale() < SNAP_PX ? toSolved : Math.round(by * STEPS_PER_M) / STEPS_PER_M;
        }
        SectionTrial.Result result = attempt(trying, SectionEdits.move(by, only));
        String change = ScreenWords.signed(by, ScreenWords.exact(Math.abs(by)));
        canvas.crosshair(Optional.of(place(event.x, event.y)));
        canvas.note(Optional.of(ScreenWords.exact(unit.place().alongM() + by) + "  (" + change + ")"));
        String heading = only.isPresent() ? Messages.get("section.drag.move-one", unit.id()) : Messages.get("section.drag.move-all");
        say(heading, change, by, result);
    }

    /** Moves a point of the ground with the pointer: by the step of places along the runway and by centimetres up, unless held exact. */
    private void ground(int index, Event event) {
        FramePoint from = GroundPoints.of(source.section().orElseThrow()).get(index);
        double along = from.alongM() + (event.x - pressX) / view().scale();
        double by = view().worldY(event.y) - view().worldY(pressY);
        if (!isExact(event)) {
            double step = Preferences.snapStepM();
            along = Math.rint(along / step) * step;
            by = Math.rint(by * HUNDREDTHS) / HUNDREDTHS;
        }
        SectionTrial.Result result = attempt(GroundPoints.move(index, along, by));
        String change = ScreenWords.exact(along) + ", " + ScreenWords.signed(by, ScreenWords.exact(Math.abs(by)));
        canvas.crosshair(Optional.of(place(event.x, event.y)));
        canvas.note(Optional.of(change));
        say(Messages.get("section.drag.ground"), change, List.of(along, by), result);
    }

    /** A double click adds a point to the ground; its first click has placed the eye there. */
    private void add(Event event) {
        Grip.Kind under = Grip.at(canvas, event.x, event.y).kind();
        boolean free = under == Grip.Kind.GROUND || under == Grip.Kind.EYE;
        if (event.button == 1 && free && canvas.section().filter(GroundPoints::canGrow).isPresent()) {
            source.aid().ifPresent(aid -> target.perform(GroundPoints.add(place(event.x, event.y)).apply(aid)));
        }
    }

    /** Shows what a drag would give, and again when the rules have been asked about it. */
    private void say(String heading, String change, Object by, SectionTrial.Result result) {
        TrialVerdict rules = verdict.orElseGet(
                () -> new TrialVerdict(source.document().orElseThrow(), () -> told.ifPresent(Runnable::run)));
        verdict = Optional.of(rules);
        Runnable show = () -> target.tryOut(heading + "  " + change, TrialRows.of(result, rules));
        told = Optional.of(show);
        String aidId = source.aid().orElseThrow().getId();
        edit.ifPresent(wanted -> rules.ask(List.of(heading, by), change,
                project -> wanted.apply((ApproachAid) Ids.find(project, aidId).orElseThrow())));
        show.run();
    }

    private SectionTrial.Result attempt(Function<ApproachAid, RecordedEdit> wanted) {
        return attempt(trial(), wanted);
    }

    private SectionTrial.Result attempt(SectionTrial trying, Function<ApproachAid, RecordedEdit> wanted) {
        SectionTrial.Result result = trying.of(wanted);
        edit = result.problem().isPresent() ? Optional.empty() : Optional.of(wanted);
        canvas.show(result.section().or(source::section));
        return result;
    }

    private void up(Event event) {
        if (grip.isEmpty()) {
            return;
        }
        Grip held = grip.get();
        Optional<Function<ApproachAid, RecordedEdit>> wanted = edit;
        boolean clicked = !moved && event.button == 1;
        release();
        if (wanted.isPresent()) {
            source.aid().ifPresent(aid -> target.perform(wanted.get().apply(aid)));
        } else if (clicked && held.kind() == Grip.Kind.POINT) {
            source.host().flatMap(host -> GroundPoints.element(host, held.point().orElseThrow())).ifPresent(target::select);
        } else if (clicked && (held.kind() == Grip.Kind.GROUND || held.kind() == Grip.Kind.EDGE)) {
            canvas.surveyPoint(event.x, event.y).ifPresentOrElse(target::pick, () -> target.look(place(event.x, event.y)));
        }
        point(event.x, event.y);
    }

    /** Gives up what is being dragged; the view shows the document as it is. Returns whether anything was. */
    public boolean cancel() {
        if (grip.isEmpty()) {
            return false;
        }
        boolean eyeMoved = grip.get().kind() == Grip.Kind.EYE;
        release();
        if (eyeMoved) {
            eyeBefore.ifPresent(target::look);
        }
        target.read();
        return true;
    }

    /** Returns what all rules say of the drag that is under way, empty before something was moved. */
    public Optional<TrialVerdict> verdict() {
        return verdict;
    }

    private void release() {
        verdict.ifPresent(TrialVerdict::end);
        verdict = Optional.empty();
        told = Optional.empty();
        grip = Optional.empty();
        trial = Optional.empty();
        edit = Optional.empty();
        canvas.note(Optional.empty());
        canvas.highlight(Optional.empty());
        canvas.show(source.section());
    }
}
