package slopewright.ui.plan.internal.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.ScenePoint;
import slopewright.exchange.survey.SurveyReading;
import slopewright.model.GroundLevel;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.SitingException;
import slopewright.siting.site.PlanPlane;
import slopewright.siting.site.SurveyPoints;
import slopewright.ui.diagram.WorldBox;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;
import slopewright.ui.plan.internal.places.PlanPlaces;

/** Shows in the plan where what would be imported lies, as hollow squares and broken lines; nothing of it is in the project. */
final class ImportPreview extends Figure {

    /** Of a block so many points are shown at most, evenly taken. */
    private static final int MOST_POINTS = 20_000;
    private static final int SIDE_PX = 6;
    private static final double MARGIN_PX = 40;

    private final PlanContext context;
    private final Runnable viewListener = this::update;
    private final List<List<ScenePoint>> shapes = new ArrayList<>();

    /** Lays it over a plan. */
    ImportPreview(PlanContext context) {
        this.context = context;
        context.diagram().layer(PlanLayer.OVERLAY).add(this);
        context.diagram().view().addListener(viewListener);
    }

    /** Shows what was read, and so much of the plan that all of it is seen. */
    void show(Optional<SurveyReading> reading) {
        shapes.clear();
        reading.ifPresent(found -> context.plane().ifPresent(plane -> collect(found, plane)));
        WorldView view = context.diagram().view();
        WorldBox.around(shapes.stream().flatMap(List::stream).toList()).filter(box -> !view.visible().holds(box))
                .ifPresent(box -> view.show(box.and(view.visible()), MARGIN_PX));
        update();
    }

    /** Takes it away. */
    void remove() {
        context.diagram().view().removeListener(viewListener);
        if (getParent() != null) {
            getParent().remove(this);
        }
    }

    private void collect(SurveyReading reading, PlanPlane plane) {
        for (Identified element : reading.elements()) {
            if (element instanceof Obstacle obstacle) {
                List<ScenePoint> points = new ArrayList<>();
                obstacle.getPlaces().forEach(place -> on(plane, place).ifPresent(points::add));
                if (obstacle.getKind() == ObstacleKind.AREA && !points.isEmpty()) {
                    points.add(points.get(0));
                }
                shapes.add(points);
            } else if (element instanceof GroundLevel level) {
                shapes.add(on(plane, level.getPlace()).map(List::of).orElse(List.of()));
            }
        }
        reading.points().ifPresent(points -> collect(points, plane));
    }

    private void collect(SurveyPoints points, PlanPlane plane) {
        int step = Math.max(1, points.count() / MOST_POINTS);
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        for (int i = 0; i < points.count(); i += step) {
            if (points.plane()) {
                place.setEastM(points.east()[i]);
                place.setNorthM(points.north()[i]);
            } else {
                place.setLongitudeDeg(points.east()[i]);
                place.setLatitudeDeg(points.north()[i]);
            }
            on(plane, place).ifPresent(point -> shapes.add(List.of(point)));
        }
    }

    private static Optional<ScenePoint> on(PlanPlane plane, Place place) {
        try {
            return Optional.of(PlanPlaces.point(plane.toPlane(place)));
        } catch (SitingException e) {
            return Optional.empty();
        }
    }

    private void update() {
        WorldView view = context.diagram().view();
        setBounds(shapes.isEmpty() ? new Rectangle() : new Rectangle(0, 0, (int) view.widthPx(), (int) view.heightPx()));
        repaint();
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        WorldView view = context.diagram().view();
        WorldBox seen = view.visible().grown(SIDE_PX / view.scale());
        graphics.setForegroundColor(Inks.colour(Ink.WHEELS));
        for (List<ScenePoint> shape : shapes) {
            ScenePoint before = null;
            for (ScenePoint point : shape) {
                int x = (int) view.toX(point.x());
                int y = (int) view.toY(point.y());
                if (seen.contains(point.x(), point.y())) {
                    graphics.drawRectangle(x - SIDE_PX / 2, y - SIDE_PX / 2, SIDE_PX, SIDE_PX);
                }
                if (before != null) {
                    graphics.setLineStyle(Graphics.LINE_DASH);
                    graphics.drawLine((int) view.toX(before.x()), (int) view.toY(before.y()), x, y);
                    graphics.setLineStyle(Graphics.LINE_SOLID);
                }
                before = point;
            }
        }
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }
}
