package slopewright.drawing.paint;

import java.util.Locale;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.drawing.scene.TextWidth;
import slopewright.drawing.sheet.Sheet;
import slopewright.messages.Printable;

/** Paints a scene as Scalable Vector Graphics: the same text for the same scene, sizes in millimetres. */
public final class SvgPainter {

    private static final double HALO_MM = 0.5;

    private final StringBuilder svg = new StringBuilder();

    private SvgPainter() {
    }

    /**
     * Paints a scene as a document.
     *
     * @param scene    the scene
     * @param widthMm  width of the paper
     * @param heightMm greatest height with captions and key
     * @return the document
     */
    public static String paint(Scene scene, double widthMm, double heightMm) {
        return paint(Sheet.of(scene, widthMm, heightMm));
    }

    /**
     * Paints a sheet as a document.
     *
     * @param sheet the sheet
     * @return the document
     */
    public static String paint(Sheet sheet) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + paint(sheet, "frame");
    }

    /**
     * Paints a sheet as an element that may stand in another document.
     *
     * @param sheet the sheet
     * @param id    an id for its frame that is unique in that document
     * @return the element
     */
    public static String paint(Sheet sheet, String id) {
        return new SvgPainter().paintAll(sheet, id);
    }

    private String paintAll(Sheet sheet, String id) {
        ScenePoint from = sheet.frame().get(0);
        ScenePoint to = sheet.frame().get(1);
        String frame = "<rect x=\"" + number(from.x()) + "\" y=\"" + number(from.y()) + "\" width=\"" + number(to.x() - from.x())
                + "\" height=\"" + number(to.y() - from.y()) + "\"";
        String size = number(sheet.widthMm()) + "mm\" height=\"" + number(sheet.heightMm()) + "mm\" viewBox=\"0 0 "
                + number(sheet.widthMm()) + " " + number(sheet.heightMm());
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"").append(size).append("\">\n");
        svg.append("<title>").append(escaped(sheet.title())).append("</title>\n");
        svg.append("<defs><clipPath id=\"").append(escaped(id)).append("\">").append(frame).append("/></clipPath></defs>\n");
        svg.append("<rect width=\"100%\" height=\"100%\" fill=\"#").append(Ink.PAPER.rgb()).append("\"/>\n");
        svg.append("<g font-family=\"Liberation Sans, Arimo, Helvetica, Arial, sans-serif\">\n<g clip-path=\"url(#").append(escaped(id))
                .append(")\">\n");
        sheet.inside().forEach(this::mark);
        svg.append("</g>\n");
        if (!sheet.isBordered()) {
            svg.append(frame).append(" fill=\"none\" stroke=\"#").append(Ink.DIMENSION.rgb())
                .append("\" stroke-width=\"0.25\"/>\n");
        }
        sheet.below().forEach(this::mark);
        return svg.append("</g>\n</svg>\n").toString();
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Path path) {
            svg.append(path.closed() ? "<polygon" : "<polyline");
            element(path.elementId());
            svg.append(" points=\"");
            for (int i = 0; i < path.points().size(); i++) {
                ScenePoint point = path.points().get(i);
                svg.append(i == 0 ? "" : " ").append(number(point.x())).append(',').append(number(point.y()));
            }
            svg.append('"');
            style(path.style());
        } else if (mark instanceof Mark.Disc disc) {
            svg.append("<circle");
            element(disc.elementId());
            svg.append(" cx=\"").append(number(disc.centre().x())).append("\" cy=\"").append(number(disc.centre().y())).append("\" r=\"")
                    .append(number(disc.radiusMm())).append('"');
            style(disc.style());
        } else if (mark instanceof Mark.Label label) {
            text(label);
        }
    }

    private void element(String id) {
        if (!id.isEmpty()) {
            svg.append(" data-element=\"").append(escaped(id)).append('"');
        }
    }

    private void style(Style style) {
        svg.append(" fill=\"").append(colour(style.fill())).append("\" stroke=\"").append(colour(style.line())).append('"');
        if (style.line() != Ink.NONE) {
            svg.append(" stroke-width=\"").append(number(style.widthMm())).append("\" stroke-linejoin=\"round\"");
            if (style.dashed()) {
                svg.append(" stroke-dasharray=\"2 1.2\"");
            }
        }
        svg.append("/>\n");
    }

    /** Letters get an outline of paper, so that a line behind them does not cross them out. */
    private void text(Mark.Label label) {
        svg.append("<text");
        element(label.elementId());
        svg.append(" x=\"").append(number(label.at().x())).append("\" y=\"").append(number(label.at().y())).append("\" font-size=\"")
                .append(number(label.sizeMm() / TextWidth.CAPITAL)).append("\" text-anchor=\"")
                .append(label.anchor().name().toLowerCase(Locale.ROOT)).append("\" fill=\"").append(colour(label.ink())).append('"');
        if (label.ink() != Ink.PAPER) {
            svg.append(" stroke=\"").append(colour(Ink.PAPER)).append("\" stroke-width=\"").append(number(HALO_MM))
                    .append("\" paint-order=\"stroke\"");
        }
        svg.append('>').append(escaped(label.text())).append("</text>\n");
    }

    private static String colour(Ink ink) {
        return ink == Ink.NONE ? "none" : "#" + ink.rgb();
    }

    /** Escapes text; characters that no XML document may hold become a question mark, those that steer a space. */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().forEach(letter -> {
            switch (letter) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(!isAllowed(letter) ? '?' : letter > ' ' && Printable.isSteering(letter) ? ' ' : letter);
            }
        });
        return safe.toString();
    }

    private static boolean isAllowed(int letter) {
        return letter >= 0x20 && letter <= 0xD7FF || letter == '\t' || letter == '\n' || letter == '\r' || letter >= 0xE000
                && letter <= 0xFFFD
                || letter >= 0x10000;
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value);
        text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        return "-0".equals(text) ? "0" : text;
    }
}
