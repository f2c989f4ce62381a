package slopewright.report.internal.template;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;

import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

import slopewright.messages.Message;
import slopewright.report.ReportException;
import slopewright.report.internal.html.Html;

/**
 * Reads a fragment of a template, lets through what a template may hold, and puts text and parts in the place of placeholders. It reads
 * no document type, no entity and no other file.
 */
public final class TemplateFragment extends DefaultHandler {

    private static final String WRAPPER = "fragment";
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\{([^{}]*)\\}\\}");
    private static final Pattern DECLARATION = Pattern.compile("<!(?!--)");
    private static final Set<String> ELEMENTS = Set.of("div", "p", "span", "h1", "h2", "h3", "h4", "table", "colgroup", "col", "thead",
            "tbody", "tr", "th", "td", "ul", "ol", "li", "strong", "b", "em", "i", "sub", "sup", "br", "hr", "a", "img");
    private static final Set<String> EMPTY = Set.of("br", "hr", "col", "img");
    private static final Set<String> ATTRIBUTES = Set.of("class", "id", "style", "lang", "title");
    private static final Map<String, Set<String>> MORE = Map.of("img", Set.of("src", "alt"), "a", Set.of("href"), "th",
            Set.of("colspan", "rowspan", "scope"), "td", Set.of("colspan", "rowspan"), "col", Set.of("span"));
    private static final Set<String> WITH_PLACEHOLDERS = Set.of("alt", "title");
    private static final int DEEPEST = 40;

    private final TemplateSlots slots;
    private final StringBuilder out = new StringBuilder();
    private final StringBuilder pending = new StringBuilder();
    private Locator locator;
    private int textLine = 1;
    private int depth;

    private TemplateFragment(TemplateSlots slots) {
        this.slots = slots;
    }

    /**
     * Expands a fragment.
     *
     * @param file  its file name, for messages
     * @param text  the fragment
     * @param slots what the placeholders stand for
     * @return well-formed markup
     * @throws ReportException where it holds what a template may not hold; the message names file and line
     */
    public static String expand(String file, String text, TemplateSlots slots) throws ReportException {
        Matcher declaration = DECLARATION.matcher(text);
        if (declaration.find()) {
            throw TemplateFault.in(file, text.substring(0, declaration.start()).split("\n", -1).length,
                    Message.of("template.declaration"), null);
        }
        TemplateFragment handler = new TemplateFragment(slots);
        try {
            parser().parse(new InputSource(new StringReader("<" + WRAPPER + ">" + text + "</" + WRAPPER + ">")), handler);
        } catch (SAXParseException e) {
            throw TemplateFault.in(file, e.getLineNumber(), e instanceof TemplateFault fault ? fault.reason()
                    : Message.said("template.not-formed", e), e);
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw TemplateFault.in(file, Message.said("template.not-formed", e), e);
        }
        return handler.out.toString();
    }

    private static SAXParser parser() throws ParserConfigurationException, SAXException {
        SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
        factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory.newSAXParser();
    }

    private SAXParseException fault(Message reason) {
        return fault(reason, locator.getLineNumber());
    }

    private static SAXParseException fault(Message reason, int line) {
        return new TemplateFault(reason, line);
    }

    @Override
    public void setDocumentLocator(Locator given) {
        locator = given;
    }

    @Override
    public InputSource resolveEntity(String publicId, String systemId) {
        return new InputSource(new StringReader(""));
    }

    @Override
    public void processingInstruction(String target, String data) throws SAXException {
        throw fault(Message.of("template.instruction"));
    }

    @Override
    public void startElement(String uri, String local, String name, Attributes attributes) throws SAXException {
        flush();
        depth++;
        if (depth == 1) {
            return;
        }
        if (depth > DEEPEST) {
            throw fault(Message.said("template.deep", DEEPEST));
        }
        if (!ELEMENTS.contains(name)) {
            throw fault(Message.said("template.element", name));
        }
        if ("img".equals(name)) {
            check(name, attributes);
            out.append(picture(attributes));
        } else {
            out.append('<').append(name);
            check(name, attributes);
            for (int i = 0; i < attributes.getLength(); i++) {
                out.append(' ').append(attributes.getQName(i)).append("=\"").append(value(attributes, i)).append('"');
            }
            out.append(EMPTY.contains(name) ? " />" : ">");
        }
    }

    private void check(String element, Attributes attributes) throws SAXException {
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.getQName(i);
            String value = attributes.getValue(i);
            if (!ATTRIBUTES.contains(name) && !MORE.getOrDefault(element, Set.of()).contains(name)) {
                throw fault(Message.said("template.attribute", name, element));
            }
            if (value.contains("{{") && !WITH_PLACEHOLDERS.contains(name)) {
                throw fault(Message.said("template.placeholder-in", name));
            }
            if ("href".equals(name) && !value.matches("#[A-Za-z0-9_-]+")) {
                throw fault(Message.said("template.link", value));
            }
            if ("id".equals(name) && (!value.matches("[A-Za-z][A-Za-z0-9_-]*") || value.startsWith("part-"))) {
                throw fault(Message.said("template.place", value));
            }
            if ("class".equals(name) && StyleCheck.isReserved(value)) {
                throw fault(Message.said("template.class", value));
            }
            if ("style".equals(name)) {
                Optional<Message> problem = StyleCheck.problem(value);
                if (problem.isPresent()) {
                    throw fault(problem.get());
                }
            }
        }
    }

    private String value(Attributes attributes, int index) throws SAXException {
        String value = attributes.getValue(index);
        return value.contains("{{") ? Html.escaped(words(value)) : Html.escaped(value);
    }

    private String picture(Attributes attributes) throws SAXException {
        String source = attributes.getValue("src") == null ? "" : attributes.getValue("src");
        String alternative = attributes.getValue("alt");
        if (!TemplateFolder.isPicture(source)) {
            throw fault(Message.said("template.picture-name", source));
        }
        if (alternative == null || alternative.isBlank()) {
            throw fault(Message.said("template.picture-words", source));
        }
        String style = attributes.getValue("class") == null ? "" : attributes.getValue("class");
        String words = words(alternative);
        return slots.picture(source, style, words).orElseThrow(() -> fault(Message.said("template.no-picture", source)));
    }

    /** Puts text in the place of the placeholders of an attribute. */
    private String words(String value) throws SAXException {
        StringBuilder words = new StringBuilder();
        Matcher found = PLACEHOLDER.matcher(value);
        while (found.find()) {
            String name = found.group(1).strip();
            if (!slots.texts().containsKey(name)) {
                throw fault(unknown(name));
            }
            found.appendReplacement(words, Matcher.quoteReplacement(slots.texts().get(name)));
        }
        return found.appendTail(words).toString();
    }

    private Message unknown(String name) {
        return Message.said("template.no-placeholder", name, String.join(", ", Stream.concat(slots.texts().keySet().stream().sorted(),
                slots.parts().keySet().stream().sorted()).toList()));
    }

    @Override
    public void endElement(String uri, String local, String name) throws SAXException {
        flush();
        depth--;
        if (depth > 0 && !EMPTY.contains(name)) {
            out.append("</").append(name).append('>');
        }
    }

    @Override
    public void characters(char[] letters, int start, int length) {
        pending.append(letters, start, length);
    }

    /** Writes the text since the last tag, with its placeholders filled in. */
    private void flush() throws SAXException {
        String text = pending.toString();
        pending.setLength(0);
        int line = textLine;
        textLine = locator.getLineNumber();
        Matcher found = PLACEHOLDER.matcher(text);
        int end = 0;
        while (found.find()) {
            literal(text.substring(end, found.start()), line);
            line += text.substring(end, found.end()).split("\n", -1).length - 1;
            fill(found.group(1).strip(), line);
            end = found.end();
        }
        literal(text.substring(end), line);
    }

    private void literal(String text, int line) throws SAXException {
        for (String braces : List.of("{{", "}}")) {
            if (text.contains(braces)) {
                String before = text.substring(0, text.indexOf(braces));
                throw fault(Message.said("template.braces", braces), line + before.split("\n", -1).length - 1);
            }
        }
        out.append(Html.escaped(text));
    }

    private void fill(String name, int line) throws SAXException {
        Supplier<String> part = slots.parts().get(name);
        if (part != null) {
            out.append(part.get());
        } else if (slots.texts().containsKey(name)) {
            out.append(Html.escaped(slots.texts().get(name)));
        } else {
            throw fault(unknown(name), line);
        }
    }
}
