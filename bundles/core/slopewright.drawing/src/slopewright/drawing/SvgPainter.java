package slopewright.drawing;

import java.util.Locale;

import slopewright.drawing.Mark.Anchor;

/** Paints a scene as Scalable Vector Graphics: the same text for the same scene, sizes in millimetres. */
public final class SvgPainter {

    private static final double CAPTION_MM = 4.6;
    private static final double EDGE_MM = 6;

    private SvgPainter() {
    }

    /**
     * Paints a scene.
     *
     * @param scene    the scene
     * @param widthMm  width of the paper
     * @param heightMm greatest height of the drawing without its captions
     * @return the document
     */
    public static String paint(Scene scene, double widthMm, double heightMm) {
        Paper paper = new Paper(scene, widthMm, heightMm, EDGE_MM);
        double whole = paper.heightMm() + scene.captions().size() * CAPTION_MM + (scene.captions().isEmpty() ? 0 : 2);
        StringBuilder svg = new StringBuilder();
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(number(widthMm)).append("mm\" height=\"")
                .append(number(whole))
                .append("mm\" viewBox=\"0 0 ").append(number(widthMm)).append(' ').append(number(whole)).append("\">\n");
        svg.append("<title>").append(escaped(scene.title())).append("</title>\n");
        svg.append("<defs><clipPath id=\"frame\"><rect x=\"").append(number(EDGE_MM)).append("\" y=\"").append(number(EDGE_MM))
                .append("\" width=\"").append(number(paper.innerWidthMm())).append("\" height=\"").append(number(paper.innerHeightMm()))
                .append("\"/></clipPath></defs>\n");
        svg.append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n<g clip-path=\"url(#frame)\">\n");
        for (Mark mark : scene.marks()) {
            paint(svg, mark, paper);
        }
        svg.append("</g>\n<rect x=\"").append(number(EDGE_MM)).append("\" y=\"").append(number(EDGE_MM)).append("\" width=\"")
                .append(number(paper.innerWidthMm())).append("\" height=\"").append(number(paper.innerHeightMm()))
                .append("\" fill=\"none\" stroke=\"#5a6b7a\" stroke-width=\"0.25\"/>\n");
        double y = paper.heightMm() + 1;
        for (String caption : scene.captions()) {
            text(svg, EDGE_MM, y + 2, caption, Anchor.START, 2.4, Ink.TEXT);
            y += CAPTION_MM;
        }
        return svg.append("</svg>\n").toString();
    }

    private static void paint(StringBuilder svg, Mark mark, Paper paper) {
        if (mark instanceof Mark.Path path) {
            svg.append(path.closed() ? "<polygon points=\"" : "<polyline points=\"");
            for (int i = 0; i < path.points().size(); i++) {
                ScenePoint point = path.points().get(i);
                svg.append(i == 0 ? "" : " ").append(number(paper.x(point))).append(',').append(number(paper.y(point)));
            }
            svg.append('"');
            style(svg, path.style());
        } else if (mark instanceof Mark.Disc disc) {
            svg.append("<circle cx=\"").append(number(paper.x(disc.centre()))).append("\" cy=\"").append(number(paper.y(disc.centre())))
                    .append("\" r=\"").append(number(disc.radiusMm())).append('"');
            style(svg, disc.style());
        } else if (mark instanceof Mark.Label label) {
            text(svg, paper.x(label.at()), paper.y(label.at()) - label.dyMm(), label.text(), label.anchor(), label.sizeMm(), label.ink());
        }
    }

    private static void style(StringBuilder svg, Style style) {
        svg.append(" fill=\"").append(colour(style.fill())).append("\" stroke=\"").append(colour(style.line())).append('"');
        if (style.line() != Ink.NONE) {
            svg.append(" stroke-width=\"").append(number(style.widthMm())).append('"');
            if (style.dashed()) {
                svg.append(" stroke-dasharray=\"2 1.2\"");
            }
        }
        svg.append("/>\n");
    }

    private static void text(StringBuilder svg, double x, double y, String text, Anchor anchor, double sizeMm, Ink ink) {
        svg.append("<text x=\"").append(number(x)).append("\" y=\"").append(number(y))
                .append("\" font-family=\"DejaVu Sans, Helvetica, Arial, sans-serif\" font-size=\"").append(number(sizeMm * 1.25))
                .append("\" text-anchor=\"").append(anchor.name().toLowerCase(Locale.ROOT)).append("\" fill=\"").append(colour(ink))
                        .append("\">")
                .append(escaped(text)).append("</text>\n");
    }

    private static String colour(Ink ink) {
        return ink == Ink.NONE ? "none" : "#" + ink.rgb();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value);
        text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        return "-0".equals(text) ? "0" : text;
    }
}
