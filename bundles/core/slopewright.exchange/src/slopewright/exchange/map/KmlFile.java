package slopewright.exchange.map;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

import slopewright.exchange.internal.PlainNumbers;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;

/**
 * Writes features as KML 2.2, one folder for each kind of feature, altitudes absolute: the elevation in the vertical datum that the
 * document names. Where an elevation is not known the feature lies on the ground. The same bytes for the same features.
 */
public final class KmlFile {

    private static final String NAMESPACE = "http://www.opengis.net/kml/2.2";

    /** The same input gives the same bytes, whenever it is packed. */
    private static final LocalDateTime UNDATED = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final XMLStreamWriter xml;
    private final boolean icons;
    private Optional<Double> geoidOffsetM = Optional.empty();

    private KmlFile(XMLStreamWriter xml, boolean icons) {
        this.xml = xml;
        this.icons = icons;
    }

    /** Returns the bytes of the file; it has no icons, for those would be files beside it. */
    public static byte[] bytes(MapDocument document) {
        return text(document, false);
    }

    /** Returns the bytes of a packed file (KMZ): the same with an icon a kind. */
    public static byte[] packed(MapDocument document) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            entry(zip, "doc.kml", text(document, true));
            for (MapStyle kind : MapStyle.values()) {
                entry(zip, KmlIcons.path(kind), KmlIcons.png(kind));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void entry(ZipOutputStream zip, String name, byte[] content) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(UNDATED);
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }

    private static byte[] text(MapDocument document, boolean icons) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            new KmlFile(xml, icons).document(document);
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
        geoidOffsetM = document.basis().geoidOffsetM();
        text("name", document.name());
        text("description", String.join("\n", document.notes()) + "\n" + heights(document));
        for (MapStyle kind : MapStyle.values()) {
            style(kind);
        }
        open("ExtendedData");
        for (Map.Entry<String, String> fact : document.made().facts(document.words()).entrySet()) {
            data(fact.getKey(), fact.getValue());
        }
        for (Map.Entry<String, Object> fact : document.basis().facts().entrySet()) {
            if (fact.getValue() != null) {
                data(fact.getKey(), fact.getValue());
            }
        }
        close();
        for (MapStyle kind : MapStyle.values()) {
            List<MapFeature> features = document.features().stream().filter(feature -> feature.kind().equals(kind.kind())).toList();
            if (!features.isEmpty()) {
                open("Folder");
                text("name", document.words().write(Words.term("map.kind." + kind.kind())));
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

    /** Says what an altitude is: viewers take it as a height above a geoid of the whole earth, which the datum of an aerodrome is not. */
    private static String heights(MapDocument document) {
        Optional<Double> offset = document.basis().geoidOffsetM();
        return document.words().render(Message.of("map.kml.altitudes")) + " " + document.words().render(offset.isPresent()
                ? Message.of("map.kml.offset", Words.quantity(offset.get(), Notation.EXACT))
                : Message.of("map.kml.no-offset"));
    }

    private void style(MapStyle kind) throws XMLStreamException {
        line();
        xml.writeStartElement(NAMESPACE, "Style");
        xml.writeAttribute("id", "style-" + kind.kind());
        open("IconStyle");
        if (!icons) {
            text("color", kind.kmlLine());
        }
        text("scale", "0.8");
        if (icons) {
            open("Icon");
            text("href", KmlIcons.path(kind));
            close();
        }
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
        if (geoidOffsetM.isPresent() && feature.isHigh() && feature.shape() == MapFeature.Shape.POINT) {
            data("heightAboveEllipsoidM", feature.positions().get(0).elevationM() + geoidOffsetM.get());
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
