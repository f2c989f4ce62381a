package slopewright.report.internal;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

import slopewright.report.ReportException;

/**
 * Paints plain scalable vector graphics: paths and simple shapes in flat colours, with groups and transforms. Whatever else may stand in
 * such a file (text, pictures, styles, scripts, references) is refused.
 */
final class SvgPicture {

    private static final int LONG_SIDE_PIXELS = 1600;
    private static final Set<String> SILENT = Set.of("title", "desc", "metadata");
    private static final Set<String> REFUSED = Set.of("style", "class", "href", "xlink:href", "filter", "mask", "clip-path");
    private static final Pattern TRANSFORM = Pattern.compile("\\s*,?\\s*(translate|scale|rotate|matrix)\\s*\\(([^)]*)\\)\\s*");
    private static final Map<String, Color> NAMED = Map.of("black", Color.BLACK, "white", Color.WHITE, "red", Color.RED, "blue",
            Color.BLUE, "green", new Color(0, 128, 0), "gray", Color.GRAY, "navy", new Color(0, 0, 128), "orange", new Color(255, 165, 0));

    private final Graphics2D graphics;

    private SvgPicture(Graphics2D graphics) {
        this.graphics = graphics;
    }

    /** How a shape is painted unless it says otherwise itself. */
    private record Look(String fill, String stroke, double strokeWidth, boolean evenOdd) {

        Look with(Element element) {
            return new Look(or(element, "fill", fill), or(element, "stroke", stroke), element.hasAttribute("stroke-width")
                    ? number(element, "stroke-width") : strokeWidth, element.hasAttribute("fill-rule")
                            ? "evenodd".equals(element.getAttribute("fill-rule")) : evenOdd);
        }

        private static String or(Element element, String name, String other) {
            return element.hasAttribute(name) ? element.getAttribute(name).strip() : other;
        }
    }

    /** Returns a picture of a file; it is refused where it holds more than shapes. */
    static BufferedImage read(String name, byte[] bytes) throws ReportException, IOException {
        try {
            Element root = parsed(bytes);
            double[] box = box(root);
            double scale = LONG_SIDE_PIXELS / Math.max(box[2], box[3]);
            BufferedImage image = new BufferedImage((int) Math.ceil(box[2] * scale), (int) Math.ceil(box[3] * scale),
                    BufferedImage.TYPE_INT_ARGB);
            Graphics2D graphics = image.createGraphics();
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.scale(scale, scale);
            graphics.translate(-box[0], -box[1]);
            new SvgPicture(graphics).children(root, new Look("black", "none", 1, false).with(root));
            graphics.dispose();
            return image;
        } catch (SAXException | ParserConfigurationException | IllegalArgumentException e) {
            throw new ReportException(name + ": " + e.getMessage(), e);
        }
    }

    private static Element parsed(byte[] bytes) throws SAXException, IOException, ParserConfigurationException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        factory.setXIncludeAware(false);
        factory.setExpandEntityReferences(false);
        DocumentBuilder builder = factory.newDocumentBuilder();
        builder.setErrorHandler(new DefaultHandler());
        Element root = builder.parse(new ByteArrayInputStream(bytes)).getDocumentElement();
        if (!"svg".equals(root.getTagName())) {
            throw new IllegalArgumentException("is not a file of scalable vector graphics");
        }
        return root;
    }

    private static double[] box(Element root) {
        double[] box = root.hasAttribute("viewBox") ? numbers(root.getAttribute("viewBox"))
                : new double[] {0, 0, number(root, "width"), number(root, "height")};
        if (box.length != 4 || !(box[2] > 0) || !(box[3] > 0) || Math.max(box[2], box[3]) > 100 * Math.min(box[2], box[3])) {
            throw new IllegalArgumentException("the size of the picture is missing or makes no sense");
        }
        return box;
    }

    private static double number(Element element, String name) {
        String text = element.getAttribute(name).strip().replaceAll("(px|mm|pt)$", "");
        return text.isEmpty() ? 0 : Double.parseDouble(text);
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.strip().split("[\\s,]+")).mapToDouble(Double::parseDouble).toArray();
    }

    private void children(Element parent, Look look) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element && !SILENT.contains(element.getTagName())) {
                for (String name : REFUSED) {
                    if (element.hasAttribute(name)) {
                        throw new IllegalArgumentException("the attribute '" + name + "' may not stand in a picture of a template");
                    }
                }
                AffineTransform before = graphics.getTransform();
                transform(element.getAttribute("transform"));
                if ("g".equals(element.getTagName())) {
                    children(element, look.with(element));
                } else {
                    paint(shape(element), look.with(element));
                }
                graphics.setTransform(before);
            }
        }
    }

    private void transform(String text) {
        Matcher found = TRANSFORM.matcher(text);
        int end = 0;
        while (found.find() && found.start() == end) {
            double[] by = numbers(found.group(2));
            switch (found.group(1)) {
                case "translate" -> graphics.translate(by[0], by.length > 1 ? by[1] : 0);
                case "scale" -> graphics.scale(by[0], by.length > 1 ? by[1] : by[0]);
                case "rotate" -> graphics.rotate(Math.toRadians(by[0]), by.length > 2 ? by[1] : 0, by.length > 2 ? by[2] : 0);
                default -> graphics.transform(new AffineTransform(by));
            }
            end = found.end();
        }
        if (end < text.length()) {
            throw new IllegalArgumentException("the transform '" + text + "' is not understood");
        }
    }

    private static Shape shape(Element element) {
        return switch (element.getTagName()) {
            case "path" -> SvgPath.of(element.getAttribute("d"));
            case "rect" -> new RoundRectangle2D.Double(number(element, "x"), number(element, "y"), number(element, "width"),
                    number(element, "height"), 2 * number(element, "rx"), 2 * number(element, element.hasAttribute("ry") ? "ry" : "rx"));
            case "circle" -> ellipse(element, number(element, "r"), number(element, "r"));
            case "ellipse" -> ellipse(element, number(element, "rx"), number(element, "ry"));
            case "line" -> new Line2D.Double(number(element, "x1"), number(element, "y1"), number(element, "x2"), number(element, "y2"));
            case "polyline", "polygon" -> polygon(numbers(element.getAttribute("points")), "polygon".equals(element.getTagName()));
            default -> throw new IllegalArgumentException("the element '" + element.getTagName()
                    + "' may not stand in a picture of a template; turn letters into paths");
        };
    }

    private static Shape ellipse(Element element, double radiusX, double radiusY) {
        return new Ellipse2D.Double(number(element, "cx") - radiusX, number(element, "cy") - radiusY, 2 * radiusX, 2 * radiusY);
    }

    private static Shape polygon(double[] points, boolean closed) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i + 1 < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }

    private void paint(Shape shape, Look look) {
        if (shape instanceof Path2D path) {
            path.setWindingRule(look.evenOdd() ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
        }
        if (!"none".equals(look.fill())) {
            graphics.setColor(colour(look.fill()));
            graphics.fill(shape);
        }
        if (!"none".equals(look.stroke())) {
            graphics.setColor(colour(look.stroke()));
            graphics.setStroke(new BasicStroke((float) look.strokeWidth(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
            graphics.draw(shape);
        }
    }

    private static Color colour(String text) {
        if (text.matches("#[0-9A-Fa-f]{6}")) {
            return new Color(Integer.parseInt(text.substring(1), 16));
        }
        if (text.matches("#[0-9A-Fa-f]{3}")) {
            return colour(text.replaceAll("([0-9A-Fa-f])", "$1$1"));
        }
        Color named = NAMED.get(text);
        if (named == null) {
            throw new IllegalArgumentException("the colour '" + text + "' is not understood; write it as #rrggbb");
        }
        return named;
    }
}
