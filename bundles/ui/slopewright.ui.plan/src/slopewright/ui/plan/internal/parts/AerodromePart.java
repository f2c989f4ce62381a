package slopewright.ui.plan.internal.parts;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.requests.LocationRequest;

import slopewright.drawing.scene.Mark;
import slopewright.model.Aerodrome;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;
import slopewright.ui.plan.internal.figures.ObstacleField;

/**
 * The part of an aerodrome. Where it has obstacles in great number they are drawn as one field, and only those that were clicked or
 * revealed get parts of their own.
 */
public final class AerodromePart extends PlanPart<Aerodrome> {

    /** With so many obstacles each still has a part of its own. */
    private static final int MOST_PARTS = 600;
    private static final int MOST_APART = 60;

    private final Set<Obstacle> apart = new LinkedHashSet<>();
    private Optional<ObstacleField> field = Optional.empty();

    AerodromePart(Aerodrome aerodrome, PlanContext context) {
        super(aerodrome, context, PlanLayer.GROUND);
    }

    private boolean isCrowded() {
        return element().getObstacles().size() > MOST_PARTS;
    }

    @Override
    protected List<Mark> marks() {
        return List.of();
    }

    @Override
    protected List<? extends Identified> childElements() {
        List<Identified> children = new ArrayList<>();
        children.addAll(element().getRunways());
        children.addAll(element().getHelipads());
        children.addAll(element().getTaxiwayEdges());
        children.addAll(element().getGroundLevels());
        apart.removeIf(obstacle -> obstacle.eContainer() != element());
        children.addAll(isCrowded() ? apart : element().getObstacles());
        return children;
    }

    @Override
    protected void refreshVisuals() {
        super.refreshVisuals();
        if (isCrowded() && field.isEmpty()) {
            ObstacleField made = new ObstacleField(context());
            visualParts().put(made.figure(), this);
            field = Optional.of(made);
        } else if (!isCrowded()) {
            removeField();
        }
        field.ifPresent(crowd -> crowd.update(apart));
    }

    @SuppressWarnings("unchecked")
    private Map<Object, Object> visualParts() {
        return getViewer().getVisualPartMap();
    }

    private void removeField() {
        field.ifPresent(crowd -> {
            visualParts().remove(crowd.figure());
            crowd.remove();
        });
        field = Optional.empty();
    }

    @Override
    public void removeNotify() {
        removeField();
        super.removeNotify();
    }

    /** Gives an obstacle a part of its own, so that it can be selected and moved. */
    public void setApart(Obstacle obstacle) {
        if (isCrowded() && obstacle.eContainer() == element() && apart.add(obstacle)) {
            apart.removeIf(old -> old != obstacle && apart.size() > MOST_APART && !isSelected(old));
            refresh();
        }
    }

    private boolean isSelected(Obstacle obstacle) {
        return getViewer().getEditPartRegistry().get(obstacle) instanceof EditPart part && part.getSelected() != SELECTED_NONE;
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        Optional<EditPart> hit = request instanceof LocationRequest at ? hit(at.getLocation()) : Optional.empty();
        return hit.map(part -> part.getDragTracker(request)).orElseGet(() -> super.getDragTracker(request));
    }

    private Optional<EditPart> hit(Point at) {
        Optional<Obstacle> obstacle = at == null ? Optional.empty() : field.flatMap(crowd -> crowd.at(at.x, at.y));
        obstacle.ifPresent(this::setApart);
        return obstacle.map(found -> (EditPart) getViewer().getEditPartRegistry().get(found));
    }
}
