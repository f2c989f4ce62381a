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

    /** Kinds in the order of their folders, with line and fill colours as KML writes them: opacity, blue, green, red. */
    private static final List<String[]> KINDS = List.of(new String[] {"unit", "ff00a5ff", "ff00a5ff"},
            new String[] {"beam", "ffffffff", "40ffffff"}, new String[] {"sector-edge", "ff2f2fff", "402f2fff"},
            new String[] {"surface", "ffb06000", "50b06000"}, new String[] {"runway", "ff404040", "80606060"},
            new String[] {"threshold", "ff30a030", "8030a030"}, new String[] {"helipad", "ff404040", "80606060"},
            new String[] {"obstacle", "ff0000c0", "800000c0"}, new String[] {"survey-point", "ff0000c0", "800000c0"});

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
        for (String[] kind : KINDS) {
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
        for (String[] kind : KINDS) {
            List<MapFeature> features = document.features().stream().filter(feature -> feature.kind().equals(kind[0])).toList();
            if (!features.isEmpty()) {
                open("Folder");
                text("name", kind[0]);
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

    private void style(String[] kind) throws XMLStreamException {
        line();
        xml.writeStartElement(NAMESPACE, "Style");
        xml.writeAttribute("id", "style-" + kind[0]);
        open("LineStyle");
        text("color", kind[1]);
        text("width", "2");
        close();
        open("PolyStyle");
        text("color", kind[2]);
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
