package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteDataSource;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import slopewright.testkit.DemoProjects;

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

    /** Of these the marks are read too. */
    private static final Set<String> MARKED = Set.of("KML", "AIXM", "LandXML");

    @TempDir
    private static Path folder;
    private static final Map<String, String> OUTPUTS = new LinkedHashMap<>();

    /** A figure: what it is, how far apart two outputs may print it, and where it stands in each. */
    private record Figure(String name, double expected, double tolerance, Map<String, Function<String, String>> places) {
    }

    @BeforeAll
    static void writeEverything() throws IOException {
        String project = DemoProjects.file("harrow-vale").toString();
        String aid = "PAPI 09";
        write("report", "report.html", "report", project, "--date", "2026-06-01");
        write("Bericht", "bericht.html", "report", project, "--date", "2026-06-01", "--language", "de");
        write("commissioning", "commissioning.html", "commission", project, "--aid", aid, "--date", "2026-06-01");
        write("schedule", "schedule.csv", "schedule", project, "--date", "2026-06-01");
        write("published", "published.csv", "schedule", project, "--sheet", "publish");
        write("GeoJSON", "map.geojson", "export", project, "--aid", aid);
        write("KML", "map.kml", "export", project, "--aid", aid);
        for (String view : List.of("plan", "near", "section", "detail")) {
            write("SVG " + view, view + ".svg", "draw", project, "--aid", aid, "--view", view, "--date", "2026-06-01");
        }
        write("SVG mounting", "mounting.svg", "draw", project, "--aid", aid, "--view", "mounting", "--date", "2026-06-01");
        write("AIXM", "publish.aixm", "export", project, "--date", "2026-06-01");
        String onGrid = grid(project).toString();
        write("PNEZD", "points.txt", "export", onGrid, "--date", "2026-06-01");
        write("LandXML", "points.xml", "export", onGrid, "--date", "2026-06-01");
        writeGeoPackage(project, aid);
        write("DXF plan", "plan.dxf", "draw", project, "--aid", aid, "--view", "plan", "--date", "2026-06-01");
        OUTPUTS.put("check", Words.run("check", project, "--json").out());
        OUTPUTS.replaceAll((name, text) -> text.startsWith("<") && !MARKED.contains(name) ? text.replaceAll("(?s)<style>.*?</style>", "")
                .replaceAll("<[^>]*>", "\n").replaceAll("\\s+", " ") : text);
    }

    @AfterAll
    static void forget() {
        OUTPUTS.clear();
    }

    private static void write(String name, String file, String... words) throws IOException {
        List<String> all = new ArrayList<>(List.of(words));
        Path out = folder.resolve(file);
        all.addAll(List.of("-o", out.toString()));
        Words run = Words.run(all.toArray(String[]::new));
        assertTrue(Files.exists(out), name + ": " + run.err());
        OUTPUTS.put(name, Files.readString(out));
    }

    /** The same project on the grid of a projection, as total stations want it. */
    private static Path grid(String project) throws IOException {
        Path file = folder.resolve("grid.slopewright");
        return Files.writeString(file, Files.readString(Path.of(project)).replace("coordinateReference=\"WGS84\"",
                "coordinateReference=\"EPSG:32629\""));
    }

    /** Reads a GeoPackage back by the database's own library: a line a unit and the surface. */
    private static void writeGeoPackage(String project, String aid) throws IOException {
        Path file = folder.resolve("map.gpkg");
        Words run = Words.run("export", project, "--aid", aid, "-o", file.toString());
        assertEquals(0, run.code(), run.err());
        StringBuilder text = new StringBuilder();
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + file);
        try (Connection base = source.getConnection(); Statement query = base.createStatement()) {
            for (String columns : List.of("label, settingDeg, lensElevationM, alongM from unit",
                    "'surface', distanceM, mehtM, marginM from surface")) {
                try (ResultSet rows = query.executeQuery("select " + columns)) {
                    while (rows.next()) {
                        text.append(String.format(Locale.ROOT, "%s|%s|%s|%s%n", rows.getString(1), rows.getString(2), rows.getString(3),
                                rows.getString(4)));
                    }
                }
            }
        } catch (SQLException e) {
            throw new IOException(e);
        }
        OUTPUTS.put("GeoPackage", text.toString());
    }

    /** Finds what stands between two texts, with a decimal point. */
    private static Function<String, String> found(String pattern) {
        return text -> {
            Matcher matcher = Pattern.compile(pattern).matcher(text);
            return matcher.find() ? matcher.group(1).replace(',', '.') : "";
        };
    }

    /** Finds the cell of a column in the line of a table that begins with a text. */
    private static Function<String, String> cell(String line, String column) {
        return text -> {
            List<String> lines = text.lines().toList();
            int index = List.of(lines.get(0).split(",")).indexOf(column);
            return lines.stream().filter(each -> each.startsWith(line)).map(each -> each.split(",")[index]).findFirst().orElse("");
        };
    }

    private static Function<String, String> property(String kind, String label, String name) {
        return text -> StreamSupport.stream(json(text).get("features").spliterator(), false).map(feature -> feature.get("properties"))
                .filter(facts -> facts.get("kind").asText().equals(kind) && (label.isEmpty() || label.equals(facts.path("label").asText())))
                .map(facts -> facts.get(name).asText()).findFirst().orElse("");
    }

    /** The value or margin of an outcome about the aid. */
    private static Function<String, String> outcome(String rule, String field, int which) {
        return text -> StreamSupport.stream(json(text).get("projects").get(0).get("outcomes").spliterator(), false)
                .filter(one -> one.get("rule").asText().equals(rule) && one.get("elementPath").asText().endsWith("PAPI 09")
                        && one.get(field).isNumber())
                .map(one -> one.get(field).asText()).skip(which).findFirst().orElse("");
    }

    private static JsonNode json(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
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
        String[][] settings = {{"D", "3\u00b035'", "3.58333"}, {"C", "3\u00b015'", "3.25"}, {"B", "2\u00b045'", "2.75"},
                {"A", "2\u00b025'", "2.41667"}};
        for (String[] unit : settings) {
            figures.add(new Figure("setting of " + unit[0], Double.parseDouble(unit[2]), 0.0001, Map.of(
                    "report", found(" " + unit[0] + " 47\u00b0.{20,90}? \\d\u00b0\\d+' (\\d\\.\\d{4}) "),
                    "Bericht", found(" " + unit[0] + " 47\u00b0.{20,90}? \\d\u00b0\\d+' (\\d,\\d{4}) "),
                    "commissioning", found(" " + unit[0] + " (\\d\u00b0\\d+')").andThen(SameFiguresTest::degrees),
                    "schedule", cell("runway 09,PAPI 09," + unit[0] + ",", "setting deg"),
                    "GeoJSON", property("unit", unit[0], "settingDeg"),
                    "SVG plan", found(" " + unit[0] + " (\\d\u00b0\\d+')").andThen(SameFiguresTest::degrees),
                    "SVG detail", found(" " + unit[0] + " setting (\\d\u00b0\\d+')").andThen(SameFiguresTest::degrees),
                    "DXF plan", found("\\n  1\\n" + unit[0]
                            + "\\n(?:[^\\n]*\\n){1,60}?  1\\n(\\d\u00b0\\d+')\\n").andThen(SameFiguresTest::degrees))));
        }
        for (String[] unit : settings) {
            figures.add(new Figure("setting of " + unit[0] + ", data", Double.parseDouble(unit[2]), 0.0001, Map.of(
                    "GeoPackage", found("(?m)^" + unit[0] + "\\|([\\d.]+)\\|"),
                    "PNEZD", found("PAPI 09 unit " + unit[0] + " set to (\\dd\\d+')").andThen(text -> degrees(text.replace('d', '\u00b0'))),
                    "LandXML", found("PAPI 09 unit " + unit[0] + " set to (\\d\u00b0\\d+')").andThen(SameFiguresTest::degrees),
                    "SVG mounting", found(" " + unit[0] + " 86\\.531 .{0,30}?(\\d\u00b0\\d+')").andThen(SameFiguresTest::degrees))));
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
        return figures;
    }

    private static String degrees(String written) {
        Matcher matcher = Pattern.compile("(\\d+)\u00b0([\\d.]+)'").matcher(written);
        return matcher.matches() ? String.format(Locale.ROOT, "%.5f", Double.parseDouble(matcher.group(1)) + Double.parseDouble(matcher
                .group(2)) / 60) : "";
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
        assertTrue(figures().stream().mapToInt(figure -> figure.places().size()).sum() >= 80, table.toString());
    }
}
