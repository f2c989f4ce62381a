package slopewright.exchange.map;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;

import slopewright.exchange.internal.PlainNumbers;

/**
 * Writes features as GeoJSON (RFC 7946): longitude, latitude, elevation; rings counter-clockwise. The third number is the elevation in
 * the vertical datum that the member {@code verticalDatum} names, not a height above the ellipsoid; {@code geoidOffsetM} added to it
 * gives that. Where an elevation is not known a position has two numbers. The same bytes for the same features.
 */
public final class GeoJsonFile {

    private GeoJsonFile() {
    }

    /** Returns the bytes of the file. */
    public static byte[] bytes(MapDocument document) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ObjectWriter writer = new ObjectMapper().writer(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")));
        try (JsonGenerator json = writer.createGenerator(out)) {
            json.writeStartObject();
            json.writeStringField("type", "FeatureCollection");
            json.writeStringField("name", document.name());
            for (Map.Entry<String, Object> fact : document.basis().facts().entrySet()) {
                value(json, fact.getKey(), fact.getValue());
            }
            for (Map.Entry<String, String> fact : document.made().facts(document.words()).entrySet()) {
                json.writeStringField(fact.getKey(), fact.getValue());
            }
            json.writeArrayFieldStart("notes");
            for (String note : document.notes()) {
                json.writeString(note);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("features");
            for (MapFeature feature : document.features()) {
                feature(json, feature);
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static void feature(JsonGenerator json, MapFeature feature) throws IOException {
        json.writeStartObject();
        json.writeStringField("type", "Feature");
        json.writeStringField("id", feature.id());
        json.writeObjectFieldStart("geometry");
        switch (feature.shape()) {
            case POINT -> {
                json.writeStringField("type", "Point");
                json.writeFieldName("coordinates");
                position(json, feature.positions().get(0), feature.isHigh());
            }
            case LINE -> {
                json.writeStringField("type", "LineString");
                json.writeFieldName("coordinates");
                positions(json, feature.positions(), feature.isHigh());
            }
            case AREA -> {
                json.writeStringField("type", "Polygon");
                json.writeArrayFieldStart("coordinates");
                positions(json, feature.ring(), feature.isHigh());
                json.writeEndArray();
            }
        }
        json.writeEndObject();
        json.writeObjectFieldStart("properties");
        json.writeStringField("kind", feature.kind());
        json.writeStringField("name", feature.name());
        for (Map.Entry<String, Object> property : feature.properties().entrySet()) {
            value(json, property.getKey(), property.getValue());
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private static void positions(JsonGenerator json, List<MapPosition> positions, boolean high) throws IOException {
        json.writeStartArray();
        for (MapPosition position : positions) {
            position(json, position, high);
        }
        json.writeEndArray();
    }

    private static void position(JsonGenerator json, MapPosition position, boolean high) throws IOException {
        json.writeStartArray();
        json.writeNumber(PlainNumbers.degrees(position.longitudeDeg()));
        json.writeNumber(PlainNumbers.degrees(position.latitudeDeg()));
        if (high) {
            json.writeNumber(PlainNumbers.metres(position.elevationM()));
        }
        json.writeEndArray();
    }

    private static void value(JsonGenerator json, String name, Object value) throws IOException {
        json.writeFieldName(name);
        if (value == null) {
            json.writeNull();
        } else if (value instanceof Boolean flag) {
            json.writeBoolean(flag);
        } else if (value instanceof Number number) {
            String plain = PlainNumbers.property(number.doubleValue()).toPlainString();
            json.writeNumber(number instanceof Double && plain.indexOf('.') < 0 ? plain + ".0" : plain);
        } else {
            json.writeString(value.toString());
        }
    }
}
