package slopewright.exchange.internal.survey;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyInput;
import slopewright.exchange.survey.SurveyShape;
import slopewright.exchange.survey.SurveyVertex;
import slopewright.messages.Message;

/**
 * The vertical structures of AIXM 5.1: each part is an obstacle by its place, line or area (GML 3.2, latitude first where the reference is
 * EPSG:4326). Whether the elevation of a part is that of its top or of the ground the format leaves to its profile, so that beside a
 * vertical extent it is handed on as an elevation that is named no closer. Changes for a time are skipped and counted.
 */
final class AixmStructures {

    private static final Map<String, Double> METRES = Map.of("M", 1.0, "FT", 0.3048, "KM", 1000.0, "CM", 0.01);
    private static final Set<String> WHOLE = Set.of("BASELINE", "SNAPSHOT");
    private static final Map<String, SurveyShape.Fact> LENGTHS = Map.of("elevation", SurveyShape.Fact.ELEVATION, "verticalExtent",
            SurveyShape.Fact.HEIGHT, "horizontalAccuracy", SurveyShape.Fact.HORIZONTAL_ACCURACY, "verticalAccuracy",
            SurveyShape.Fact.VERTICAL_ACCURACY);
    private static final Map<String, SurveyShape.Kind> KINDS = Map.of("ElevatedPoint", SurveyShape.Kind.POINT, "ElevatedCurve",
            SurveyShape.Kind.LINE, "ElevatedSurface", SurveyShape.Kind.AREA);

    private final SurveyInput input;
    private final XmlEvents xml;

    AixmStructures(SurveyInput input, XmlEvents xml) {
        this.input = input;
        this.xml = xml;
    }

    /** One part of a structure as far as it was read. */
    private static final class Part {
        private final Map<SurveyShape.Fact, String> facts = new EnumMap<>(SurveyShape.Fact.class);
        private final List<SurveyVertex> vertices = new ArrayList<>();
        private SurveyShape.Kind kind = SurveyShape.Kind.POINT;
        private String reference = "";
        private long line;
        private int places;
    }

    void read() throws IOException, ExchangeException {
        while (xml.next()) {
            if (xml.begins("VerticalStructureTimeSlice")) {
                slice();
            } else if (xml.begins("hasMember")) {
                continue;
            } else if (!xml.begun().isEmpty() && xml.begun().endsWith("TimeSlice")) {
                input.skip(Message.said("survey-file.skip.kind", xml.begun().replace("TimeSlice", "")));
            }
        }
    }

    private void slice() throws IOException, ExchangeException {
        String name = "";
        String interpretation = "";
        List<Part> parts = new ArrayList<>();
        while (xml.next() && !xml.ends("VerticalStructureTimeSlice")) {
            if (xml.begins("interpretation")) {
                interpretation = xml.text();
            } else if (xml.begins("name") && parts.isEmpty()) {
                name = xml.text();
            } else if (xml.begins("VerticalStructurePart")) {
                parts.add(part());
            }
        }
        if (!WHOLE.contains(interpretation)) {
            input.skip(Message.said("survey-file.skip.states", interpretation));
            return;
        }
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            if (!name.isEmpty()) {
                part.facts.put(SurveyShape.Fact.NAME, parts.size() == 1 ? name : name + " " + (i + 1));
            }
            hand(part, name);
        }
    }

    private void hand(Part part, String name) throws ExchangeException {
        try {
            if (part.places != 1) {
                throw input.fault(part.line, Message.said("survey-file.one-place", name.isEmpty() ? Message.of("survey-file.a-part")
                        : "'" + name + "'", part.places));
            }
            input.emit(part.kind, false, part.vertices, part.facts, part.line);
        } catch (ExchangeException e) {
            input.refuse(e);
        }
    }

    private Part part() throws IOException, ExchangeException {
        Part part = new Part();
        part.line = xml.line();
        boolean inside = false;
        while (xml.next() && !xml.ends("VerticalStructurePart")) {
            String name = xml.begun();
            if (KINDS.containsKey(name)) {
                part.kind = KINDS.get(name);
                part.places++;
                part.reference = xml.attribute("srsName");
            } else if ("interior".equals(name)) {
                input.skip(Message.of("survey-file.skip.area-holes"));
                inside = true;
            } else if (xml.ends("interior")) {
                inside = false;
            } else if (("pos".equals(name) || "posList".equals(name)) && !inside) {
                String own = xml.attribute("srsName");
                positions(part, own.isEmpty() ? part.reference : own);
            } else if ("verticalDatum".equals(name)) {
                datum(part);
            } else if (LENGTHS.containsKey(name)) {
                length(part, LENGTHS.get(name), name);
            }
        }
        return part;
    }

    private void positions(Part part, String reference) throws IOException, ExchangeException {
        boolean latitudeFirst = reference.endsWith("EPSG::4326") || reference.endsWith("EPSG:4326");
        if (!latitudeFirst && !reference.endsWith("CRS84")) {
            throw input.fault(xml.line(), Message.said("survey-file.other-reference", reference));
        }
        long line = xml.line();
        String[] words = xml.text().split("\\s+");
        if (words.length % 2 != 0) {
            throw input.fault(line, Message.said("survey-file.no-pairs", words.length));
        }
        for (int i = 0; i < words.length; i += 2) {
            double first = input.number(words[i], "position", line);
            double second = input.number(words[i + 1], "position", line);
            part.vertices.add(latitudeFirst ? new SurveyVertex(first, second, Double.NaN) : new SurveyVertex(second, first, Double.NaN));
        }
    }

    private void datum(Part part) throws IOException, ExchangeException {
        long line = xml.line();
        boolean isNil = "true".equals(xml.attribute("nil"));
        String text = xml.text().strip();
        if (!isNil && !text.isEmpty()) {
            input.put(part.facts, SurveyShape.Fact.VERTICAL_DATUM, text, line);
        }
    }

    private void length(Part part, SurveyShape.Fact fact, String name) throws IOException, ExchangeException {
        long line = xml.line();
        String unit = xml.attribute("uom");
        boolean isNil = "true".equals(xml.attribute("nil"));
        String text = xml.text();
        if (isNil || text.isEmpty()) {
            return;
        }
        Double metres = METRES.get(unit);
        if (metres == null) {
            throw input.fault(line, Message.said("survey-file.no-length", name, unit));
        }
        input.put(part.facts, fact, String.valueOf(input.number(text, name, line) * metres), line);
    }
}
