package slopewright.ui.diagram.figures;

import java.util.List;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.PrecisionRectangle;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.widgets.Display;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.theme.Lettering;

/** Paints marks of a scene on the screen, says where they lie there, and finds out whether a pixel hits one. */
public final class MarkPainter {

    private static final int BEHIND_TEXT_ALPHA = 200;
    private static final int OPAQUE = 255;
    private static final double CULL_PX = 8;

    private final WorldView view;
    private final Fonts fonts;

    /**
     * Makes a painter.
     *
     * @param view  what part of the world is shown
     * @param fonts fonts for labels
     */
    public MarkPainter(WorldView view, Fonts fonts) {
        this.view = view;
        this.fonts = fonts;
    }

    /** Paints marks, the lowest first. */
    public void paint(Graphics graphics, List<Mark> marks) {
        graphics.pushState();
        graphics.setAntialias(SWT.ON);
        graphics.setTextAntialias(SWT.ON);
        for (Mark mark : marks) {
            if (mark instanceof Mark.Path path) {
                paint(graphics, path);
            } else if (mark instanceof Mark.Disc disc) {
                paint(graphics, disc);
            } else if (mark instanceof Mark.Label label) {
                paint(graphics, label);
            }
        }
        graphics.popState();
    }

    /** Notes the labels among marks as they are painted. */
    public void note(Lettering letters, List<Mark> marks) {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Label label) {
                Rectangle box = box(label);
                letters.note(label.text(), new org.eclipse.swt.graphics.Rectangle(box.x, box.y, box.width, box.height),
                        Inks.colour(label.ink()).getRGB());
            }
        }
    }

    private void paint(Graphics graphics, Mark.Path mark) {
        Path path = new Path(Display.getCurrent());
        try {
            for (int i = 0; i < mark.points().size(); i++) {
                ScenePoint point = mark.points().get(i);
                float x = (float) view.toX(point.x());
                float y = (float) view.toY(point.y());
                if (i == 0) {
                    path.moveTo(x, y);
                } else {
                    path.lineTo(x, y);
                }
            }
            if (mark.closed()) {
                path.close();
            }
            if (mark.style().fill() != Ink.NONE) {
                graphics.setBackgroundColor(Inks.colour(mark.style().fill()));
                graphics.fillPath(path);
            }
            if (pen(graphics, mark.style())) {
                graphics.drawPath(path);
            }
        } finally {
            path.dispose();
        }
    }

    private boolean pen(Graphics graphics, Style style) {
        if (style.line() == Ink.NONE) {
            return false;
        }
        graphics.setForegroundColor(Inks.colour(style.line()));
        graphics.setLineWidth(widthPx(style));
        graphics.setLineStyle(style.dashed() ? Graphics.LINE_DASH : Graphics.LINE_SOLID);
        return true;
    }

    private int widthPx(Style style) {
        return (int) Math.max(1, Math.round(style.widthMm() * fonts.pxPerMm()));
    }

    private void paint(Graphics graphics, Mark.Disc disc) {
        double radius = disc.radiusMm() * fonts.pxPerMm();
        Path path = new Path(Display.getCurrent());
        try {
            float size = (float) (2 * radius);
            path.addArc((float) (view.toX(disc.centre().x()) - radius), (float) (view.toY(disc.centre().y()) - radius), size, size, 0, 360);
            if (disc.style().fill() != Ink.NONE) {
                graphics.setBackgroundColor(Inks.colour(disc.style().fill()));
                graphics.fillPath(path);
            }
            if (pen(graphics, disc.style())) {
                graphics.drawPath(path);
            }
        } finally {
            path.dispose();
        }
    }

    private void paint(Graphics graphics, Mark.Label label) {
        Rectangle box = box(label);
        graphics.setFont(fonts.of(label.sizeMm()));
        if (label.ink() != Ink.MARKING) {
            graphics.setAlpha(BEHIND_TEXT_ALPHA);
            graphics.setBackgroundColor(Inks.colour(Ink.PAPER));
            graphics.fillRoundRectangle(box, 4, 4);
            graphics.setAlpha(OPAQUE);
        }
        graphics.setForegroundColor(Inks.colour(label.ink()));
        graphics.drawText(label.text(), box.x + 2, box.y);
    }

    /** Returns a label that is moved to the right by some pixels. */
    Mark.Label moved(Mark.Label label, int px) {
        ScenePoint at = new ScenePoint(label.at().x() + px / view.scale(), label.at().y());
        return new Mark.Label(at, label.text(), label.anchor(), label.sizeMm(), label.dyMm(), label.ink(), label.elementId());
    }

    /** Returns where a label lies on the screen, with a little room around its text. */
    public Rectangle box(Mark.Label label) {
        Font font = fonts.of(label.sizeMm());
        Dimension size = FigureUtilities.getTextExtents(label.text(), font);
        int width = size.width + 4;
        double x = view.toX(label.at().x());
        double left = switch (label.anchor()) {
            case START -> x;
            case MIDDLE -> x - width / 2.0;
            case END -> x - width;
        };
        double top = view.toY(label.at().y()) - label.dyMm() * fonts.pxPerMm() - size.height / 2.0;
        return new Rectangle((int) Math.round(left), (int) Math.round(top), width, size.height);
    }

    /** Returns the smallest rectangle of pixels around a mark. */
    public Rectangle bounds(Mark mark) {
        if (mark instanceof Mark.Label label) {
            return box(label).expand(1, 1);
        }
        if (mark instanceof Mark.Disc disc) {
            double reach = disc.radiusMm() * fonts.pxPerMm() + widthPx(disc.style()) + 1;
            return rectangle(view.toX(disc.centre().x()) - reach, view.toY(disc.centre().y()) - reach, 2 * reach, 2 * reach);
        }
        Mark.Path path = (Mark.Path) mark;
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (ScenePoint point : path.points()) {
            minX = Math.min(minX, view.toX(point.x()));
            maxX = Math.max(maxX, view.toX(point.x()));
            minY = Math.min(minY, view.toY(point.y()));
            maxY = Math.max(maxY, view.toY(point.y()));
        }
        double reach = widthPx(path.style()) + 1;
        return path.points().isEmpty() ? new Rectangle()
                : rectangle(minX - reach, minY - reach, maxX - minX + 2 * reach, maxY - minY + 2 * reach);
    }

    /** Keeps a rectangle within what a window of pixels can hold. */
    private Rectangle rectangle(double x, double y, double width, double height) {
        double left = Math.max(-CULL_PX, x);
        double top = Math.max(-CULL_PX, y);
        double right = Math.min(view.widthPx() + CULL_PX, x + width);
        double bottom = Math.min(view.heightPx() + CULL_PX, y + height);
        if (right < left || bottom < top) {
            return new Rectangle();
        }
        PrecisionRectangle box = new PrecisionRectangle();
        box.preciseX = left;
        box.preciseY = top;
        box.preciseWidth = Math.ceil(right - left) + 1;
        box.preciseHeight = Math.ceil(bottom - top) + 1;
        box.updateInts();
        return new Rectangle(box.x, box.y, box.width, box.height);
    }

    /** Returns whether a pixel lies on a mark or within some pixels of its line. */
    public boolean hits(Mark mark, int x, int y, double withinPx) {
        if (mark instanceof Mark.Label label) {
            return box(label).contains(x, y);
        }
        if (mark instanceof Mark.Disc disc) {
            double distance = Math.hypot(view.toX(disc.centre().x()) - x, view.toY(disc.centre().y()) - y);
            return distance <= disc.radiusMm() * fonts.pxPerMm() + withinPx;
        }
        Mark.Path path = (Mark.Path) mark;
        return path.closed() && path.style().fill() != Ink.NONE && encloses(path, x, y) || distancePx(path, x, y) <= withinPx;
    }

    private boolean encloses(Mark.Path path, int x, int y) {
        boolean inside = false;
        for (int i = 0, j = path.points().size() - 1; i < path.points().size(); j = i++) {
            double yi = view.toY(path.points().get(i).y());
            double yj = view.toY(path.points().get(j).y());
            double xi = view.toX(path.points().get(i).x());
            double xj = view.toX(path.points().get(j).x());
            if (yi > y != yj > y && x < (xj - xi) * (y - yi) / (yj - yi) + xi) {
                inside = !inside;
            }
        }
        return inside;
    }

    private double distancePx(Mark.Path path, int x, int y) {
        double least = Double.POSITIVE_INFINITY;
        int pieces = path.closed() ? path.points().size() : path.points().size() - 1;
        for (int i = 0; i < pieces; i++) {
            ScenePoint from = path.points().get(i);
            ScenePoint to = path.points().get((i + 1) % path.points().size());
            least = Math.min(least, distancePx(view.toX(from.x()), view.toY(from.y()), view.toX(to.x()), view.toY(to.y()), x, y));
        }
        return least;
    }

    private static double distancePx(double x1, double y1, double x2, double y2, double x, double y) {
        double length = (x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1);
        double share = length == 0 ? 0 : Math.max(0, Math.min(1, ((x - x1) * (x2 - x1) + (y - y1) * (y2 - y1)) / length));
        return Math.hypot(x1 + share * (x2 - x1) - x, y1 + share * (y2 - y1) - y);
    }
}
