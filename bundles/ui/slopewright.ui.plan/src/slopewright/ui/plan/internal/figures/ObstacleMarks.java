package slopewright.ui.plan.internal.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.WorldBox;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.places.Obstruction;

/** Obstacles by kind. One that stands through an obstacle surface is crossed as well as coloured, and says by how much. */
public final class ObstacleMarks {

    private static final double LABEL_MM = 2;
    private static final double SYMBOL_PX = 7;
    private static final double HATCH_PX = 9;
    /** How far beyond the window a symbol may stand whose label reaches into it. */
    private static final double BESIDE_PX = 400;
    private static final int MOST_HATCHES = 160;

    private ObstacleMarks() {
    }

    /** Draws an obstacle, nothing where it has no place or cannot be seen. */
    public static List<Mark> of(PlanContext context, Obstacle obstacle) {
        Marks marks = new Marks(obstacle.getId());
        List<ScenePoint> places = context.places().points(obstacle);
        if (places.isEmpty()) {
            return List.of();
        }
        WorldView view = context.diagram().view();
        if (!WorldBox.around(places).orElseThrow().meets(view.visible().grown(BESIDE_PX / view.scale()))) {
            return List.of();
        }
        Optional<Double> excess = context.obstruction(obstacle).map(Obstruction::excessM).filter(above -> above > 0);
        boolean isOpen = context.obstructions().flatMap(all -> all.uncompared(obstacle)).isPresent();
        Ink ink = excess.isPresent() ? Ink.PENETRATION : Ink.OBSTACLE;
        double px = 1 / view.scale();
        ScenePoint label = places.get(0);
        if (obstacle.getKind() == ObstacleKind.AREA && places.size() > 2) {
            hatch(marks, places, view, ink);
            marks.area(Style.line(ink, 0.35), places);
            label = middle(places);
        } else if (obstacle.getKind() == ObstacleKind.LINE && places.size() > 1) {
            marks.line(Style.line(ink, 0.4), places);
            places.forEach(place -> marks.disc(place, 0.6, Style.fill(ink)));
        } else {
            mast(marks, label, px, ink);
        }
        if (excess.isPresent()) {
            cross(marks, label, px);
        }
        ScenePoint beside = new ScenePoint(label.x() + (SYMBOL_PX + 3) * px, label.y());
        marks.text(beside, text(obstacle, excess, isOpen), Mark.Anchor.START, LABEL_MM, 0, ink);
        return marks.list();
    }

    private static String text(Obstacle obstacle, Optional<Double> excess, boolean isOpen) {
        StringBuilder text = new StringBuilder(MessageTexts.label(obstacle));
        topM(obstacle).ifPresent(top -> text.append("  ").append(Readings.length(top)));
        excess.ifPresent(above -> text.append("  ✕ " + Messages.get("plan.through", Readings.length(above))));
        text.append(isOpen ? "  ? " + Messages.get("plan.uncompared") : "");
        return text.toString();
    }

    /** Returns the highest elevation of an obstacle, metres, empty where none is known. */
    public static Optional<Double> topM(Obstacle obstacle) {
        Optional<Double> highest = obstacle.getPlaces().stream().map(Place::getElevationM).filter(top -> top != null).max(Double::compare);
        return highest.isPresent() ? highest : Optional.ofNullable(obstacle.getTopElevationM());
    }

    private static void mast(Marks marks, ScenePoint at, double px, Ink ink) {
        double wing = SYMBOL_PX * 0.7 * px;
        double foot = at.y() - 2 * px;
        ScenePoint top = new ScenePoint(at.x(), at.y() + SYMBOL_PX * 1.5 * px);
        marks.line(Style.line(ink, 0.45), List.of(new ScenePoint(at.x() - wing, foot), top, new ScenePoint(at.x() + wing, foot)));
        marks.disc(at, 0.45, Style.fill(ink));
    }

    private static void cross(Marks marks, ScenePoint at, double px) {
        double arm = SYMBOL_PX * px;
        Style style = Style.line(Ink.PENETRATION, 0.6);
        marks.line(style, List.of(new ScenePoint(at.x() - arm, at.y() - arm), new ScenePoint(at.x() + arm, at.y() + arm)));
        marks.line(style, List.of(new ScenePoint(at.x() - arm, at.y() + arm), new ScenePoint(at.x() + arm, at.y() - arm)));
    }

    private static ScenePoint middle(List<ScenePoint> ring) {
        double x = ring.stream().mapToDouble(ScenePoint::x).average().orElse(0);
        double y = ring.stream().mapToDouble(ScenePoint::y).average().orElse(0);
        return new ScenePoint(x, y);
    }

    /** Hatches the part of an area that can be seen with lines that rise to the right. */
    private static void hatch(Marks marks, List<ScenePoint> ring, WorldView view, Ink ink) {
        WorldBox box = WorldBox.around(ring).orElseThrow();
        WorldBox seen = view.visible();
        double least = Math.max(box.minY() - box.maxX(), seen.minY() - seen.maxX());
        double most = Math.min(box.maxY() - box.minX(), seen.maxY() - seen.minX());
        double step = Math.max(HATCH_PX / view.scale() * Math.sqrt(2), (most - least) / MOST_HATCHES);
        for (double shift = Math.ceil(least / step) * step; shift < most; shift += step) {
            List<Double> cuts = cuts(ring, shift);
            for (int i = 0; i + 1 < cuts.size(); i += 2) {
                double from = cuts.get(i);
                double to = cuts.get(i + 1);
                marks.line(Style.line(ink, 0.12), List.of(new ScenePoint(from, from + shift), new ScenePoint(to, to + shift)));
            }
        }
    }

    /** Returns where the line y = x + shift cuts a ring, by x. */
    private static List<Double> cuts(List<ScenePoint> ring, double shift) {
        List<Double> cuts = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            ScenePoint from = ring.get(i);
            ScenePoint to = ring.get((i + 1) % ring.size());
            double a = from.y() - from.x() - shift;
            double b = to.y() - to.x() - shift;
            if (a > 0 != b > 0) {
                cuts.add(from.x() + (to.x() - from.x()) * a / (a - b));
            }
        }
        cuts.sort(Double::compare);
        return cuts;
    }
}
