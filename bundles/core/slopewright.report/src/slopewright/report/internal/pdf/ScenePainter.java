package slopewright.report.internal.pdf;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.drawing.scene.TextWidth;
import slopewright.drawing.sheet.Sheet;

/**
 * Paints a scene on a {@link Graphics2D} whose unit is the millimetre. Letters are painted as outlines of the bundled face, or left to
 * somebody who writes them as text ({@link #withoutLetters}).
 */
public final class ScenePainter {

    private static final float HALO_MM = 0.5f;

    private final Fonts fonts;
    private final Sheet sheet;
    private boolean lettered = true;

    /** Paints a sheet. */
    public ScenePainter(Sheet sheet) {
        this(sheet, new Fonts());
    }

    /** Paints a sheet with a face that others paint with as well, one after the other. */
    ScenePainter(Sheet sheet, Fonts fonts) {
        this.sheet = sheet;
        this.fonts = fonts;
    }

    /** Returns this painter, which leaves the letters out and paints the light ground behind them alone. */
    ScenePainter withoutLetters() {
        lettered = false;
        return this;
    }

    /** Returns where a label begins, millimetres. */
    double left(Mark.Label label) {
        double width = fonts.width(label.text(), size(label));
        return switch (label.anchor()) {
            case START -> label.at().x();
            case MIDDLE -> label.at().x() - width / 2;
            case END -> label.at().x() - width;
        };
    }

    /** Returns the size of the type of a label, millimetres. */
    static double size(Mark.Label label) {
        return label.sizeMm() / TextWidth.CAPITAL;
    }

    /** Returns the whole width, millimetres. */
    public double widthMm() {
        return sheet.widthMm();
    }

    /** Returns the whole height, millimetres. */
    public double heightMm() {
        return sheet.heightMm();
    }

    /** Paints. */
    public void paint(Graphics2D graphics) {
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        ScenePoint from = sheet.frame().get(0);
        ScenePoint to = sheet.frame().get(1);
        Rectangle2D frame = new Rectangle2D.Double(from.x(), from.y(), to.x() - from.x(), to.y() - from.y());
        Shape before = graphics.getClip();
        graphics.clip(frame);
        sheet.inside().forEach(mark -> paint(graphics, mark));
        graphics.setClip(before);
        if (!sheet.isBordered()) {
            graphics.setColor(colour(Ink.DIMENSION));
            graphics.setStroke(new BasicStroke(0.25f));
            graphics.draw(frame);
        }
        sheet.below().forEach(mark -> paint(graphics, mark));
    }

    private void paint(Graphics2D graphics, Mark mark) {
        if (mark instanceof Mark.Path path) {
            Path2D shape = new Path2D.Double();
            for (int i = 0; i < path.points().size(); i++) {
                ScenePoint point = path.points().get(i);
                if (i == 0) {
                    shape.moveTo(point.x(), point.y());
                } else {
                    shape.lineTo(point.x(), point.y());
                }
            }
            if (path.closed()) {
                shape.closePath();
            }
            paint(graphics, shape, path.style());
        } else if (mark instanceof Mark.Disc disc) {
            double radius = disc.radiusMm();
            paint(graphics, new Ellipse2D.Double(disc.centre().x() - radius, disc.centre().y() - radius, 2 * radius, 2 * radius), disc
                    .style());
        } else if (mark instanceof Mark.Label label && !label.text().isEmpty()) {
            text(graphics, label);
        }
    }

    private static void paint(Graphics2D graphics, Shape shape, Style style) {
        if (style.fill() != Ink.NONE) {
            graphics.setColor(colour(style.fill()));
            graphics.fill(shape);
        }
        if (style.line() != Ink.NONE) {
            graphics.setColor(colour(style.line()));
            float width = (float) style.widthMm();
            graphics.setStroke(style.dashed()
                    ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {2, 1.2f}, 0)
                    : new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            graphics.draw(shape);
        }
    }

    private void text(Graphics2D graphics, Mark.Label label) {
        Shape outline = fonts.outline(label.text(), size(label), left(label), label.at().y());
        if (label.ink() != Ink.PAPER) {
            graphics.setColor(colour(Ink.PAPER));
            graphics.setStroke(new BasicStroke(HALO_MM, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            graphics.draw(outline);
        }
        if (lettered) {
            graphics.setColor(colour(label.ink()));
            graphics.fill(outline);
        }
    }

    static Color colour(Ink ink) {
        return new Color(Integer.parseInt(ink.rgb(), 16));
    }
}
