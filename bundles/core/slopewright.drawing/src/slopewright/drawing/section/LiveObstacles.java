package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.FramePoint;

/**
 * The obstacles in a live section. The worst of each kind are drawn singly; of the others, which may be thousands, only the outline
 * that they make is drawn.
 */
final class LiveObstacles {

    private static final int MOST_SINGLE = 60;
    private static final int MOST_BESIDE = 40;
    private static final double COLUMN_MM = 0.6;
    private static final double LETTERS_MM = 2.05;

    private final LiveLines lines;
    private final LiveLabels labels;
    private final SectionWords words;
    private final List<SectionObstacle> all;
    private final List<SectionObstacle> single = new ArrayList<>();

    LiveObstacles(SectionObstacles obstacles, LiveLines lines, LiveLabels labels, SectionWords words) {
        this.lines = lines;
        this.labels = labels;
        this.words = words;
        SectionWindow window = lines.window();
        all = obstacles.worstFirst().stream().filter(one -> one.lastM() >= window.minAlongM() && one.firstM() <= window.maxAlongM())
                .toList();
        choose(SectionObstacle::isInside, MOST_SINGLE);
        choose(one -> !one.isInside(), MOST_BESIDE);
    }

    /** Takes the worst. */
    private void choose(Predicate<SectionObstacle> kind, int most) {
        all.stream().filter(kind).limit(most).forEach(single::add);
    }

    private boolean isSimplified() {
        return all.size() > single.size();
    }

    /** Draws the outline of those that are not drawn singly. */
    void simplified() {
        if (!isSimplified()) {
            return;
        }
        SectionWindow window = lines.window();
        int columns = (int) Math.ceil(window.widthMm() / COLUMN_MM);
        double[] tops = new double[columns];
        for (SectionObstacle obstacle : all) {
            for (FramePoint point : obstacle.shape().points()) {
                int column = (int) Math.floor(window.xMm(point.alongM()) / COLUMN_MM);
                if (column >= 0 && column < columns && point.heightM() > tops[column]) {
                    tops[column] = point.heightM();
                }
            }
        }
        List<ScenePoint> outline = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            double x = window.at((i + 0.5) * COLUMN_MM, 0).x();
            double top = Math.min(tops[i], window.maxHeightM());
            outline.add(new ScenePoint(x, 0));
            if (top > 0) {
                outline.add(new ScenePoint(x, top));
                outline.add(new ScenePoint(x, 0));
            }
        }
        lines.path(Style.line(Ink.TAXIWAY, 0.1), outline);
    }

    void symbols() {
        for (int i = single.size() - 1; i >= 0; i--) {
            symbol(single.get(i));
        }
    }

    private static Ink ink(SectionObstacle obstacle) {
        return obstacle.isThrough() ? Ink.PENETRATION : Ink.OBSTACLE;
    }

    private void symbol(SectionObstacle obstacle) {
        Ink ink = ink(obstacle);
        boolean inside = obstacle.isInside();
        Style stem = inside ? Style.line(ink, 0.5) : Style.dashed(ink, 0.15);
        String id = obstacle.id();
        double top = obstacle.topM();
        double foot = Math.min(0, top - 2 / lines.window().mmUp());
        SurveyedShape shape = obstacle.shape();
        if (shape.kind() == SurveyedShape.Kind.AREA) {
            lines.area(inside ? Style.area(ink, Ink.TAXIWAY, 0.3) : Style.dashed(ink, 0.15), id, obstacle.firstM(), foot, obstacle.lastM(),
                    foot, obstacle.lastM(), top, obstacle.firstM(), top);
        } else {
            shape.points().forEach(point -> lines.line(stem, id, point.alongM(), foot, point.alongM(), point.heightM()));
            double[] xy = shape.points().stream().flatMapToDouble(point -> java.util.stream.DoubleStream.of(point.alongM(), point
                    .heightM())).toArray();
            lines.pieces(stem, id, xy);
        }
        double at = atM(obstacle);
        if (obstacle.isThrough()) {
            cross(id, at, top);
        } else if (inside) {
            lines.across(Style.line(ink, 0.4), id, at, top, 0.9);
        } else {
            lines.symbol(Style.area(ink, Ink.PAPER, 0.2), id, at, top, 0, 0.9, 0.9, 0, 0, -0.9, -0.9, 0);
        }
        if (shape.verticalAccuracyM() * lines.window().mmUp() > 0.3) {
            lines.line(Style.line(ink, 0.15), id, at, top, at, top + shape.verticalAccuracyM());
            lines.across(Style.line(ink, 0.15), id, at, top + shape.verticalAccuracyM(), 0.5);
        }
        labels.keep(at, top, 1, 1, 1);
    }

    private void cross(String id, double alongM, double heightM) {
        SectionWindow window = lines.window();
        double side = 1.1 / window.mmAlong();
        double up = 1.1 / window.mmUp();
        Style style = Style.line(Ink.PENETRATION, 0.5);
        lines.line(style, id, alongM - side, heightM - up, alongM + side, heightM + up);
        lines.line(style, id, alongM - side, heightM + up, alongM + side, heightM - up);
    }

    /** Returns where the symbol and text of an obstacle stand: where it is worst, else at its highest corner. */
    private static double atM(SectionObstacle obstacle) {
        if (obstacle.shape().kind() == SurveyedShape.Kind.AREA) {
            return (obstacle.firstM() + obstacle.lastM()) / 2;
        }
        double top = obstacle.topM();
        return obstacle.shape().points().stream().filter(point -> point.heightM() >= top).findFirst().orElseThrow().alongM();
    }

    /** Writes the names of some. */
    void texts(Predicate<SectionObstacle> which, int most) {
        int left = most;
        for (SectionObstacle obstacle : single) {
            if (left > 0 && which.test(obstacle)) {
                left -= text(obstacle) ? 1 : 0;
            }
        }
    }

    /** Says how many there are where not all are drawn singly. */
    void count() {
        if (isSimplified()) {
            SectionWindow window = lines.window();
            ScenePoint corner = window.at(window.widthMm() / 2, window.heightMm() - 4);
            labels.write(corner.x(), corner.y(), words.say(SectionWords.Word.SIMPLIFIED, all.size(), single.size()), LETTERS_MM,
                    LiveLabels.Side.RIGHT, Ink.DIMENSION, "");
        }
    }

    private boolean text(SectionObstacle obstacle) {
        StringBuilder text = new StringBuilder(words.say(SectionWords.Word.OBSTACLE, obstacle.label(), words.length(obstacle.topM())));
        if (obstacle.offsetM() != 0) {
            boolean left = obstacle.offsetM() < 0;
            text.append(", ").append(words.say(left ? SectionWords.Word.LEFT : SectionWords.Word.RIGHT, words.length(Math.abs(obstacle
                    .offsetM()))));
        }
        if (obstacle.isThrough()) {
            text.append(", ").append(words.say(SectionWords.Word.THROUGH, words.length(obstacle.excessM())));
        } else if (!obstacle.isInside()) {
            text.append(", ").append(words.say(SectionWords.Word.BESIDE));
        }
        return labels.write(atM(obstacle), obstacle.topM(), text.toString(), LETTERS_MM, LiveLabels.Side.ABOVE, ink(obstacle), obstacle
                .id());
    }
}
