package slopewright.exchange.publish;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

import slopewright.evaluation.MadeFrom;
import slopewright.exchange.internal.PlainNumbers;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Printable;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.io.Program;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;

/**
 * Writes what is published of each indicator at a runway as features of AIXM 5.1, for the database of an aeronautical information service:
 * a snippet to be taken over there, where runway directions have identifiers of their own. A figure that is not known is nil with its
 * reason; an indicator at a helipad, whose feature knows runway directions alone, is named in a comment and left out. Names and order of
 * the properties and the codes are those of the published type of the feature; the document was not validated against the whole schema, of
 * which no package registry has a copy.
 */
public final class AixmFile {

    private static final String AIXM = "http://www.aixm.aero/schema/5.1";
    private static final String MESSAGE = "http://www.aixm.aero/schema/5.1/message";
    private static final String GML = "http://www.opengis.net/gml/3.2";
    private static final String XLINK = "http://www.w3.org/1999/xlink";
    private static final String XSI = "http://www.w3.org/2001/XMLSchema-instance";
    private static final Map<String, String> TYPES = Map.of("four-unit-row", "PAPI", "two-unit-row", "APAPI", "two-bar", "VASIS",
            "three-bar", "3B_VASIS", "t-form", "TVASIS", "t-form-abbreviated", "ATVASIS", "pulsating", "PVASI", "tri-colour", "TRCV",
            "alignment-panels", "PNI");
    /** The bars of 12 and 16 units, from memory; those of fewer units are the abbreviated ones. */
    private static final Map<String, Integer> WHOLE = Map.of("two-bar", 12, "three-bar", 16);

    private final XMLStreamWriter xml;
    private final MessageRenderer renderer;

    private AixmFile(XMLStreamWriter xml, MessageRenderer renderer) {
        this.xml = xml;
        this.renderer = renderer;
    }

    /**
     * Writes the features of a project.
     *
     * @param data     what is published
     * @param project  what it is taken from
     * @param made     which state of it
     * @param day      the day from which they hold
     * @param renderer the language of its remarks
     * @return the document, UTF-8; the same input gives the same bytes
     */
    public static byte[] bytes(PublishedData data, Project project, MadeFrom made, LocalDate day, MessageRenderer renderer) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            new AixmFile(XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8"), renderer).write(data, project, made,
                    day);
        } catch (XMLStreamException e) {
            throw new IllegalStateException("a document in memory cannot be written", e);
        }
        return out.toByteArray();
    }

    private void write(PublishedData data, Project project, MadeFrom made, LocalDate day) throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        comment(renderer.render(Message.of("sheet.publish.design-aid")) + " " + renderer.render(Message.of("publish.aixm.made",
                Words.name(Program.text()), made.fileWords(), Words.name(made.revision()), Words.name(made.ruleSetId())))
                + made.verdict().map(said -> "; " + renderer.render(Message.of("made-from.verdict", said))).orElse(""));
        List<String> left = new ArrayList<>();
        data.aids().stream().filter(line -> !line.isAtRunway()).forEach(line -> left.add(Projects.label(line.aid().aid())));
        if (!left.isEmpty()) {
            comment(renderer.render(Message.of("publish.aixm.left", Words.name(String.join(", ", left)))));
        }
        xml.writeStartElement("message", "AIXMBasicMessage", MESSAGE);
        for (String[] space : new String[][] {{"message", MESSAGE}, {"aixm", AIXM}, {"gml", GML}, {"xlink", XLINK}, {"xsi", XSI}}) {
            xml.writeNamespace(space[0], space[1]);
        }
        xml.writeAttribute("gml", GML, "id", "message-1");
        int number = 0;
        for (PublishedData.PublishedAid line : data.aids()) {
            if (line.isAtRunway()) {
                number++;
                feature(line, project, day, number);
            }
        }
        xml.writeEndElement();
        xml.writeEndDocument();
        xml.close();
    }

    private void comment(String text) throws XMLStreamException {
        xml.writeComment(" " + Printable.of(text).replace("--", "- -") + " ");
    }

    private void feature(PublishedData.PublishedAid line, Project project, LocalDate day, int number) throws XMLStreamException {
        xml.writeStartElement("message", "hasMember", MESSAGE);
        open("VisualGlideSlopeIndicator", "indicator-" + number);
        xml.writeStartElement("gml", "identifier", GML);
        xml.writeAttribute("codeSpace", "urn:uuid:");
        xml.writeCharacters(identifier(project, line.aid().aid()));
        xml.writeEndElement();
        xml.writeStartElement("aixm", "timeSlice", AIXM);
        open("VisualGlideSlopeIndicatorTimeSlice", "slice-" + number);
        xml.writeStartElement("gml", "validTime", GML);
        xml.writeStartElement("gml", "TimePeriod", GML);
        xml.writeAttribute("gml", GML, "id", "time-" + number);
        text("gml", GML, "beginPosition", day + "T00:00:00Z");
        xml.writeEmptyElement("gml", "endPosition", GML);
        xml.writeAttribute("indeterminatePosition", "unknown");
        xml.writeEndElement();
        xml.writeEndElement();
        aixm("interpretation", "BASELINE");
        aixm("sequenceNumber", "1");
        aixm("correctionNumber", "0");
        aixm("type", type(line.aid().aid()));
        aixm("position", line.aid().aid().getSide().getName().toUpperCase(Locale.ROOT));
        aixm("numberBox", String.valueOf(line.aid().aid().getUnits().size()));
        aixm("portable", Boolean.TRUE.equals(line.aid().aid().getPortable()) ? "YES" : "NO");
        number("slopeAngle", line.angleDeg(), 2, "");
        number("minimumEyeHeightOverThreshold", line.mehtM(), 2, "M");
        xml.writeEmptyElement("aixm", "runwayDirection", AIXM);
        xml.writeAttribute("xlink", XLINK, "href", "urn:uuid:" + identifier(project, line.aid().host()));
        xml.writeAttribute("xlink", XLINK, "title", Printable.of(renderer.write(ElementNames.of(line.aid().host()))));
        for (int i = 0; i < 4; i++) {
            xml.writeEndElement();
        }
    }

    private static String type(ApproachAid aid) {
        String type = TYPES.getOrDefault(aid.getFamilyKey(), "OTHER");
        return aid.getUnits().size() < WHOLE.getOrDefault(aid.getFamilyKey(), 0) ? type.replace("VASIS", "AVASIS") : type;
    }

    /** An identifier that is the same in every document of the project. */
    private static String identifier(Project project, Identified element) {
        return UUID.nameUUIDFromBytes((project.getId() + " " + project.getName() + " " + element.getId()).getBytes(StandardCharsets.UTF_8))
                .toString();
    }

    private void open(String name, String id) throws XMLStreamException {
        xml.writeStartElement("aixm", name, AIXM);
        xml.writeAttribute("gml", GML, "id", id);
    }

    private void aixm(String name, String content) throws XMLStreamException {
        text("aixm", AIXM, name, content);
    }

    private void text(String prefix, String space, String name, String content) throws XMLStreamException {
        xml.writeStartElement(prefix, name, space);
        xml.writeCharacters(content);
        xml.writeEndElement();
    }

    private void number(String name, Double value, int decimals, String unit) throws XMLStreamException {
        xml.writeStartElement("aixm", name, AIXM);
        if (value == null) {
            xml.writeAttribute("xsi", XSI, "nil", "true");
            xml.writeAttribute("nilReason", "unknown");
        } else {
            if (!unit.isEmpty()) {
                xml.writeAttribute("uom", unit);
            }
            xml.writeCharacters(PlainNumbers.fixed(value, decimals));
        }
        xml.writeEndElement();
    }
}
