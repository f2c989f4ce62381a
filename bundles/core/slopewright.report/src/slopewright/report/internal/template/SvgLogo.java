package slopewright.report.internal.template;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.DocumentLimits;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import com.github.weisj.jsvg.view.ViewBox;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;
import slopewright.messages.RefusedException;
import slopewright.report.ReportException;

/**
 * Paints a logo of scalable vector graphics. The file is looked over first, element by element and without building it up, so that one
 * that is too large or too deep, or that holds more than shapes, is refused with the reason: no text, whose letters would differ from
 * machine to machine, no pictures, scripts, filters or animations, and no reference out of the file.
 */
final class SvgLogo {

    private static final int LONG_SIDE_PIXELS = 1600;
    private static final int DEEPEST = 48;
    private static final int MOST_ELEMENTS = 20_000;
    private static final int MOST_USES = 40;
    private static final int GREATEST_RATIO = 100;
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final Set<String> SHAPES = Set.of("svg", "g", "defs", "symbol", "use", "title", "desc", "metadata", "path", "rect",
            "circle", "ellipse", "line", "polyline", "polygon", "lineargradient", "radialgradient", "stop", "clippath");
    /** Kept here, because what is set of a logger that nobody holds is forgotten; it would print what it makes of a damaged path. */
    private static final Logger LIBRARY = Logger.getLogger("com.github.weisj.jsvg");
    private static final Pattern PATH = Pattern.compile("[mzlhvcsqta\\d.,+\\-e\\s]*");
    /** Elements whose names are not looked at: notes of editors, which are never painted. */
    private static final Set<String> SILENT = Set.of("metadata", "title", "desc");

    private SvgLogo() {
    }

    /** Returns the picture of a file, its longer side 1600 pixels; refuses one that holds more than shapes. */
    static BufferedImage read(String name, byte[] bytes) throws ReportException {
        try {
            lookOver(bytes);
            LIBRARY.setLevel(Level.OFF);
            LoaderContext context = LoaderContext.builder().externalResourcePolicy(ResourcePolicy.DENY_ALL)
                    .documentLimits(new DocumentLimits(DEEPEST, 2, MOST_ELEMENTS)).build();
            SVGDocument document = new SVGLoader().load(new ByteArrayInputStream(bytes), null, context);
            if (document == null) {
                throw new RefusedException(Message.of("template.no-readable-picture"));
            }
            return painted(document);
        } catch (XMLStreamException e) {
            throw TemplateFault.in(name, e.getLocation() == null ? 1 : e.getLocation().getLineNumber(),
                    Message.of("template.svg.not-formed"), e);
        } catch (RuntimeException e) {
            throw TemplateFault.in(name, e.getMessage() == null ? Message.of("template.no-readable-picture") : Reasoned.of(e), e);
        }
    }

    private static BufferedImage painted(SVGDocument document) {
        double width = document.size().width;
        double height = document.size().height;
        if (!(width > 0) || !(height > 0) || Math.max(width, height) > GREATEST_RATIO * Math.min(width, height)) {
            throw new RefusedException(Message.of("template.svg.size"));
        }
        double scale = LONG_SIDE_PIXELS / Math.max(width, height);
        BufferedImage image = new BufferedImage((int) Math.ceil(width * scale), (int) Math.ceil(height * scale),
                BufferedImage.TYPE_INT_ARGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        document.render((java.awt.Component) null, graphics, new ViewBox(image.getWidth(), image.getHeight()));
        graphics.dispose();
        return image;
    }

    /** Returns the letters. The reader of the platform would print a line of its own where a byte is none. */
    private static String text(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            throw new RefusedException(Message.of("template.svg.encoding"));
        }
    }

    private static void lookOver(byte[] bytes) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(text(bytes)));
        String declared = reader.getCharacterEncodingScheme();
        require(declared == null || "UTF-8".equalsIgnoreCase(declared), reader, Message.of("template.svg.encoding"));
        int depth = 0;
        int silentFrom = Integer.MAX_VALUE;
        int elements = 0;
        int uses = 0;
        while (reader.hasNext()) {
            switch (reader.next()) {
                case XMLStreamConstants.START_ELEMENT -> {
                    depth++;
                    elements++;
                    String element = reader.getLocalName().toLowerCase(Locale.ROOT);
                    uses += "use".equals(element) ? 1 : 0;
                    require(depth <= DEEPEST, reader, Message.said("template.deep", DEEPEST));
                    require(elements <= MOST_ELEMENTS, reader, Message.said("template.svg.elements", MOST_ELEMENTS));
                    require(uses <= MOST_USES, reader, Message.said("template.svg.uses", MOST_USES));
                    require(depth > 1 || "svg".equals(element) && NAMESPACE.equals(reader.getNamespaceURI()), reader,
                            Message.of("template.svg.none"));
                    if (depth < silentFrom) {
                        element(reader, element);
                        silentFrom = SILENT.contains(element) ? depth : silentFrom;
                    }
                }
                case XMLStreamConstants.END_ELEMENT -> {
                    silentFrom = depth == silentFrom ? Integer.MAX_VALUE : silentFrom;
                    depth--;
                }
                case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE -> require(false, reader,
                        Message.of("template.svg.entity"));
                default -> {
                    // text between elements is not painted
                }
            }
        }
    }

    private static void element(XMLStreamReader reader, String element) {
        boolean own = NAMESPACE.equals(reader.getNamespaceURI());
        require(!own || SHAPES.contains(element), reader, Message.said("template.svg.element",
                reader.getLocalName()));
        require(own || !SHAPES.contains(element) && reader.getNamespaceURI() != null, reader,
                Message.said("template.svg.foreign", reader.getLocalName(), NAMESPACE));
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            String name = reader.getAttributeLocalName(i).toLowerCase(Locale.ROOT);
            String value = reader.getAttributeValue(i).strip().toLowerCase(Locale.ROOT);
            boolean outward = "href".equals(name) && !value.startsWith("#")
                    || value.replaceAll("url\\(\\s*['\"]?#", "").contains("url") || value.contains("\\") || value.contains("@import");
            require(!"d".equals(name) || PATH.matcher(value).matches(), reader, Message.said("template.svg.path",
                    reader.getAttributeValue(i)));
            require(!outward && !name.startsWith("on") && !"filter".equals(name) && !"mask".equals(name), reader,
                    Message.said("template.svg.attribute", name));
        }
    }

    private static void require(boolean holds, XMLStreamReader reader, Message message) {
        if (!holds) {
            throw new RefusedException(Message.said("template.svg.at-line", Math.max(1, reader.getLocation().getLineNumber()), message));
        }
    }
}
