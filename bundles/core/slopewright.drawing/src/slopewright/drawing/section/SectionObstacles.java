package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

import slopewright.drawing.internal.obstacles.DrawnBlock;
import slopewright.drawing.internal.obstacles.DrawnObstacle;
import slopewright.drawing.internal.obstacles.DrawnObstacles;
import slopewright.drawing.internal.obstacles.ObstacleLegend;
import slopewright.drawing.internal.obstacles.ObstacleTexts;
import slopewright.drawing.internal.obstacles.OmittedObstacles;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Argument;
import slopewright.messages.Words;

/**
 * The obstacles in a section. The worst of each kind are drawn singly; of the others, which may be thousands, only the outline that they
 * make is drawn. Of survey points there are the outline, every place with points through the surface, and the governing point.
 */
final class SectionObstacles {

    private static final int MOST_SINGLE = 60;
    private static final int MOST_BESIDE = 40;
    private static final double POINT_COLUMN_MM = 1.2;
    private static final double POINT_MM = 0.5;
    private static final double RING_MM = 1.7;
    private static final double LETTERS_MM = 2.05;
    private static final int MOST_GAP = 2;
    private static final int MOST_LISTED = 8;

    private final SectionLines lines;
    private final SectionLabels labels;
    private final DrawnObstacles obstacles;
    private final ObstacleTexts texts;
    private final Optional<ProtectionSurface> surface;
    private final SectionPoints points;
    private final List<DrawnObstacle> near;
    private final List<DrawnObstacle> single = new ArrayList<>();
    private final List<String> unnamed = new ArrayList<>();

    SectionObstacles(DrawnObstacles obstacles, ObstacleTexts texts, SectionLines lines, SectionLabels labels) {
        this.obstacles = obstacles;
        this.texts = texts;
        this.lines = lines;
        this.labels = labels;
        surface = obstacles.comparison().map(found -> found.surface());
        SectionWindow window = lines.window();
        points = new SectionPoints(window, surface);
        near = obstacles.worstFirst().stream().filter(obstacle -> obstacle.extent().lastM() >= window.minAlongM()
                && obstacle.extent().firstM() <= window.maxAlongM() && (obstacle.isInside() || isNear(obstacle))).toList();
        choose(DrawnObstacle::isInside, MOST_SINGLE);
        choose(obstacle -> !obstacle.isInside(), MOST_BESIDE);
    }

    private boolean isNear(DrawnObstacle obstacle) {
        return Math.abs(obstacle.extent().offsetM()) <= reachM(obstacle.extent().firstM());
    }

    private double reachM(double alongM) {
        return points.reachM(alongM);
    }

    /** Takes the worst. */
    private void choose(Predicate<DrawnObstacle> kind, int most) {
        near.stream().filter(kind).limit(most).forEach(single::add);
    }

    /** Returns how many obstacles there are and how many are drawn singly, empty where all are. */
    Optional<String> simplified(DrawnAid drawn) {
        return near.size() == single.size() ? Optional.empty()
                : Optional.of(drawn.say("drawing.simplified", Words.count(near.size()), Words.count(single.size())));
    }

    /** Returns what the drawing has to say of what it shows: what is simplified, what is cut at its upper edge, what had no room. */
    List<String> notes(DrawnAid drawn) {
        List<String> notes = new ArrayList<>(simplified(drawn).stream().toList());
        List<Argument> cut = near.stream().filter(obstacle -> obstacle.extent().topM() > lines.window().maxHeightM())
                .<Argument>map(obstacle -> Words.name(obstacle.label())).toList();
        if (!cut.isEmpty()) {
            notes.add(drawn.say("drawing.omitted.top", Words.listed(cut, MOST_LISTED)));
        }
        if (!unnamed.isEmpty()) {
            notes.add(drawn.say("drawing.unnamed", Words.listed(unnamed.stream().map(Words::name).toList(), MOST_LISTED)));
        }
        return notes;
    }

    /** Returns how the section leaves out what stands outside its window or too far beside the approach. */
    OmittedObstacles.Leaving leaving() {
        SectionWindow window = lines.window();
        Set<String> together = near.stream().map(DrawnObstacle::id).collect(Collectors.toCollection(HashSet::new));
        single.forEach(obstacle -> together.remove(obstacle.id()));
        return new OmittedObstacles.Leaving(together, obstacle -> obstacle.extent().lastM() >= window.minAlongM()
                && obstacle.extent().firstM() <= window.maxAlongM() && !obstacle.isInside() && !isNear(obstacle), SectionPoints.BESIDE_M,
                (alongM, rightM, heightM) -> shows(alongM, rightM) && window.holds(alongM, heightM));
    }

    private boolean shows(double alongM, double rightM) {
        return alongM >= lines.window().minAlongM() && alongM <= lines.window().maxAlongM() && Math.abs(rightM) <= reachM(alongM);
    }

    /** Returns the key to what is seen. */
    List<LegendEntry> legend(DrawnAid drawn) {
        return ObstacleLegend.section(drawn, near, obstacles, this::shows);
    }

    /** Draws the outline of obstacles that are not drawn singly, and of survey points. */
    void outlines() {
        if (near.size() > single.size()) {
            obstacleOutline();
        }
        obstacles.blocks().forEach(this::pointOutline);
    }

    private void obstacleOutline() {
        SectionWindow window = lines.window();
        int columns = (int) Math.ceil(window.widthMm() / SectionPoints.COLUMN_MM);
        double[] tops = new double[columns];
        for (DrawnObstacle obstacle : near) {
            for (FramePoint point : obstacle.shape().points()) {
                int column = (int) Math.floor(window.xMm(point.alongM()) / SectionPoints.COLUMN_MM);
                if (column >= 0 && column < columns && point.heightM() > tops[column]) {
                    tops[column] = point.heightM();
                }
            }
        }
        List<ScenePoint> outline = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            double x = window.at((i + 0.5) * SectionPoints.COLUMN_MM, 0).x();
            double top = Math.min(tops[i], window.maxHeightM());
            outline.add(new ScenePoint(x, 0));
            if (top > 0) {
                outline.add(new ScenePoint(x, top));
                outline.add(new ScenePoint(x, 0));
            }
        }
        lines.path(Style.line(Ink.TAXIWAY, 0.1), "", outline);
    }

    /** Draws the highest of the points of a block over each place; neighbours are joined. */
    private void pointOutline(DrawnBlock block) {
        SectionWindow window = lines.window();
        int[] tops = points.highest(block.places());
        List<ScenePoint> run = new ArrayList<>();
        int last = 0;
        for (int i = 0; i < tops.length; i++) {
            double top = tops[i] < 0 ? Double.NaN : block.places().heightM()[tops[i]];
            if (Double.isNaN(top) || top > window.maxHeightM() || top < window.minHeightM()) {
                continue;
            }
            if (i - last > MOST_GAP) {
                run(block.id(), run);
            }
            run.add(new ScenePoint(window.at((i + 0.5) * SectionPoints.COLUMN_MM, 0).x(), top));
            last = i;
        }
        run(block.id(), run);
    }

    private void run(String id, List<ScenePoint> run) {
        if (run.size() == 1) {
            lines.upright(Style.line(Ink.OBSTACLE, 0.15), id, run.get(0).x(), run.get(0).y() - POINT_MM / lines.window().mmUp(), POINT_MM);
        } else if (!run.isEmpty()) {
            lines.path(Style.line(Ink.OBSTACLE, 0.15), id, run);
        }
        run.clear();
    }

    void symbols() {
        obstacles.topless().forEach(this::topless);
        for (int i = single.size() - 1; i >= 0; i--) {
            symbol(single.get(i));
        }
        obstacles.blocks().forEach(this::points);
    }

    private static Ink ink(boolean through) {
        return through ? Ink.PENETRATION : Ink.OBSTACLE;
    }

    /** An obstacle without a top could reach to any height. */
    private void topless(DrawnObstacles.Topless topless) {
        FramePoint place = topless.place();
        if (Math.abs(place.rightM()) <= reachM(place.alongM())) {
            lines.line(Style.dashed(Ink.OBSTACLE, 0.25), topless.id(), place.alongM(), 0, place.alongM(), lines.window().maxHeightM());
        }
    }

    private void symbol(DrawnObstacle obstacle) {
        Ink ink = ink(obstacle.isThrough());
        boolean inside = obstacle.isInside();
        Style stem = inside ? Style.line(ink, 0.5) : Style.dashed(ink, 0.15);
        String id = obstacle.id();
        double top = obstacle.extent().topM();
        double foot = Math.min(0, top - 2 / lines.window().mmUp());
        SurveyedShape shape = obstacle.shape();
        if (shape.kind() == SurveyedShape.Kind.AREA) {
            double first = obstacle.extent().firstM();
            double last = obstacle.extent().lastM();
            lines.area(inside ? Style.area(ink, Ink.TAXIWAY, 0.3) : Style.dashed(ink, 0.15), id, first, foot, last, foot, last, top, first,
                    top);
        } else {
            shape.points().forEach(point -> lines.line(stem, id, point.alongM(), foot, point.alongM(), point.heightM()));
            double[] xy = shape.points().stream()
                    .flatMapToDouble(point -> DoubleStream.of(point.alongM(), point.heightM())).toArray();
            lines.pieces(stem, id, xy);
        }
        ScenePoint at = at(obstacle);
        if (obstacle.isThrough()) {
            lines.cross(Style.line(Ink.PENETRATION, 0.5), id, at.x(), at.y(), 1.1);
        } else if (inside) {
            lines.across(Style.line(ink, 0.4), id, at.x(), at.y(), 0.9);
        } else {
            lines.symbol(Style.area(ink, Ink.PAPER, 0.2), id, at.x(), at.y(), 0, 0.9, 0.9, 0, 0, -0.9, -0.9, 0);
        }
        if (shape.verticalAccuracyM() * lines.window().mmUp() > 0.3) {
            double upper = at.y() + shape.verticalAccuracyM();
            lines.line(Style.line(ink, 0.15), id, at.x(), at.y(), at.x(), upper);
            lines.across(Style.line(ink, 0.15), id, at.x(), upper, 0.5);
        }
        if (obstacles.isGoverning(obstacle.compared())) {
            lines.disc(at.x(), at.y(), RING_MM, Style.line(ink, 0.25), id);
        }
        labels.keep(at.x(), at.y(), 1, 1, 1);
    }

    /** Marks every place with points through the surface, and the governing point of the block. */
    private void points(DrawnBlock block) {
        SectionWindow window = lines.window();
        int columns = (int) Math.ceil(window.widthMm() / POINT_COLUMN_MM);
        FramePoint[] highest = new FramePoint[columns];
        for (FramePoint point : block.above()) {
            int column = (int) Math.floor(window.xMm(point.alongM()) / POINT_COLUMN_MM);
            if (column >= 0 && column < columns && (highest[column] == null || point.heightM() > highest[column].heightM())) {
                highest[column] = point;
            }
        }
        for (FramePoint point : highest) {
            if (point != null) {
                lines.cross(Style.line(Ink.PENETRATION, 0.25), block.id(), point.alongM(), point.heightM(), POINT_MM);
            }
        }
        block.compared().ifPresent(compared -> {
            FramePoint worst = compared.worst().point();
            Ink ink = ink(compared.isPenetrating());
            lines.cross(Style.line(ink, 0.4), block.id(), worst.alongM(), worst.heightM(), compared.isPenetrating() ? 1.1 : POINT_MM);
            lines.disc(worst.alongM(), worst.heightM(), RING_MM, Style.line(ink, 0.25), block.id());
            labels.keep(worst.alongM(), worst.heightM(), 1.7, 1.7, 1.7);
        });
    }

    /** Returns where the symbol and text of an obstacle stand: where it is worst, else at its highest corner. */
    private static ScenePoint at(DrawnObstacle obstacle) {
        double top = obstacle.extent().topM();
        if (obstacle.shape().points().size() > 1 && obstacle.compared().isPresent()) {
            FramePoint worst = obstacle.compared().get().worst().point();
            double along = Math.max(obstacle.extent().firstM(), Math.min(obstacle.extent().lastM(), worst.alongM()));
            return new ScenePoint(along, obstacle.shape().kind() == SurveyedShape.Kind.AREA ? top
                    : worst.heightM() - obstacle.shape().verticalAccuracyM());
        }
        return new ScenePoint(obstacle.shape().points().stream().filter(point -> point.heightM() >= top).findFirst().orElseThrow()
                .alongM(), top);
    }

    /** Names the governing points of blocks, and obstacles without a top. */
    void pointTexts() {
        for (DrawnBlock block : obstacles.blocks()) {
            block.compared().ifPresent(compared -> pointText(block, compared));
        }
        for (DrawnObstacles.Topless topless : obstacles.topless()) {
            FramePoint place = topless.place();
            if (Math.abs(place.rightM()) <= reachM(place.alongM())) {
                labels.write(place.alongM(), 0, texts.topless(topless), LETTERS_MM,
                        SectionLabels.Side.ABOVE_RIGHT, Ink.OBSTACLE, topless.id());
            }
        }
    }

    private void pointText(DrawnBlock block, ObstacleComparison compared) {
        FramePoint worst = compared.worst().point();
        String text = texts.governingPoint(block, compared);
        if (lines.window().holds(worst.alongM(), worst.heightM()) && !labels.write(worst.alongM(), worst.heightM()
                + RING_MM / lines.window().mmUp(), text, LETTERS_MM, SectionLabels.Side.ABOVE,
                ink(compared.isPenetrating()), block.id())) {
            unnamed.add(text);
        }
    }

    /** Writes the names of some. */
    void texts(Predicate<DrawnObstacle> which, int most) {
        int left = most;
        for (DrawnObstacle obstacle : single) {
            if (!which.test(obstacle)) {
                continue;
            }
            if (left > 0 && text(obstacle)) {
                left--;
            } else if (obstacle.isInside() && lines.window().holds(at(obstacle).x(), at(obstacle).y())) {
                unnamed.add(obstacle.label());
            }
        }
    }

    private boolean text(DrawnObstacle obstacle) {
        ScenePoint at = at(obstacle);
        return labels.write(at.x(), at.y(), texts.section(obstacle, surface.isPresent()), LETTERS_MM,
                SectionLabels.Side.ABOVE, ink(obstacle.isThrough()), obstacle.id());
    }
}
