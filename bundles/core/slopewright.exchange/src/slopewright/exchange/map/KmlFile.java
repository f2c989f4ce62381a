package slopewright.exchange.map;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

import slopewright.exchange.internal.PlainNumbers;

/**
 * Writes features as KML 2.2, one folder for each kind of feature, altitudes absolute: the elevation in the vertical datum that the
 * document names. Where an elevation is not known the feature lies on the ground. The same bytes for the same features.
 */
public final class KmlFile {

    private static final String NAMESPACE = "http://www.opengis.net/kml/2.2";

    private final XMLStreamWriter xml;

    private KmlFile(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /** Returns the bytes of the file. */
    public static byte[] bytes(MapDocument document) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            new KmlFile(xml).document(document);
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void document(MapDocument document) throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        xml.writeCharacters("\n");
        xml.setDefaultNamespace(NAMESPACE);
        xml.writeStartElement(NAMESPACE, "kml");
        xml.writeDefaultNamespace(NAMESPACE);
        open("Document");
        text("name", document.name());
        text("description", String.join("\n", document.notes()));
        for (MapStyle kind : MapStyle.values()) {
            style(kind);
        }
        open("ExtendedData");
        for (Map.Entry<String, String> fact : document.made().facts().entrySet()) {
            data(fact.getKey(), fact.getValue());
        }
        data("verticalDatum", document.verticalDatum());
        if (document.geoidOffsetM().isPresent()) {
            data("geoidOffsetM", document.geoidOffsetM().getAsDouble());
        }
        close();
        for (MapStyle kind : MapStyle.values()) {
            List<MapFeature> features = document.features().stream().filter(feature -> feature.kind().equals(kind.kind())).toList();
            if (!features.isEmpty()) {
                open("Folder");
                text("name", kind.kind());
                for (MapFeature feature : features) {
                    placemark(feature);
                }
                close();
            }
        }
        close();
        line();
        xml.writeEndElement();
        line();
        xml.writeEndDocument();
    }

    private void style(MapStyle kind) throws XMLStreamException {
        line();
        xml.writeStartElement(NAMESPACE, "Style");
        xml.writeAttribute("id", "style-" + kind.kind());
        open("IconStyle");
        text("color", kind.kmlLine());
        text("scale", "0.8");
        close();
        open("LineStyle");
        text("color", kind.kmlLine());
        text("width", "2");
        close();
        open("PolyStyle");
        text("color", kind.kmlFill());
        close();
        close();
    }

    private void placemark(MapFeature feature) throws XMLStreamException {
        line();
        xml.writeStartElement(NAMESPACE, "Placemark");
        xml.writeAttribute("id", feature.id().replaceAll("[^A-Za-z0-9._-]", "_"));
        text("name", feature.name());
        text("styleUrl", "#style-" + feature.kind());
        open("ExtendedData");
        data("kind", feature.kind());
        for (Map.Entry<String, Object> property : feature.properties().entrySet()) {
            if (property.getValue() != null) {
                data(property.getKey(), property.getValue());
            }
        }
        close();
        switch (feature.shape()) {
            case POINT -> geometry("Point", feature, feature.positions());
            case LINE -> geometry("LineString", feature, feature.positions());
            case AREA -> area(feature);
        }
        close();
    }

    private void geometry(String name, MapFeature feature, List<MapPosition> positions) throws XMLStreamException {
        open(name);
        text("altitudeMode", mode(feature));
        coordinates(positions, feature.isHigh());
        close();
    }

    private void area(MapFeature feature) throws XMLStreamException {
        open("Polygon");
        text("altitudeMode", mode(feature));
        open("outerBoundaryIs");
        open("LinearRing");
        coordinates(feature.ring(), feature.isHigh());
        close();
        close();
        close();
    }

    private static String mode(MapFeature feature) {
        return feature.isHigh() ? "absolute" : "clampToGround";
    }

    private void coordinates(List<MapPosition> positions, boolean high) throws XMLStreamException {
        text("coordinates", positions.stream().map(place -> PlainNumbers.degrees(place.longitudeDeg()) + ","
                + PlainNumbers.degrees(place.latitudeDeg()) + (high ? "," + PlainNumbers.metres(place.elevationM()) : ""))
                        .collect(Collectors.joining(" ")));
    }

    private void data(String name, Object value) throws XMLStreamException {
        line();
        xml.writeStartElement(NAMESPACE, "Data");
        xml.writeAttribute("name", name);
        text("value", value instanceof Number number ? PlainNumbers.property(number.doubleValue()).toPlainString() : value.toString());
        close();
    }

    private void open(String name) throws XMLStreamException {
        line();
        xml.writeStartElement(NAMESPACE, name);
    }

    private void close() throws XMLStreamException {
        line();
        xml.writeEndElement();
    }

    private void text(String name, String text) throws XMLStreamException {
        line();
        xml.writeStartElement(NAMESPACE, name);
        xml.writeCharacters(text.replaceAll("[^\\x{9}\\x{A}\\x{D}\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]", "?"));
        xml.writeEndElement();
    }

    private void line() throws XMLStreamException {
        xml.writeCharacters("\n");
    }
}
