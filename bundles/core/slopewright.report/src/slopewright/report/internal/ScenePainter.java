package slopewright.report.internal;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

import slopewright.drawing.Ink;
import slopewright.drawing.Mark;
import slopewright.drawing.Paper;
import slopewright.drawing.Scene;
import slopewright.drawing.ScenePoint;
import slopewright.drawing.Style;

/** Paints a scene on a {@link Graphics2D} whose unit is the millimetre. */
public final class ScenePainter {

    private static final double CAPTION_MM = 4.6;
    private static final double EDGE_MM = 2;

    private final Scene scene;
    private final Paper paper;

    /** Fits a scene onto paper. */
    public ScenePainter(Scene scene, double widthMm, double maxHeightMm) {
        this.scene = scene;
        paper = new Paper(scene, widthMm, maxHeightMm - scene.captions().size() * CAPTION_MM, EDGE_MM);
    }

    /** Returns the whole height, millimetres. */
    public double heightMm() {
        return paper.heightMm() + scene.captions().size() * CAPTION_MM;
    }

    /** Paints. */
    public void paint(Graphics2D graphics) {
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        Rectangle2D frame = new Rectangle2D.Double(EDGE_MM, EDGE_MM, paper.innerWidthMm(), paper.innerHeightMm());
        Shape before = graphics.getClip();
        graphics.clip(frame);
        for (Mark mark : scene.marks()) {
            paint(graphics, mark);
        }
        graphics.setClip(before);
        graphics.setColor(colour(Ink.DIMENSION));
        graphics.setStroke(new BasicStroke(0.2f));
        graphics.draw(frame);
        double y = paper.heightMm() + 3;
        for (String caption : scene.captions()) {
            text(graphics, EDGE_MM, y, caption, Mark.Anchor.START, 2.3, Ink.TEXT);
            y += CAPTION_MM;
        }
    }

    private void paint(Graphics2D graphics, Mark mark) {
        if (mark instanceof Mark.Path path) {
            Path2D shape = new Path2D.Double();
            for (int i = 0; i < path.points().size(); i++) {
                ScenePoint point = path.points().get(i);
                if (i == 0) {
                    shape.moveTo(paper.x(point), paper.y(point));
                } else {
                    shape.lineTo(paper.x(point), paper.y(point));
                }
            }
            if (path.closed()) {
                shape.closePath();
            }
            paint(graphics, shape, path.style());
        } else if (mark instanceof Mark.Disc disc) {
            double radius = disc.radiusMm();
            paint(graphics, new Ellipse2D.Double(paper.x(disc.centre()) - radius, paper.y(disc.centre()) - radius, 2 * radius, 2 * radius),
                    disc.style());
        } else if (mark instanceof Mark.Label label) {
            text(graphics, paper.x(label.at()), paper.y(label.at()) - label.dyMm(), label.text(), label.anchor(), label.sizeMm(),
                    label.ink());
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

    private static void text(Graphics2D graphics, double x, double y, String text, Mark.Anchor anchor, double sizeMm, Ink ink) {
        if (text.isEmpty()) {
            return;
        }
        Font font = new Font(Font.SANS_SERIF, Font.PLAIN, 100).deriveFont((float) (sizeMm * 1.25));
        double width = font.getStringBounds(text, graphics.getFontRenderContext()).getWidth();
        double left = anchor == Mark.Anchor.START ? x : anchor == Mark.Anchor.MIDDLE ? x - width / 2 : x - width;
        graphics.setColor(colour(ink));
        graphics.fill(font.createGlyphVector(graphics.getFontRenderContext(), text).getOutline((float) left, (float) y));
    }

    private static Color colour(Ink ink) {
        return new Color(Integer.parseInt(ink.rgb().substring(0, 6), 16));
    }
}
