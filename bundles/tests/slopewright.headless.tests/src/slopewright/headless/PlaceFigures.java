package slopewright.headless;

import static slopewright.headless.OneAidOutputs.cell;
import static slopewright.headless.OneAidOutputs.found;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where each unit of the row stands, worked out by hand from what was entered: 330.462 m along 92 degrees true from the threshold at 47.3
 * north, 11.9 west, and so far to the left. Latitude and longitude come by the radii of WGS 84 with the terms of second order (the fourth
 * is below 0.1 mm here), the grid of EPSG:32629 from PROJ by gdaltransform (GDAL 3.6.2), of these latitudes and longitudes.
 */
final class PlaceFigures {
    private static final double ALONG_M = 330.462;
    private static final double LATITUDE = 47.3;
    private static final double LONGITUDE = 11.9;
    private static final double RUNWAY_DEG = 92;
    private static final double RADIUS_M = 6_378_137;
    private static final double ECCENTRICITY2 = 0.00669437999014;
    /** Half of a thousandth of a second of arc, to which it is printed, and a little. */
    private static final double SECONDS = 0.0005 / 3600 + 2e-9;
    private static final double DATA = 2e-9;

    private PlaceFigures() {
    }

    /** One unit: what it is called, how far to the right it stands, and its place on the grid. */
    private record Unit(String label, String element, double rightM, double gridEastM, double gridNorthM) {

        double eastM() {
            double turn = Math.toRadians(RUNWAY_DEG);
            return ALONG_M * Math.sin(turn) + rightM * Math.sin(turn + Math.PI / 2);
        }

        double northM() {
            double turn = Math.toRadians(RUNWAY_DEG);
            return ALONG_M * Math.cos(turn) + rightM * Math.cos(turn + Math.PI / 2);
        }

        double latitude() {
            double at = Math.toRadians(LATITUDE);
            double bent = eastM() * eastM() * Math.tan(at) / (2 * meridian() * normal());
            return LATITUDE + Math.toDegrees(northM() / meridian() - bent);
        }

        double longitudeWest() {
            double at = Math.toRadians(LATITUDE);
            return LONGITUDE - Math.toDegrees(eastM() / (normal() * Math.cos(at)) * (1 + northM() * Math.tan(at) / normal()));
        }

        private static double normal() {
            return RADIUS_M / Math.sqrt(1 - ECCENTRICITY2 * Math.pow(Math.sin(Math.toRadians(LATITUDE)), 2));
        }

        private static double meridian() {
            return Math.pow(normal() / RADIUS_M, 3) * RADIUS_M * (1 - ECCENTRICITY2);
        }
    }

    private static final List<Unit> UNITS = List.of(new Unit("D", "light-unit-1", -37.5, 281_102.7235, 5_242_595.5562),
            new Unit("C", "light-unit-2", -46.5, 281_103.3722, 5_242_604.5345),
            new Unit("B", "light-unit-3", -55.5, 281_104.0208, 5_242_613.5128),
            new Unit("A", "light-unit-4", -64.5, 281_104.6694, 5_242_622.4911));

    static List<SameFiguresTest.Figure> all() {
        List<SameFiguresTest.Figure> figures = new ArrayList<>();
        for (Unit unit : UNITS) {
            add(figures, unit);
        }
        double latitude = UNITS.stream().mapToDouble(Unit::latitude).average().orElseThrow();
        double longitude = UNITS.stream().mapToDouble(Unit::longitudeWest).average().orElseThrow();
        figures.add(figure("published latitude", latitude, 6e-8, Map.of(
                "published", cell("runway 09,PAPI 09,", "latitude deg"))));
        figures.add(figure("published longitude W", longitude, 6e-8, Map.of(
                "published", found("runway 09,PAPI 09,.*?,-(\\d+\\.\\d+),"))));
        // a hundredth of a second, as charts have it
        figures.add(figure("latitude as published", latitude, 0.0051 / 3600, Map.of(
                "report", found("none (\\d{6}\\.\\d\\d)N ").andThen(PlaceFigures::packed),
                "Bericht", found("keine (\\d{6}\\.\\d\\d)N ").andThen(PlaceFigures::packed),
                "report PDF", found("none (\\d{6}\\.\\d\\d)N ").andThen(PlaceFigures::packed),
                "published", found("runway 09,.*,(\\d{6}\\.\\d\\d)N,").andThen(PlaceFigures::packed))));
        figures.add(figure("longitude as published W", longitude, 0.0051 / 3600, Map.of(
                "report", found("none \\d{6}\\.\\d\\dN (\\d{7}\\.\\d\\d)W ").andThen(PlaceFigures::packed),
                "report PDF", found("none \\d{6}\\.\\d\\dN (\\d{7}\\.\\d\\d)W ").andThen(PlaceFigures::packed),
                "published", found("runway 09,.*,(\\d{7}\\.\\d\\d)W,").andThen(PlaceFigures::packed))));
        return figures;
    }

    private static void add(List<SameFiguresTest.Figure> figures, Unit unit) {
        String label = unit.label();
        String row = " " + label + " (47\u00b0\\d+'[\\d.,]+)\\S+ N";
        String west = " " + label + " 47\u00b0\\S+ N (11\u00b0\\d+'[\\d.,]+)\\S+ W";
        figures.add(figure("latitude of " + label, unit.latitude(), SECONDS, Map.of(
                "report", sixtieths(row), "Bericht", sixtieths(row), "report PDF", sixtieths(row), "setting-out PDF", sixtieths(row))));
        figures.add(figure("longitude W of " + label, unit.longitudeWest(), SECONDS, Map.of(
                "report", sixtieths(west), "Bericht", sixtieths(west), "report PDF", sixtieths(west), "setting-out PDF", sixtieths(west))));
        String geoJson = "\"id\"\\s*:\\s*\"" + unit.element()
                + "\"[\\s\\S]{0,160}?coordinates\"\\s*:\\s*\\[\\s*";
        String kml = "(?s)<name>PAPI 09, unit " + label + "</name>.*?<coordinates>";
        String line = "runway 09,PAPI 09," + label + ",";
        figures.add(figure("latitude of " + label + ", data", unit.latitude(), DATA, Map.of(
                "schedule", cell(line, "latitude deg"), "XLSX", cell(line, "latitude deg"),
                "GeoJSON", found(geoJson + "-[\\d.]+,\\s*([\\d.]+)"), "KML", found(kml + "-[\\d.]+,([\\d.]+)"),
                "GeoPackage", found("(?m)^" + label + "\\|.*\\|-[\\d.]+,([\\d.]+)\\|"))));
        figures.add(figure("longitude W of " + label + ", data", unit.longitudeWest(), DATA, Map.of(
                "schedule", cell(line, "longitude deg").andThen(west()), "XLSX", cell(line, "longitude deg").andThen(west()),
                "GeoJSON", found(geoJson + "-([\\d.]+)"), "KML", found(kml + "-([\\d.]+)"),
                "GeoPackage", found("(?m)^" + label + "\\|.*\\|-([\\d.]+),"))));
        String dxf = "LIGHT_UNIT\\r?\\n 10\\r?\\n([\\d.]+)\\r?\\n 20\\r?\\n([\\d.]+)\\r?\\n(?:(?!LIGHT_UNIT)[\\s\\S])*?\\n  1\\r?\\n"
                + label + "\\r?\\n(?:[^\\n]*\\n){1,14}?  2\\r?\\nUNIT\\r?\\n";
        figures.add(figure("east of the threshold m, " + label, unit.eastM(), 1e-5, Map.of("DXF plan", found(dxf))));
        figures.add(figure("north of the threshold m, " + label, unit.northM(), 1e-5, Map.of(
                "DXF plan", found(dxf.replaceFirst("\\(\\[\\\\d\\.\\]\\+\\)", "[\\\\d.]+")))));
        figures.add(figure("grid north m, " + label, unit.gridNorthM(), 0.0011, Map.of(
                "PNEZD", found("(?m)^\\d+,([\\d.]+),[\\d.]+,[\\d.]+,lens of PAPI 09 unit " + label + " "),
                "LandXML", found("PAPI 09 unit " + label + "\"[^>]*>([\\d.]+) "))));
        figures.add(figure("grid east m, " + label, unit.gridEastM(), 0.0011, Map.of(
                "PNEZD", found("(?m)^\\d+,[\\d.]+,([\\d.]+),[\\d.]+,lens of PAPI 09 unit " + label + " "),
                "LandXML", found("PAPI 09 unit " + label + "\"[^>]*>[\\d.]+ ([\\d.]+) "))));
        figures.add(figure("left of the centre line m, " + label, -unit.rightM(), 0.0006, Map.of(
                "report", right(label), "Bericht", right(label), "report PDF", right(label), "setting-out PDF", right(label),
                "schedule", cell(line, "offset m").andThen(west()), "XLSX", cell(line, "offset m").andThen(west()),
                "GeoJSON", OneAidOutputs.property("unit", label, "rightM").andThen(west()))));
    }

    private static SameFiguresTest.Figure figure(String name, double expected, double tolerance,
            Map<String, Function<String, String>> places) {
        return new SameFiguresTest.Figure(name, expected, tolerance, places);
    }

    private static Function<String, String> right(String label) {
        return found(" " + label + " 47\u00b0\\S+ N \\S+ W (?:- - )?[\\d.,]+ [-\u2212]([\\d.,]+) ");
    }

    /** West and left are negative in data. */
    private static Function<String, String> west() {
        return text -> text.startsWith("-") ? text.substring(1) : "no minus: " + text;
    }

    private static Function<String, String> sixtieths(String pattern) {
        return found(pattern).andThen(text -> {
            Matcher parts = Pattern.compile("(\\d+)\u00b0(\\d+)'([\\d.]+)").matcher(text);
            return parts.matches() ? decimal(parts.group(1), parts.group(2), parts.group(3)) : text;
        });
    }

    /** Degrees, minutes and seconds without signs between them. */
    private static String packed(String text) {
        Matcher parts = Pattern.compile("(\\d{2,3})(\\d\\d)(\\d\\d\\.\\d\\d)").matcher(text);
        return parts.matches() ? decimal(parts.group(1), parts.group(2), parts.group(3)) : text;
    }

    private static String decimal(String degrees, String minutes, String seconds) {
        return String.format(Locale.ROOT, "%.9f", Integer.parseInt(degrees) + Integer.parseInt(minutes) / 60.0 + Double.parseDouble(seconds)
                / 3600);
    }
}
