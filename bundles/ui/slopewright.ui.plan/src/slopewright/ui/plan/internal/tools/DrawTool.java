package slopewright.ui.plan.internal.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.Cursors;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.edit.AddChild;
import slopewright.siting.site.PlanPlane;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.figures.Marks;
import slopewright.ui.plan.internal.places.PlanPlaces;
import slopewright.ui.plan.internal.policies.MoveFeedback;

/**
 * Draws a shape with a click for each of its places; what is drawn is seen all the time, with the length of the last leg. Enter or a double
 * click ends it, Backspace takes the last place back, Escape gives up. Without a mouse arrows move the place, Space takes it. One edit, and
 * what was drawn is selected, so that the property sheet asks for the rest.
 */
public final class DrawTool extends AbstractTool {
    private static final double STEP_M = 10;
    private static final double SMALL_STEP_M = 1;
    private static final double LARGE_STEP_M = 100;
    private static final double SAME_PX = 4;

    private final PlanContext context;
    private final SiteShape shape;
    private final MoveFeedback feedback;
    private final List<PlanPoint> points = new ArrayList<>();
    private Optional<PlanPoint> byKeys = Optional.empty();

    /** Makes the tool of a plan for one shape. */
    public DrawTool(PlanContext context, SiteShape shape) {
        this.context = context;
        this.shape = shape;
        this.feedback = new MoveFeedback(context.diagram());
        setDefaultCursor(Cursors.CROSS);
    }

    /** Without a mouse it begins in the middle of the view. */
    @Override
    protected boolean handleFocusGained() {
        if (byKeys.isEmpty() && points.isEmpty()) {
            WorldView view = context.diagram().view();
            byKeys = Optional.of(new PlanPoint(view.worldX(view.widthPx() / 2), view.worldY(view.heightPx() / 2)));
            show();
        }
        return super.handleFocusGained();
    }

    private PlanPoint here() {
        return byKeys.orElseGet(() -> new PlanPoint(context.diagram().view().worldX(getLocation().x), context.diagram().view().worldY(
                getLocation().y)));
    }

    @Override
    protected boolean handleMove() {
        byKeys = Optional.empty();
        show();
        return true;
    }

    @Override
    protected boolean handleButtonDown(int button) {
        if (button == 1) {
            byKeys = Optional.empty();
            take();
        } else {
            end();
        }
        return true;
    }

    /** The second click of a double click has taken its place already. */
    @Override
    protected boolean handleDoubleClick(int button) {
        if (button == 1 && !points.isEmpty()) {
            end();
        }
        return true;
    }

    /** A place that was just taken is not taken again: a double click is two clicks. */
    private void take() {
        PlanPoint place = here();
        double same = SAME_PX / context.diagram().view().scale();
        boolean again = !points.isEmpty() && Math.hypot(place.eastM() - last().eastM(), place.northM() - last().northM()) < same;
        if (!again) {
            points.add(place);
        }
        if (points.size() >= shape.most()) {
            end();
        } else {
            show();
        }
    }

    private PlanPoint last() {
        return points.get(points.size() - 1);
    }

    private void end() {
        Optional<PlanPlane> plane = context.plane();
        if (points.size() < shape.least() || plane.isEmpty() || context.project().getAerodrome() == null) {
            show();
            return;
        }
        AddChild edit = shape.add(context.project().getAerodrome(), plane.get(), points);
        points.clear();
        byKeys = Optional.empty();
        feedback.erase();
        getDomain().getCommandStack().execute(new HistoryCommand(edit));
        getCurrentViewer().flush();
        if (getCurrentViewer().getEditPartRegistry().get(edit.child()) instanceof EditPart part) {
            getCurrentViewer().select(part);
        }
        getDomain().loadDefaultTool();
    }

    private void show() {
        ScenePoint here = PlanPlaces.point(here());
        if (context.plane().isEmpty()) {
            feedback.show(List.of(), List.of(Line.of(Messages.get("draw.no-place"), false)), here);
            return;
        }
        List<ScenePoint> line = new ArrayList<>(points.stream().map(PlanPlaces::point).toList());
        line.add(here);
        if (shape == SiteShape.AREA_OBSTACLE && line.size() > 2) {
            line.add(line.get(0));
        }
        Marks marks = new Marks("").line(Style.line(Ink.WHEELS, 0.5), line);
        line.forEach(place -> marks.disc(place, 0.9, Style.line(Ink.WHEELS, 0.4)));
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Messages.get("draw." + shape.key())));
        if (!points.isEmpty()) {
            double leg = Math.hypot(here().eastM() - last().eastM(), here().northM() - last().northM());
            lines.add(Line.of(Messages.get("measure.distance", Readings.length(leg))));
        }
        lines.add(Line.of(Messages.get(points.size() < shape.least() || shape.most() == shape.least() ? "draw.more" : "draw.end")));
        feedback.show(marks.list(), lines, here);
    }

    @Override
    protected boolean handleKeyDown(KeyEvent event) {
        double step = (event.stateMask & SWT.SHIFT) != 0 ? SMALL_STEP_M : (event.stateMask & SWT.MOD1) != 0 ? LARGE_STEP_M : STEP_M;
        switch (event.keyCode) {
            case SWT.ESC -> getDomain().loadDefaultTool();
            case SWT.BS -> {
                if (!points.isEmpty()) {
                    points.remove(points.size() - 1);
                }
                show();
            }
            case SWT.CR, SWT.KEYPAD_CR -> {
                if (points.size() < shape.least()) {
                    take();
                } else {
                    end();
                }
            }
            case SWT.SPACE -> take();
            case SWT.ARROW_LEFT -> arrow(-step, 0);
            case SWT.ARROW_RIGHT -> arrow(step, 0);
            case SWT.ARROW_UP -> arrow(0, step);
            case SWT.ARROW_DOWN -> arrow(0, -step);
            default -> {
                return super.handleKeyDown(event);
            }
        }
        return true;
    }

    private void arrow(double eastM, double northM) {
        byKeys = Optional.of(here().moved(eastM, northM));
        show();
    }

    @Override
    public void deactivate() {
        points.clear();
        byKeys = Optional.empty();
        feedback.erase();
        super.deactivate();
    }

    @Override
    protected String getCommandName() {
        return "draw";
    }
}
