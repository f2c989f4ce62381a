package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.headless.OneAidOutputs.cell;
import static slopewright.headless.OneAidOutputs.degrees;
import static slopewright.headless.OneAidOutputs.found;
import static slopewright.headless.OneAidOutputs.outcome;
import static slopewright.headless.OneAidOutputs.property;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The figures of one indicator, the row at 09 of the demonstration, in everything that is handed over: a table of figures against outputs,
 * in which every cell of a row is the same number to the last digit that it prints. What the numbers are is worked out here: the row stands
 * 330.462 m from the threshold, as it was entered; a lens at 0.731 m and 2 degrees 43 minutes make an eye height of 16.41 m, less 6.60 m
 * 9.81 m; the surface starts 60 m before the threshold and rises with 1 degree 50.8 minutes over the power line at 1341.53 m, which may
 * stand 2 m nearer and 1 m higher than the 118 m that were surveyed.
 */
class SameFiguresTest {

    private static final double ALONG_M = 330.462;
    private static final double LENS_M = 87.131 - 86.4;
    private static final double MEHT_M = LENS_M + ALONG_M * Math.tan(Math.toRadians(2 + 43 / 60.0));
    private static final double MARGIN_M = (1341.53 - 2 - 60) * Math.tan(Math.toRadians(1 + 50.8 / 60)) - (118 + 1 - 86.4);
    private static final double WHEELS_M = MEHT_M - 6.60;

    private static final String[][] SETTINGS = {{"D", "3\u00b035'", "3.58333"}, {"C", "3\u00b015'", "3.25"},
        {"B", "2\u00b045'", "2.75"}, {"A", "2\u00b025'", "2.41667"}};

    @TempDir
    private static Path folder;
    private static final Map<String, String> OUTPUTS = new LinkedHashMap<>();

    /** A figure: what it is, how far apart two outputs may print it, and where it stands in each. */
    record Figure(String name, double expected, double tolerance, Map<String, Function<String, String>> places) {
    }

    @BeforeAll
    static void writeEverything() throws IOException {
        OUTPUTS.putAll(OneAidOutputs.write(folder));
    }

    @AfterAll
    static void forget() {
        OUTPUTS.clear();
    }

    private static List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("distance m", ALONG_M, 0.005, Map.of(
                "report", found("PAPI 09 PAPI, left .{0,120}? (\\d+\\.\\d+) m MEHT"),
                "Bericht", found("PAPI 09 PAPI, links .{0,120}? (\\d+,\\d+) m MEHT"),
                "commissioning", found("Distance from the threshold ([\\d.]+) m"),
                "schedule", cell("runway 09,PAPI 09,D,", "chainage from threshold m"),
                "published", cell("runway 09,PAPI 09,", "distance from threshold or hover point m"),
                "GeoJSON", property("surface", "", "distanceM"),
                "KML", found("(?s)name=\"distanceM\">\\s*<value>([\\d.]+)"),
                "SVG plan", found(" (330\\.\\d+) m "),
                "DXF plan", found(" 42\\n(33\\d\\.\\d+)\\n"),
                "check", outcome("AIM-01", "value", 0).andThen(off -> String.valueOf(330 + Double.parseDouble(off))))));
        figures.add(new Figure("distance m, data", ALONG_M, 0.005, Map.of(
                "GeoPackage", found("surface\\|([\\d.]+)\\|"))));
        figures.add(new Figure("MEHT m, data", MEHT_M, 0.0055, Map.of(
                "GeoPackage", found("surface\\|[\\d.]+\\|([\\d.]+)\\|"),
                "AIXM", found("PAPI</aixm:type>.*?uom=\"M\">([\\d.]+)<.*?runway 09\""))));
        figures.add(new Figure("margin m, data", MARGIN_M, 0.0055, Map.of(
                "GeoPackage", found("surface\\|[\\d.]+\\|[\\d.]+\\|([\\d.]+)"))));
        figures.add(new Figure("slope deg", 3, 0.005, Map.of("AIXM", found("slopeAngle>([\\d.]+)<.*?runway 09\""))));
        figures.add(new Figure("MEHT m", MEHT_M, 0.0055, Map.of(
                "report", found("m MEHT (\\d+\\.\\d+) m "),
                "Bericht", found("Augenh\u00f6he \u00fcber der Schwelle \\(MEHT\\) (\\d+,\\d+) m"),
                "commissioning", found("\\(MEHT\\) ([\\d.]+) m"),
                "published", cell("runway 09,PAPI 09,", "MEHT m"),
                "GeoJSON", property("surface", "", "mehtM"),
                "KML", found("(?s)name=\"mehtM\">\\s*<value>([\\d.]+)"),
                "SVG near", found("MEHT ([\\d.]+) m"),
                "SVG section", found("MEHT ([\\d.]+) m"),
                "check", outcome("WHEEL-01", "value", 0).andThen(clear -> String.valueOf(6.60 + Double.parseDouble(clear))))));
        figures.add(new Figure("margin m", MARGIN_M, 0.0055, Map.of(
                "report", found("([\\d.]+) m, governed by Tannery power line"),
                "Bericht", found("Tannery power line.{0,80}?(8,\\d+) m unter der Fl\u00e4che"),
                "GeoJSON", property("surface", "", "marginM"),
                "KML", found("(?s)name=\"marginM\">\\s*<value>([\\d.]+)"),
                "SVG section", found("stays ([\\d.]+) m below"),
                "check", outcome("OBS-01", "margin", 0))));
        figures.add(new Figure("wheels of the twin-jet m", WHEELS_M, 0.0055, Map.of(
                "report", found("Twin-jet, narrow body: ([\\d.]+) m"),
                "Bericht", found("Twin-jet, narrow body: ([\\d,]+) m"),
                "SVG near", found("Twin-jet, narrow body: wheels ([\\d.]+) m"),
                "check", outcome("WHEEL-01", "value", 0))));
        for (String[] unit : SETTINGS) {
            figures.add(new Figure("setting of " + unit[0], Double.parseDouble(unit[2]), 0.0001, Map.of(
                    "report", found(" " + unit[0] + " 47\u00b0.{20,90}? \\d\u00b0\\d+' (\\d\\.\\d{4}) "),
                    "Bericht", found(" " + unit[0] + " 47\u00b0.{20,90}? \\d\u00b0\\d+' (\\d,\\d{4}) "),
                    "commissioning", found(" " + unit[0] + " (\\d\u00b0\\d+')").andThen(OneAidOutputs::degrees),
                    "schedule", cell("runway 09,PAPI 09," + unit[0] + ",", "setting deg"),
                    "GeoJSON", property("unit", unit[0], "settingDeg"),
                    "SVG plan", found(" " + unit[0] + " (\\d\u00b0\\d+')").andThen(OneAidOutputs::degrees),
                    "SVG detail", found(" " + unit[0] + " setting (\\d\u00b0\\d+')").andThen(OneAidOutputs::degrees),
                    "DXF plan", found("\\n  1\\n" + unit[0]
                            + "\\n(?:[^\\n]*\\n){1,60}?  1\\n(\\d\u00b0\\d+')\\n").andThen(OneAidOutputs::degrees))));
        }
        for (String[] unit : SETTINGS) {
            figures.add(new Figure("setting of " + unit[0] + ", data", Double.parseDouble(unit[2]), 0.0001, Map.of(
                    "GeoPackage", found("(?m)^" + unit[0] + "\\|([\\d.]+)\\|"),
                    "PNEZD", found("PAPI 09 unit " + unit[0] + " set to (\\dd\\d+')").andThen(text -> degrees(text.replace('d', '\u00b0'))),
                    "LandXML", found("PAPI 09 unit " + unit[0] + " set to (\\d\u00b0\\d+')").andThen(OneAidOutputs::degrees),
                    "SVG mounting", found(" " + unit[0] + " 86\\.531 .{0,30}?(\\d\u00b0\\d+')").andThen(OneAidOutputs::degrees))));
        }
        figures.add(new Figure("lens elevation m, data", 86.4 + LENS_M, 0.0006, Map.of(
                "GeoPackage", found("(?m)^D\\|[\\d.]+\\|([\\d.]+)\\|"),
                "PNEZD", found("(?m)^1,[\\d.]+,[\\d.]+,([\\d.]+),"),
                "LandXML", found("PAPI 09 unit D\"[^>]*>[\\d.]+ [\\d.]+ ([\\d.]+)<"),
                "KML", found("(?s)name=\"label\">\\s*<value>D<.*?name=\"lensElevationM\">\\s*<value>([\\d.]+)"),
                "SVG mounting", found(" D 86\\.531 ([\\d.]+) "))));
        figures.add(new Figure("lens elevation m", 86.4 + LENS_M, 0.0006, Map.of(
                "report", found(" D 47\u00b0.{20,90}? (\\d+\\.\\d{3}) 3\u00b035'"),
                "schedule", cell("runway 09,PAPI 09,D,", "lens elevation m"),
                "GeoJSON", property("unit", "D", "lensElevationM"),
                "DXF plan", found("\\n  2\\nLIGHT_UNIT\\n 10\\n[^\\n]*\\n 20\\n[^\\n]*\\n 30\\n([\\d.]+)\\n"))));
        figures.addAll(PlaceFigures.all());
        figures.addAll(BeamFigures.all());
        figures.addAll(ofPapers());
        figures.addAll(ofPower());
        return figures;
    }

    /** What stands in the papers and the workbook of the hand-over as well. */
    private static List<Figure> ofPapers() {
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("distance m, papers", ALONG_M, 0.005, Map.of(
                "report PDF", found("Distance from the threshold (\\d+\\.\\d+) m"),
                "commissioning PDF", found("Distance from the threshold (\\d+\\.\\d+) m"),
                "plan PDF", found(" (330\\.\\d+) m from the threshold"),
                "setting-out PDF", found(" D 47\u00b0\\S+ N \\S+ W - - ([\\d.]+) "),
                "XLSX", cell("runway 09,PAPI 09,D,", "chainage from threshold m"))));
        figures.add(new Figure("MEHT m, papers", MEHT_M, 0.0055, Map.of(
                "report PDF", found("MEHT ([\\d.]+) m"),
                "commissioning PDF", found("\\(MEHT\\) ([\\d.]+) m"),
                "section PDF", found("MEHT ([\\d.]+) m"),
                "AIXM", found("PAPI</aixm:type>.*?uom=\"M\">([\\d.]+)<"))));
        figures.add(new Figure("margin m, papers", MARGIN_M, 0.0055, Map.of(
                "report PDF", found("([\\d.]+) m, governed by Tannery power line"),
                "plan PDF", found("stays ([\\d.]+) m below"),
                "section PDF", found("stays ([\\d.]+) m below"))));
        figures.add(new Figure("lens elevation m, papers", 86.4 + LENS_M, 0.0006, Map.of(
                "report PDF", found(" D 47\u00b0.{20,90}? (\\d+\\.\\d{3}) 3\u00b035'"),
                "setting-out PDF", found(" D 47\u00b0.{20,90}? (\\d+\\.\\d{3}) 3\u00b035'"),
                "mounting PDF", found(" D 86\\.531 ([\\d.]+) "),
                "XLSX", cell("runway 09,PAPI 09,D,", "lens elevation m"))));
        for (String[] unit : SETTINGS) {
            figures.add(new Figure("setting of " + unit[0] + ", papers", Double.parseDouble(unit[2]), 0.0001, Map.of(
                    "report PDF", found(" " + unit[0] + " 47\u00b0.{20,90}? \\d\u00b0\\d+' (\\d\\.\\d{4}) "),
                    "commissioning PDF", found(" " + unit[0] + " (\\d\u00b0\\d+')").andThen(OneAidOutputs::degrees),
                    "plan PDF", found(" " + unit[0] + " (\\d\u00b0\\d+')").andThen(OneAidOutputs::degrees),
                    "section PDF", found(unit[0] + " (\\d\u00b0\\d+')").andThen(OneAidOutputs::degrees),
                    "setting-out PDF", found(" " + unit[0] + " 47\u00b0.{20,90}? (\\d\u00b0\\d+')").andThen(OneAidOutputs::degrees),
                    "mounting PDF", found(" " + unit[0] + " 86\\.531 .{0,30}?(\\d\u00b0\\d+')").andThen(OneAidOutputs::degrees),
                    "XLSX", cell("runway 09,PAPI 09," + unit[0] + ",", "setting deg"))));
        }
        Object[][] groups = {{"Twin-jet, narrow body", 6.6}, {"Regional jet", 4.9}, {"Turboprop", 3.7}};
        for (int i = 0; i < groups.length; i++) {
            String name = String.valueOf(groups[i][0]);
            figures.add(new Figure("wheels m, " + name, MEHT_M - (Double) groups[i][1], 0.0055, Map.of(
                    "report", found(name + ": ([\\d.]+) m"),
                    "Bericht", found(name + ": ([\\d,]+) m"),
                    "report PDF", found(name + ": ([\\d.]+) m"),
                    "check", outcome("WHEEL-01", "value", i))));
        }
        return figures;
    }

    /**
     * The variation was entered as 2.50 degrees west on 1 January 2026 and moves 0.19 degrees a year to the east, 151 of 365 days until 1
     * June. Lamps: 4 units with 3 of 200 W at 09 and 27 each, 2 at 03; cable: 5000 m of 3 ohm a kilometre at 6.6 A.
     */
    private static List<Figure> ofPower() {
        double west = 2.50 - 0.19 * 151 / 365;
        double cableW = 6.6 * 6.6 * 3 * 5;
        return List.of(new Figure("variation deg west", west, 0.0051, Map.of(
                        "report", found("Magnetic variation ([\\d.]+)\u00b0 west on 2026-06-01"),
                        "Bericht", found("Ortsmissweisung ([\\d,]+)\u00b0 West am 2026-06-01"),
                        "report PDF", found("([\\d.]+)\u00b0 west on 2026-06-01"),
                        "schedule", found("magnetic variation ([\\d.]+)\u00b0 west"),
                        "XLSX", found("magnetic variation ([\\d.]+)\u00b0 west"))),
                new Figure("magnetic azimuth deg", 272 + west, 0.0006, Map.of(
                        "schedule", cell("runway 09,PAPI 09,D,", "azimuth magnetic deg"),
                        "XLSX", cell("runway 09,PAPI 09,D,", "azimuth magnetic deg"))),
                new Figure("entered variation deg west", 2.50, 0.0051, Map.of(
                        "report", found("entered: -([\\d.]+)\u00b0 on 2026-01-01"),
                        "report PDF", found("entered: -([\\d.]+)\u00b0 on 2026-01-01"),
                        "schedule", found("entered: -([\\d.]+)\u00b0 on 2026-01-01"),
                        "XLSX", found("entered: -([\\d.]+)\u00b0 on 2026-01-01"))),
                new Figure("lamps of the row W", 4 * 3 * 200, 0.05, Map.of(
                        "report", found("runway 09 &gt; PAPI 09 4 3 200 (\\d+)"),
                        "report PDF", found("runway 09 > PAPI 09 4 3 200 (\\d+)"),
                        "circuits", cell("Series circuit 1,runway 09 > PAPI 09", "lamps W"),
                        "SVG circuit", found("4 . 3 . 200 W = (\\d+) W"),
                        "circuit PDF", found("4 . 3 . 200 W = (\\d+) W"))),
                new Figure("lamps of the circuit W", 10 * 3 * 200, 0.05, Map.of(
                        "circuits", cell("Series circuit 1,total", "lamps W"),
                        "SVG circuit", found("Lamps together: ([\\d.]+) W"),
                        "circuit PDF", found("Lamps together: ([\\d.]+) W"))),
                new Figure("lamps and cable VA", 6000 + cableW, 0.05, Map.of(
                        "circuits", cell("Series circuit 1,total", "lamps and cable VA"),
                        "SVG circuit", found("Lamps and cable: ([\\d.]+) VA"),
                        "circuit PDF", found("Lamps and cable: ([\\d.]+) VA"),
                        "check", found("take ([\\d.]+) W; what feeds it is rated 7500 W"))));
    }

    /** Every cell of the table that is said to be there is there, and is the figure. */
    @Test
    void everyFigureIsTheSameInEveryOutput() {
        StringBuilder table = new StringBuilder();
        List<String> wrong = new ArrayList<>();
        for (Figure figure : figures()) {
            table.append(String.format(Locale.ROOT, "%n%-26s %10.4f", figure.name(), figure.expected()));
            figure.places().forEach((output, place) -> {
                String said = place.apply(OUTPUTS.get(output));
                table.append("  ").append(output).append(' ').append(said.isEmpty() ? "MISSING" : said);
                if (!said.matches("[0-9.]+") || Math.abs(Double.parseDouble(said) - figure.expected()) > figure.tolerance()) {
                    wrong.add(figure.name() + " in " + output + ": '" + said + "'");
                }
            });
        }
        assertEquals(List.of(), wrong, table.toString());
        assertTrue(figures().stream().mapToInt(figure -> figure.places().size()).sum() >= 350, table.toString());
    }

    /** What governs has one name, whoever tells it. */
    @Test
    void theGoverningObstacleIsTheSameInEveryOutput() {
        Map<String, Function<String, String>> places = Map.ofEntries(
                Map.entry("report", found("m, governed by ([^,.]{1,20}?) (?:Twin|Equipment)")),
                Map.entry("report PDF", found("m, governed by ([^,.]{1,20}?) (?:Twin|Equipment|47)")),
                Map.entry("check", found("within the surface; the governing one, ([^,]+), stands 8\\.65")),
                Map.entry("GeoJSON", property("surface", "", "governing")),
                Map.entry("KML", found("(?s)name=\"governing\">\\s*<value>([^<]+)")),
                Map.entry("GeoPackage", found("(?m)^surface\\|.*\\|([^|\\n]+)$")),
                Map.entry("SVG plan", found("Governing: ([^,]+),")), Map.entry("SVG section", found("Governing: ([^,]+),")),
                Map.entry("plan PDF", found("Governing: ([^,]+),")), Map.entry("section PDF", found("Governing: ([^,]+),")));
        places.forEach((output, place) -> assertEquals("Tannery power line", place.apply(OUTPUTS.get(output)), output));
    }
}
