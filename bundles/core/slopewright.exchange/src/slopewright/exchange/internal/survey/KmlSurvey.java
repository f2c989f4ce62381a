package slopewright.exchange.internal.survey;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.exchange.survey.SurveyShape;
import slopewright.exchange.survey.SurveyVertex;
import slopewright.messages.Message;

/**
 * KML 2.2: points, lines and polygons of placemarks. Altitudes are elevations where the altitude mode is {@code absolute}, and heights
 * above the ground where it is {@code relativeToGround}; else they say nothing, and an elevation must stand in the extended data. A
 * document type, and with it every entity of its own, is refused.
 */
public final class KmlSurvey implements SurveyFormat {

    private static final int MOST_DEPTH = 100;

    @Override
    public String name() {
        return "KML";
    }

    @Override
    public List<String> endings() {
        return List.of("kml");
    }

    @Override
    public void read(SurveyInput input) throws IOException, ExchangeException {
        new Placemarks(input).read();
    }

    /** What the altitudes of a geometry are. */
    private enum Mode {
        ABSOLUTE,
        RELATIVE,
        ON_GROUND;

        static Mode of(String text) {
            return "absolute".equals(text) ? ABSOLUTE : "relativeToGround".equals(text) ? RELATIVE : ON_GROUND;
        }
    }

    /** The placemarks of one file. */
    private static final class Placemarks {
        private final SurveyInput input;
        private int depth;
        private XMLStreamReader xml;

        private Placemarks(SurveyInput input) {
            this.input = input;
        }

        /** A geometry of a placemark as it was read. */
        private record Part(SurveyShape.Kind kind, List<SurveyVertex> vertices, Mode mode) {
        }

        private void read() throws IOException, ExchangeException {
            XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
            factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
            factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
            factory.setProperty(XMLInputFactory.IS_COALESCING, true);
            try (InputStream bytes = input.open(); Reader in = XmlText.open(bytes)) {
                xml = factory.createXMLStreamReader(in);
                boolean rooted = false;
                while (xml.hasNext()) {
                    int event = next();
                    if (event == XMLStreamConstants.START_ELEMENT && !rooted) {
                        rooted = true;
                        if (!"kml".equals(xml.getLocalName())) {
                            throw input.fault(line(), Message.said("survey-file.no-kml", xml.getLocalName()));
                        }
                    } else if (event == XMLStreamConstants.START_ELEMENT && "Placemark".equals(xml.getLocalName())) {
                        placemark();
                    }
                }
            } catch (XMLStreamException e) {
                if (e.getNestedException() instanceof CharacterCodingException noLetter) {
                    throw noLetter;
                }
                String reason = String.valueOf(e.getMessage());
                throw input.fault(e.getLocation() == null ? 0 : e.getLocation().getLineNumber(),
                        Message.said("survey-file.no-xml", reason.substring(reason.indexOf("Message: ") < 0
                                ? 0 : reason.indexOf("Message: ") + 9)));
            }
        }

        private long line() {
            return xml.getLocation().getLineNumber();
        }

        private int next() throws XMLStreamException, ExchangeException {
            int event = xml.next();
            if (event == XMLStreamConstants.DTD) {
                throw input.fault(line(), Message.of("survey-file.document-type"));
            }
            depth += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
            if (depth > MOST_DEPTH) {
                throw input.fault(line(), Message.said("survey-file.kml-deep", MOST_DEPTH));
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
                    case "name" -> input.put(facts, SurveyShape.Fact.NAME, text().replaceAll("\\s+", " "), line());
                    case "Data", "SimpleData" -> kind = data(facts, kind);
                    case "Point" -> parts.add(part(SurveyShape.Kind.POINT));
                    case "LineString" -> parts.add(part(SurveyShape.Kind.LINE));
                    case "Polygon" -> parts.add(part(SurveyShape.Kind.AREA));
                    case "Model", "Track", "MultiTrack", "LinearRing" -> throw input.fault(line(),
                            Message.said("survey-file.kml-geometry", xml.getLocalName()));
                    default -> {
                        // what else a placemark holds is of no use to a survey
                    }
                }
            }
            if (input.isOwnFeature(kind)) {
                return;
            }
            if (parts.isEmpty()) {
                input.skip(Message.of("survey-file.skip.placemarks"));
            }
            for (int i = 0; i < parts.size(); i++) {
                emit(parts.get(i), parts.size() == 1 ? facts : SurveyInput.numbered(facts, i + 1), first);
            }
        }

        /** In space altitudes are elevations; over the ground they are heights; on the ground they say nothing. */
        private void emit(Part part, Map<SurveyShape.Fact, String> facts, long line) throws ExchangeException {
            if (part.mode == Mode.ABSOLUTE) {
                input.emit(part.kind, false, part.vertices, facts, line);
                return;
            }
            Map<SurveyShape.Fact, String> own = new EnumMap<>(SurveyShape.Fact.class);
            own.putAll(facts);
            double highest = part.vertices.stream().mapToDouble(SurveyVertex::elevationM).filter(Double::isFinite).max().orElse(0);
            if (highest != 0 && part.mode == Mode.RELATIVE) {
                boolean same = own.containsKey(SurveyShape.Fact.HEIGHT)
                        && input.number(own.get(SurveyShape.Fact.HEIGHT), "heightM", line) == highest;
                if (!same) {
                    input.put(own, SurveyShape.Fact.HEIGHT, String.valueOf(highest), line);
                }
            } else if (highest != 0) {
                boolean known = own.containsKey(SurveyShape.Fact.TOP_ELEVATION) || own.containsKey(SurveyShape.Fact.ELEVATION)
                        || own.containsKey(SurveyShape.Fact.HEIGHT);
                if (!known) {
                    throw input.fault(line, Message.of("survey-file.kml-altitude"));
                }
                input.skip(Message.of("survey-file.skip.altitudes"));
            }
            input.emit(part.kind, false, part.vertices.stream()
                    .map(vertex -> new SurveyVertex(vertex.north(), vertex.east(), Double.NaN)).toList(), own, line);
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
            Optional<SurveyShape.Fact> fact = SurveyInput.fact(name).filter(found -> found != SurveyShape.Fact.NAME);
            if (fact.isPresent()) {
                input.put(facts, fact.get(), value, line());
            }
            return "kind".equals(name) ? value : kind;
        }

        private Part part(SurveyShape.Kind kind) throws XMLStreamException, ExchangeException {
            int outside = depth - 1;
            Mode mode = Mode.ON_GROUND;
            boolean inner = false;
            List<SurveyVertex> vertices = new ArrayList<>();
            while (depth > outside) {
                if (next() != XMLStreamConstants.START_ELEMENT) {
                    continue;
                }
                switch (xml.getLocalName()) {
                    case "altitudeMode" -> mode = Mode.of(text());
                    case "innerBoundaryIs" -> {
                        inner = true;
                        input.skip(Message.of("survey-file.skip.polygon-holes"));
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
            return new Part(kind, vertices, mode);
        }

        private void positions(String text, long line, List<SurveyVertex> vertices) throws ExchangeException {
            for (String tuple : text.isEmpty() ? new String[0] : text.split("\\s+")) {
                String[] numbers = tuple.split(",", -1);
                if (numbers.length != 2 && numbers.length != 3) {
                    throw input.fault(line, Message.said("survey-file.kml-tuple", tuple));
                }
                vertices.add(new SurveyVertex(input.number(numbers[1], "latitude", line), input.number(numbers[0], "longitude", line),
                        numbers.length == 3 ? input.number(numbers[2], "altitude", line) : Double.NaN));
            }
        }
    }
}
