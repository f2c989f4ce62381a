package slopewright.exchange.internal.survey;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyInput;
import slopewright.messages.Message;

/** Walks through an XML file of a survey. A document type, and with it every entity of its own, is refused; so is nesting without end. */
final class XmlEvents {

    private static final int MOST_DEPTH = 100;
    private static final String BEFORE_REASON = "Message: ";

    private final SurveyInput input;
    private final XMLStreamReader xml;
    private int depth;

    /** Begins; the letters are closed by whoever opened them. */
    XmlEvents(SurveyInput input, Reader letters) throws IOException, ExchangeException {
        this.input = input;
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        try {
            xml = factory.createXMLStreamReader(letters);
        } catch (XMLStreamException e) {
            throw fault(e);
        }
    }

    /** Goes on to the next beginning or end of an element; returns false at the end of the file. */
    boolean next() throws IOException, ExchangeException {
        try {
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamConstants.DTD) {
                    throw input.fault(line(), Message.of("survey-file.document-type"));
                }
                depth += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
                if (depth > MOST_DEPTH) {
                    throw input.fault(line(), Message.said("survey-file.xml-deep", MOST_DEPTH));
                }
                if (event == XMLStreamConstants.START_ELEMENT || event == XMLStreamConstants.END_ELEMENT) {
                    return true;
                }
            }
            return false;
        } catch (XMLStreamException e) {
            throw fault(e);
        }
    }

    /** Returns whether an element of a name begins here. */
    boolean begins(String name) {
        return xml.isStartElement() && xml.getLocalName().equals(name);
    }

    /** Returns whether an element of a name ends here. */
    boolean ends(String name) {
        return xml.isEndElement() && xml.getLocalName().equals(name);
    }

    /** Returns the name of the element that begins here, empty where one ends. */
    String begun() {
        return xml.isStartElement() ? xml.getLocalName() : "";
    }

    /** Returns an attribute of the element that begins here, empty where it has none of the name. */
    String attribute(String name) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeLocalName(i).equals(name)) {
                return xml.getAttributeValue(i).strip();
            }
        }
        return "";
    }

    /** Returns the letters in the element that begins here, and goes on to its end; it must hold no other element. */
    String text() throws IOException, ExchangeException {
        try {
            depth--;
            return xml.getElementText().strip();
        } catch (XMLStreamException e) {
            throw fault(e);
        }
    }

    long line() {
        return xml.getLocation().getLineNumber();
    }

    private ExchangeException fault(XMLStreamException e) throws IOException {
        if (e.getNestedException() instanceof CharacterCodingException noLetter) {
            throw noLetter;
        }
        String reason = String.valueOf(e.getMessage());
        int at = reason.indexOf(BEFORE_REASON);
        return input.fault(e.getLocation() == null ? 0 : e.getLocation().getLineNumber(),
                Message.said("survey-file.no-xml", reason.substring(at < 0 ? 0 : at + BEFORE_REASON.length())));
    }
}
