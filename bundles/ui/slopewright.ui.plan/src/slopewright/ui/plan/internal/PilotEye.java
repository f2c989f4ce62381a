package slopewright.ui.plan.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.figures.MarkFigure;
import slopewright.ui.document.ViewState;
import slopewright.ui.document.Viewpoint;
import slopewright.ui.plan.internal.figures.Marks;
import slopewright.ui.plan.internal.places.PlanPlaces;

/** The pilot's eye in the plan: where it is, and how it is put down at a place at the height of the slope there. */
public final class PilotEye {

    private static final double HALF_PX = 11;
    private static final int STEPS = 8;

    private final PlanContext context;
    private final MarkFigure figure;

    /** Lays the symbol of the eye over a plan; it shows once an eye was placed. */
    public PilotEye(PlanContext context) {
        this.context = context;
        this.figure = MarkFigure.passive(context.diagram(), this::marks);
        context.diagram().layer(PlanLayer.EYE).add(figure);
    }

    /** Draws the eye where it is now. */
    public void update() {
        figure.update();
    }

    private ViewState state() {
        return context.document().viewState();
    }

    /**
     * Looks at the chosen aid from a pixel, at the height of its slope there, or tells why that can't be.
     *
     * @param x pixels
     * @param y pixels
     */
    public void lookFrom(int x, int y) {
        Optional<ApproachAid> aid = state().aid();
        Optional<ApproachHost> host = aid.flatMap(Projects::host);
        Optional<PlanAxis> axis = host.flatMap(context::axis);
        Optional<Siting> siting = aid.flatMap(context::layout);
        if (axis.isEmpty() || siting.isEmpty()) {
            context.notice(Messages.get("eye.no-aid"));
            return;
        }
        PlanPoint place = new PlanPoint(context.diagram().view().worldX(x), context.diagram().view().worldY(y));
        FramePoint ground = axis.get().toFrame(place, 0);
        FramePoint lens = siting.get().reference();
        double before = lens.alongM() - ground.alongM();
        if (before <= 0) {
            context.notice(Messages.get("eye.behind", MessageTexts.label(aid.get())));
            return;
        }
        double height = lens.heightM() + before * Angles.tanDeg(siting.get().slopeDeg());
        state().choose(aid.get().getId());
        state().look(new Viewpoint(host.get().getId(), new FramePoint(ground.alongM(), ground.rightM(), height)));
    }

    /** Returns where the eye is in the scene, empty where none was placed. */
    public Optional<ScenePoint> place() {
        return state().viewpoint().flatMap(eye -> axis(eye).map(axis -> PlanPlaces.point(axis, eye.eye().alongM(), eye.eye().rightM())));
    }

    private Optional<PlanAxis> axis(Viewpoint eye) {
        return Projects.hosts(context.project()).stream().filter(host -> eye.hostId().equals(host.getId())).findFirst()
                .flatMap(context::axis);
    }

    private List<Mark> marks() {
        Optional<ScenePoint> at = place();
        if (at.isEmpty()) {
            return List.of();
        }
        Viewpoint eye = state().viewpoint().orElseThrow();
        Marks marks = new Marks("");
        double px = 1 / context.diagram().view().scale();
        target().ifPresent(to -> marks.line(Style.dashed(Ink.WHEELS, 0.18), List.of(at.get(), to)));
        marks.area(Style.area(Ink.WHEELS, Ink.PAPER, 0.4), almond(at.get(), px));
        marks.disc(at.get(), 0.9, Style.fill(Ink.WHEELS));
        ScenePoint under = new ScenePoint(at.get().x(), at.get().y() - (HALF_PX + 8) * px);
        marks.text(under, Messages.get("eye.label", Readings.length(eye.eye().heightM())), Mark.Anchor.MIDDLE, 2, 0, Ink.WHEELS);
        return marks.list();
    }

    private Optional<ScenePoint> target() {
        Optional<ApproachAid> aid = state().aid();
        Optional<FramePoint> lens = aid.flatMap(context::layout).map(Siting::reference);
        Optional<PlanAxis> axis = aid.flatMap(Projects::host).flatMap(context::axis);
        return lens.isEmpty() || axis.isEmpty() ? Optional.empty() : Optional.of(PlanPlaces.point(axis.get().toPlane(lens.get())));
    }

    private static List<ScenePoint> almond(ScenePoint at, double px) {
        List<ScenePoint> points = new ArrayList<>();
        for (int side = 1; side >= -1; side -= 2) {
            for (int i = 0; i < STEPS; i++) {
                double turn = Math.PI * i / STEPS;
                points.add(new ScenePoint(at.x() - side * Math.cos(turn) * HALF_PX * px,
                        at.y() + side * Math.sin(turn) * HALF_PX * 0.55 * px));
            }
        }
        return points;
    }
}
