package slopewright.exchange.map;

import java.util.List;
import java.util.Locale;

/** How each kind of feature looks on a map, in the order in which they are listed. */
enum MapStyle {
    /** Light units. */
    UNIT("ffa500", "ffa500", 1),
    /** Beams. */
    BEAM("ffffff", "ffffff", 0.25),
    /** Edges of signals. */
    SECTOR_EDGE("ff2f2f", "ff2f2f", 0.25),
    /** Obstacle surfaces. */
    SURFACE("0060b0", "0060b0", 0.314),
    /** Runways. */
    RUNWAY("404040", "606060", 0.5),
    /** Thresholds. */
    THRESHOLD("30a030", "30a030", 0.5),
    /** Helipads. */
    HELIPAD("404040", "606060", 0.5),
    /** Obstacles. */
    OBSTACLE("c00000", "c00000", 0.5),
    /** Survey points. */
    SURVEY_POINT("c00000", "c00000", 0.5);

    private static final int OPAQUE = 255;

    private final String line;
    private final String fill;
    private final double opacity;

    MapStyle(String line, String fill, double opacity) {
        this.line = line;
        this.fill = fill;
        this.opacity = opacity;
    }

    /** Returns the kind of feature. */
    String kind() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns the colour of lines, six hexadecimal digits. */
    String rgb() {
        return line;
    }

    /** Returns the colour of lines as KML writes it: opacity, blue, green, red. */
    String kmlLine() {
        return kml(line, 1);
    }

    /** Returns the colour of areas as KML writes it. */
    String kmlFill() {
        return kml(fill, opacity);
    }

    private static String kml(String rgb, double share) {
        return String.format(Locale.ROOT, "%02x%s%s%s", Math.round(share * OPAQUE), rgb.substring(4), rgb.substring(2, 4),
                rgb.substring(0, 2));
    }

    /** Returns the style of a layer of some shapes as a document of OGC Styled Layer Descriptor 1.0. */
    String sld(String layer, List<MapFeature.Shape> shapes) {
        String stroke = "<Stroke><CssParameter name=\"stroke\">#" + line + "</CssParameter><CssParameter name=\"stroke-width\">2"
                + "</CssParameter></Stroke>";
        String area = "<Fill><CssParameter name=\"fill\">#" + fill + "</CssParameter><CssParameter name=\"fill-opacity\">"
                + String.format(Locale.ROOT, "%.2f", opacity) + "</CssParameter></Fill>";
        StringBuilder symbols = new StringBuilder();
        for (MapFeature.Shape shape : shapes) {
            symbols.append(switch (shape) {
                case POINT -> "<PointSymbolizer><Graphic><Mark><WellKnownName>circle</WellKnownName>" + area + stroke
                        + "</Mark><Size>8</Size></Graphic></PointSymbolizer>";
                case LINE -> "<LineSymbolizer>" + stroke + "</LineSymbolizer>";
                case AREA -> "<PolygonSymbolizer>" + area + stroke + "</PolygonSymbolizer>";
            });
        }
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?><StyledLayerDescriptor version=\"1.0.0\" xmlns=\"http://www.opengis.net/sld\">"
                + "<NamedLayer><Name>" + layer + "</Name><UserStyle><Name>" + layer + "</Name><FeatureTypeStyle><Rule>" + symbols
                + "</Rule></FeatureTypeStyle></UserStyle></NamedLayer></StyledLayerDescriptor>";
    }
}
