package slopewright.exchange.survey;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import slopewright.exchange.ExchangeException;

/**
 * KML 2.2: points, lines and polygons of placemarks. Altitudes count where the altitude mode is {@code absolute}; in other modes an
 * elevation must stand in the extended data. A document type, and with it every entity of its own, is refused.
 */
final class KmlSurvey extends SurveyReader {

    private static final int MOST_DEPTH = 100;

    private int depth;
    private XMLStreamReader xml;

    KmlSurvey(Path file, SurveyFile.Sink sink) {
        super(file, sink);
    }

    /** A geometry of a placemark as it was read. */
    private record Part(SurveyShape.Kind kind, List<SurveyVertex> vertices, boolean absolute) {
    }

    @Override
    void read() throws IOException, ExchangeException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        try (InputStream in = Files.newInputStream(file())) {
            xml = factory.createXMLStreamReader(in);
            boolean rooted = false;
            while (xml.hasNext()) {
                int event = next();
                if (event == XMLStreamConstants.START_ELEMENT && !rooted) {
                    rooted = true;
                    if (!"kml".equals(xml.getLocalName())) {
                        throw fault(line(), "is no KML: its first element is " + xml.getLocalName());
                    }
                } else if (event == XMLStreamConstants.START_ELEMENT && "Placemark".equals(xml.getLocalName())) {
                    placemark();
                }
            }
        } catch (XMLStreamException e) {
            String reason = String.valueOf(e.getMessage());
            throw fault(e.getLocation() == null ? 0 : e.getLocation().getLineNumber(),
                    reason.substring(reason.indexOf("Message: ") < 0 ? 0 : reason.indexOf("Message: ") + 9));
        }
    }

    private long line() {
        return xml.getLocation().getLineNumber();
    }

    private int next() throws XMLStreamException, ExchangeException {
        int event = xml.next();
        if (event == XMLStreamConstants.DTD) {
            throw fault(line(), "a document type is not accepted");
        }
        depth += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
        if (depth > MOST_DEPTH) {
            throw fault(line(), "elements stand more than " + MOST_DEPTH + " deep in each other");
        }
        return event;
    }

    private String text() throws XMLStreamException {
        depth--;
        return xml.getElementText().strip();
    }

    private void placemark() throws XMLStreamException, ExchangeException {
        long first = line();
        int outside = depth - 1;
        Map<SurveyShape.Fact, String> facts = new EnumMap<>(SurveyShape.Fact.class);
        if (xml.getAttributeValue(null, "id") != null) {
            facts.put(SurveyShape.Fact.ID, xml.getAttributeValue(null, "id"));
        }
        String kind = "";
        List<Part> parts = new ArrayList<>();
        while (depth > outside) {
            if (next() != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            switch (xml.getLocalName()) {
                case "name" -> facts.put(SurveyShape.Fact.NAME, text());
                case "Data", "SimpleData" -> kind = data(facts, kind);
                case "Point" -> parts.add(part(SurveyShape.Kind.POINT));
                case "LineString" -> parts.add(part(SurveyShape.Kind.LINE));
                case "Polygon" -> parts.add(part(SurveyShape.Kind.AREA));
                case "Model", "Track", "MultiTrack", "LinearRing" -> throw fault(line(), "the geometry " + xml.getLocalName()
                        + " is not read");
                default -> {
                    // what else a placemark holds is of no use to a survey
                }
            }
        }
        if (isOther(kind)) {
            return;
        }
        if (parts.isEmpty()) {
            passOver("placemarks without a geometry");
        }
        for (int i = 0; i < parts.size(); i++) {
            emit(parts.get(i), parts.size() == 1 ? facts : GeoJsonSurvey.numbered(facts, i + 1), first);
        }
    }

    private void emit(Part part, Map<SurveyShape.Fact, String> facts, long line) throws ExchangeException {
        boolean known = facts.containsKey(SurveyShape.Fact.TOP_ELEVATION) || facts.containsKey(SurveyShape.Fact.ELEVATION)
                || facts.containsKey(SurveyShape.Fact.HEIGHT);
        boolean high = part.vertices.stream().noneMatch(one -> Double.isNaN(one.elevationM()));
        if (!part.absolute && high && !known) {
            throw fault(line, "the altitude of a placemark does not count, because its altitude mode is not absolute; write absolute, or"
                    + " give topElevationM in the extended data");
        }
        emit(part.kind, false, part.absolute ? part.vertices
                : part.vertices.stream().map(one -> new SurveyVertex(one.north(), one.east(), Double.NaN)).toList(), facts, line);
    }

    private String data(Map<SurveyShape.Fact, String> facts, String kind) throws XMLStreamException, ExchangeException {
        String name = String.valueOf(xml.getAttributeValue(null, "name"));
        String value = null;
        if ("SimpleData".equals(xml.getLocalName())) {
            value = text();
        } else {
            int outside = depth - 1;
            while (depth > outside) {
                if (next() == XMLStreamConstants.START_ELEMENT && "value".equals(xml.getLocalName())) {
                    value = text();
                }
            }
        }
        if (value == null || value.isEmpty()) {
            return kind;
        }
        String found = value;
        fact(name).filter(fact -> fact != SurveyShape.Fact.NAME).ifPresent(fact -> facts.put(fact, found));
        return "kind".equals(name) ? found : kind;
    }

    private Part part(SurveyShape.Kind kind) throws XMLStreamException, ExchangeException {
        int outside = depth - 1;
        boolean absolute = false;
        boolean inner = false;
        List<SurveyVertex> vertices = new ArrayList<>();
        while (depth > outside) {
            if (next() != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            switch (xml.getLocalName()) {
                case "altitudeMode" -> absolute = "absolute".equals(text());
                case "innerBoundaryIs" -> {
                    inner = true;
                    passOver("holes of polygons, which are taken as filled,");
                }
                case "outerBoundaryIs" -> inner = false;
                case "coordinates" -> {
                    long line = line();
                    String text = text();
                    if (!inner) {
                        positions(text, line, vertices);
                    }
                }
                default -> {
                    // tessellate, extrude and the like
                }
            }
        }
        return new Part(kind, vertices, absolute);
    }

    private void positions(String text, long line, List<SurveyVertex> vertices) throws ExchangeException {
        for (String tuple : text.isEmpty() ? new String[0] : text.split("\\s+")) {
            String[] numbers = tuple.split(",", -1);
            if (numbers.length != 2 && numbers.length != 3) {
                throw fault(line, "'" + tuple + "' is not longitude, latitude and altitude");
            }
            vertices.add(new SurveyVertex(number(numbers[1], "latitude", line), number(numbers[0], "longitude", line),
                    numbers.length == 3 ? number(numbers[2], "altitude", line) : Double.NaN));
        }
    }
}
