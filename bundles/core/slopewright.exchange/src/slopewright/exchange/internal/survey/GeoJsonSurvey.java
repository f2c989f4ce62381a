package slopewright.exchange.internal.survey;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.exchange.survey.SurveyShape;
import slopewright.exchange.survey.SurveyVertex;
import slopewright.messages.Message;

/** GeoJSON, RFC 7946: points, lines and polygons, alone or several together; the third number of a position is an elevation. */
public final class GeoJsonSurvey implements SurveyFormat {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    @Override
    public String name() {
        return "GeoJSON";
    }

    @Override
    public List<String> endings() {
        return List.of("geojson", "json");
    }

    @Override
    public void read(SurveyInput input) throws IOException, ExchangeException {
        new Features(input).read();
    }

    /** The features of one file. */
    private static final class Features {
        private final SurveyInput input;
        private boolean collection;

        private Features(SurveyInput input) {
            this.input = input;
        }

        private void read() throws IOException, ExchangeException {
            try (Reader text = input.openText(); JsonParser json = MAPPER.createParser(text)) {
                if (json.nextToken() != JsonToken.START_OBJECT) {
                    throw input.fault(1, Message.of("survey-file.no-geojson"));
                }
                while (json.nextToken() == JsonToken.FIELD_NAME) {
                    member(json);
                }
                if (json.currentToken() != JsonToken.END_OBJECT || json.nextToken() != null) {
                    throw input.fault(json.currentLocation().getLineNr(), Message.of("survey-file.json-goes-on"));
                }
            } catch (JsonProcessingException e) {
                throw input.fault(e.getLocation() == null ? 0 : e.getLocation().getLineNr(),
                        Message.said("survey-file.no-json", e.getOriginalMessage()));
            }
            if (!collection) {
                throw input.fault(0, Message.of("survey-file.no-features"));
            }
        }

        private void member(JsonParser json) throws IOException, ExchangeException {
            String name = json.currentName();
            JsonToken value = json.nextToken();
            long line = json.currentLocation().getLineNr();
            if ("features".equals(name) && value == JsonToken.START_ARRAY) {
                collection = true;
                while (json.nextToken() != JsonToken.END_ARRAY) {
                    long first = json.currentTokenLocation().getLineNr();
                    feature(MAPPER.readTree(json), first);
                }
            } else if ("verticalDatum".equals(name) && value == JsonToken.VALUE_STRING) {
                input.elevationsIn(json.getText());
            } else if ("coordinateEpoch".equals(name) && value.isNumeric()) {
                input.holdsAt(json.getDoubleValue());
            } else if ("type".equals(name) && !"FeatureCollection".equals(json.getText())) {
                throw input.fault(line, Message.said("survey-file.other-collection", json.getText()));
            } else if ("crs".equals(name) && value != JsonToken.VALUE_NULL) {
                String crs = MAPPER.readTree(json).toString();
                if (!crs.contains("CRS84") && !crs.contains("4326")) {
                    throw input.fault(line, Message.said("survey-file.json-reference", crs));
                }
            } else {
                MAPPER.readTree(json);
            }
        }

        private void feature(JsonNode feature, long line) throws ExchangeException {
            JsonNode properties = feature.path("properties");
            Map<SurveyShape.Fact, String> facts = new EnumMap<>(SurveyShape.Fact.class);
            for (Map.Entry<String, JsonNode> property : properties.properties()) {
                if (property.getValue().isValueNode() && !property.getValue().isNull()) {
                    Optional<SurveyShape.Fact> fact = SurveyInput.fact(property.getKey());
                    if (fact.isPresent()) {
                        input.put(facts, fact.get(), property.getValue().asText(), line);
                    }
                }
            }
            if (feature.hasNonNull("id")) {
                facts.put(SurveyShape.Fact.ID, feature.get("id").asText());
            }
            if (!input.isOwnFeature(properties.path("kind").asText())) {
                geometry(feature.path("geometry"), facts, line);
            }
        }

        private void geometry(JsonNode geometry, Map<SurveyShape.Fact, String> facts, long line) throws ExchangeException {
            JsonNode coordinates = geometry.path("coordinates");
            switch (geometry.path("type").asText()) {
                case "Point" -> input.emit(SurveyShape.Kind.POINT, false, List.of(position(coordinates, line)), facts, line);
                case "LineString" -> input.emit(SurveyShape.Kind.LINE, false, positions(coordinates, line), facts, line);
                case "Polygon" -> polygon(coordinates, facts, line);
                case "MultiPoint", "MultiLineString", "MultiPolygon" -> several(geometry, facts, line);
                case "GeometryCollection" -> {
                    int number = 0;
                    for (JsonNode part : geometry.path("geometries")) {
                        geometry(part, SurveyInput.numbered(facts, ++number), line);
                    }
                }
                case "" -> throw input.fault(line, Message.of("survey-file.no-geometry"));
                default -> throw input.fault(line, Message.said("survey-file.other-geometry", geometry.path("type").asText()));
            }
        }

        private void several(JsonNode geometry, Map<SurveyShape.Fact, String> facts, long line) throws ExchangeException {
            int number = 0;
            for (JsonNode part : geometry.path("coordinates")) {
                Map<SurveyShape.Fact, String> own = SurveyInput.numbered(facts, ++number);
                switch (geometry.path("type").asText()) {
                    case "MultiPoint" -> input.emit(SurveyShape.Kind.POINT, false, List.of(position(part, line)), own, line);
                    case "MultiLineString" -> input.emit(SurveyShape.Kind.LINE, false, positions(part, line), own, line);
                    default -> polygon(part, own, line);
                }
            }
        }

        /** A hole in an area is taken as filled, which is on the safe side. */
        private void polygon(JsonNode rings, Map<SurveyShape.Fact, String> facts, long line) throws ExchangeException {
            for (int i = 1; i < rings.size(); i++) {
                input.skip(Message.of("survey-file.skip.polygon-holes"));
            }
            input.emit(SurveyShape.Kind.AREA, false, positions(rings.path(0), line), facts, line);
        }

        private List<SurveyVertex> positions(JsonNode list, long line) throws ExchangeException {
            List<SurveyVertex> positions = new ArrayList<>();
            for (JsonNode numbers : list) {
                positions.add(position(numbers, line));
            }
            return positions;
        }

        private SurveyVertex position(JsonNode numbers, long line) throws ExchangeException {
            boolean whole = numbers.isArray() && (numbers.size() == 2 || numbers.size() == 3);
            for (JsonNode number : numbers) {
                whole &= number.isNumber() && Double.isFinite(number.asDouble());
            }
            if (!whole) {
                throw input.fault(line, Message.of("survey-file.position-numbers"));
            }
            return new SurveyVertex(numbers.get(1).asDouble(), numbers.get(0).asDouble(),
                    numbers.size() == 3 ? numbers.get(2).asDouble() : Double.NaN);
        }
        }
}
