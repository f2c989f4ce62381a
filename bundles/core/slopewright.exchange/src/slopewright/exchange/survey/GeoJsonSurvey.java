package slopewright.exchange.survey;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import slopewright.exchange.ExchangeException;

/** GeoJSON, RFC 7946: points, lines and polygons, alone or several together; the third number of a position is an elevation. */
final class GeoJsonSurvey extends SurveyReader {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private boolean collection;

    GeoJsonSurvey(Path file, SurveyFile.Sink sink) {
        super(file, sink);
    }

    @Override
    void read() throws IOException, ExchangeException {
        try (Reader text = Files.newBufferedReader(file(), StandardCharsets.UTF_8); JsonParser json = MAPPER.createParser(text)) {
            if (json.nextToken() != JsonToken.START_OBJECT) {
                throw fault(1, "is no GeoJSON object");
            }
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                member(json);
            }
            if (json.currentToken() != JsonToken.END_OBJECT || json.nextToken() != null) {
                throw fault(json.currentLocation().getLineNr(), "goes on after its object");
            }
        } catch (JsonProcessingException e) {
            throw fault(e.getLocation() == null ? 0 : e.getLocation().getLineNr(), e.getOriginalMessage());
        }
        if (!collection) {
            throw fault(0, "is no FeatureCollection with features");
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
        } else if ("type".equals(name) && !"FeatureCollection".equals(json.getText())) {
            throw fault(line, "is a " + json.getText() + " where a FeatureCollection is needed");
        } else if ("crs".equals(name) && value != JsonToken.VALUE_NULL) {
            String crs = MAPPER.readTree(json).toString();
            if (!crs.contains("CRS84") && !crs.contains("4326")) {
                throw fault(line, "names the coordinate reference " + crs + "; GeoJSON has longitude and latitude on WGS 84");
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
                fact(property.getKey()).ifPresent(fact -> facts.putIfAbsent(fact, property.getValue().asText()));
            }
        }
        if (feature.hasNonNull("id")) {
            facts.put(SurveyShape.Fact.ID, feature.get("id").asText());
        }
        if (!isOther(properties.path("kind").asText())) {
            geometry(feature.path("geometry"), facts, line);
        }
    }

    private void geometry(JsonNode geometry, Map<SurveyShape.Fact, String> facts, long line) throws ExchangeException {
        JsonNode coordinates = geometry.path("coordinates");
        switch (geometry.path("type").asText()) {
            case "Point" -> emit(SurveyShape.Kind.POINT, false, List.of(position(coordinates, line)), facts, line);
            case "LineString" -> emit(SurveyShape.Kind.LINE, false, positions(coordinates, line), facts, line);
            case "Polygon" -> polygon(coordinates, facts, line);
            case "MultiPoint", "MultiLineString", "MultiPolygon" -> several(geometry, facts, line);
            case "GeometryCollection" -> {
                int number = 0;
                for (JsonNode part : geometry.path("geometries")) {
                    geometry(part, numbered(facts, ++number), line);
                }
            }
            case "" -> throw fault(line, "a feature has no geometry");
            default -> throw fault(line, "'" + geometry.path("type").asText() + "' is no geometry of GeoJSON");
        }
    }

    private void several(JsonNode geometry, Map<SurveyShape.Fact, String> facts, long line) throws ExchangeException {
        int number = 0;
        for (JsonNode part : geometry.path("coordinates")) {
            Map<SurveyShape.Fact, String> own = numbered(facts, ++number);
            switch (geometry.path("type").asText()) {
                case "MultiPoint" -> emit(SurveyShape.Kind.POINT, false, List.of(position(part, line)), own, line);
                case "MultiLineString" -> emit(SurveyShape.Kind.LINE, false, positions(part, line), own, line);
                default -> polygon(part, own, line);
            }
        }
    }

    /** A hole in an area is taken as filled, which is on the safe side. */
    private void polygon(JsonNode rings, Map<SurveyShape.Fact, String> facts, long line) throws ExchangeException {
        for (int i = 1; i < rings.size(); i++) {
            passOver("holes of polygons, which are taken as filled,");
        }
        emit(SurveyShape.Kind.AREA, false, positions(rings.path(0), line), facts, line);
    }

    private List<SurveyVertex> positions(JsonNode list, long line) throws ExchangeException {
        List<SurveyVertex> positions = new ArrayList<>();
        for (JsonNode one : list) {
            positions.add(position(one, line));
        }
        return positions;
    }

    private SurveyVertex position(JsonNode numbers, long line) throws ExchangeException {
        boolean whole = numbers.isArray() && (numbers.size() == 2 || numbers.size() == 3);
        for (JsonNode number : numbers) {
            whole &= number.isNumber() && Double.isFinite(number.asDouble());
        }
        if (!whole) {
            throw fault(line, "a position is not two or three numbers");
        }
        return new SurveyVertex(numbers.get(1).asDouble(), numbers.get(0).asDouble(),
                numbers.size() == 3 ? numbers.get(2).asDouble() : Double.NaN);
    }

    /** Returns the facts with the number of a part after id and name. */
    static Map<SurveyShape.Fact, String> numbered(Map<SurveyShape.Fact, String> facts, int number) {
        Map<SurveyShape.Fact, String> own = new EnumMap<>(facts);
        own.computeIfPresent(SurveyShape.Fact.ID, (fact, id) -> id + "-" + number);
        own.computeIfPresent(SurveyShape.Fact.NAME, (fact, name) -> name + " " + number);
        return own;
    }
}
