package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
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
import java.util.zip.ZipFile;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.sqlite.SQLiteDataSource;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import slopewright.testkit.DemoProjects;

/** Everything that is handed over for the row at 09 of the demonstration, each output as text, and how to find a figure in it. */
final class OneAidOutputs {

    static final String AID = "PAPI 09";
    private static final String DAY = "2026-06-01";
    /** Of these the marks are read too. */
    private static final Set<String> MARKED = Set.of("KML", "AIXM", "LandXML");
    private static final int BINARY_HEAD = 8;
    private static final int[] ENVELOPE_BYTES = {0, 32, 48, 48, 64};

    private final Path folder;
    private final Map<String, String> outputs = new LinkedHashMap<>();

    private OneAidOutputs(Path folder) {
        this.folder = folder;
    }

    /** Writes all of it into a folder and returns it by the name of the output. */
    static Map<String, String> write(Path folder) throws IOException {
        OneAidOutputs written = new OneAidOutputs(folder);
        String project = DemoProjects.file("harrow-vale").toString();
        written.files(project);
        written.grid(project);
        written.geoPackage(project);
        written.handover(project);
        written.outputs.put("check", Words.run("check", project, "--json").out());
        written.outputs.replaceAll((name, text) -> text.startsWith("<") && !MARKED.contains(name)
                ? text.replaceAll("(?s)<style>.*?</style>", "").replaceAll("<[^>]*>", "\n").replaceAll("\\s+", " ") : text);
        return written.outputs;
    }

    private void files(String project) throws IOException {
        write("report", "report.html", "report", project, "--date", DAY);
        write("Bericht", "bericht.html", "report", project, "--date", DAY, "--language", "de");
        write("commissioning", "commissioning.html", "commission", project, "--aid", AID, "--date", DAY);
        write("schedule", "schedule.csv", "schedule", project, "--date", DAY);
        write("published", "published.csv", "schedule", project, "--sheet", "publish");
        write("circuits", "circuits.csv", "schedule", project, "--sheet", "circuits");
        write("GeoJSON", "map.geojson", "export", project, "--aid", AID);
        write("KML", "map.kml", "export", project, "--aid", AID);
        for (String view : List.of("plan", "near", "section", "detail", "surface", "signals", "mounting", "circuit")) {
            write("SVG " + view, view + ".svg", "draw", project, "--aid", AID, "--view", view, "--date", DAY);
        }
        write("AIXM", "publish.aixm", "export", project, "--date", DAY);
        write("DXF plan", "plan.dxf", "draw", project, "--aid", AID, "--view", "plan", "--date", DAY);
    }

    private void write(String name, String file, String... words) throws IOException {
        List<String> all = new ArrayList<>(List.of(words));
        Path out = folder.resolve(file);
        all.addAll(List.of("-o", out.toString()));
        Words run = Words.run(all.toArray(String[]::new));
        assertTrue(Files.exists(out), name + ": " + run.err());
        outputs.put(name, Files.readString(out));
    }

    /** The same project on the grid of a projection, as total stations want it. */
    private void grid(String project) throws IOException {
        Path file = Files.writeString(folder.resolve("grid.slopewright"), Files.readString(Path.of(project))
                .replace("coordinateReference=\"WGS84\"", "coordinateReference=\"EPSG:32629\""));
        write("PNEZD", "points.txt", "export", file.toString(), "--date", DAY);
        write("LandXML", "points.xml", "export", file.toString(), "--date", DAY);
    }

    /** Reads a GeoPackage back by the database's own library: a line a unit with its place and one for the surface. */
    private void geoPackage(String project) throws IOException {
        Path file = folder.resolve("map.gpkg");
        Words run = Words.run("export", project, "--aid", AID, "-o", file.toString());
        assertEquals(0, run.code(), run.err());
        StringBuilder text = new StringBuilder();
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + file);
        try (Connection base = source.getConnection(); Statement query = base.createStatement()) {
            for (String columns : List.of("label, settingDeg, lensElevationM, alongM, geom from unit",
                    "'surface', distanceM, mehtM, marginM, geom, governing from surface")) {
                try (ResultSet rows = query.executeQuery("select " + columns)) {
                    while (rows.next()) {
                        text.append(String.format(Locale.ROOT, "%s|%s|%s|%s|%s|%s%n", rows.getString(1), rows.getString(2),
                                rows.getString(3), rows.getString(4), place(rows.getBytes(5)), columns.contains("governing")
                                        ? rows.getString(6) : ""));
                    }
                }
            }
        } catch (SQLException e) {
            throw new IOException(e);
        }
        outputs.put("GeoPackage", text.toString());
    }

    /** Longitude and latitude of a point in the binary form of OGC 12-128r18, 2.1.3; nothing for another shape. */
    private static String place(byte[] binary) {
        int at = BINARY_HEAD + ENVELOPE_BYTES[binary[3] >> 1 & 7];
        ByteBuffer shape = ByteBuffer.wrap(binary).order(binary[at] == 1 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        return shape.getInt(at + 1) % 1000 == 1 ? String.format(Locale.ROOT, "%.9f,%.9f", shape.getDouble(at + 5), shape.getDouble(at
                + 13)) : "";
    }

    /** What the one call writes that hands everything over: its papers as their text, its workbook as lines of its cells. */
    private void handover(String project) throws IOException {
        Path out = folder.resolve("handover");
        Words run = Words.run("handover", project, "-o", out.toString(), "--date", DAY);
        assertEquals(0, run.code(), run.err());
        outputs.put("report PDF", pages(out.resolve("report.pdf"), ""));
        outputs.put("commissioning PDF", pages(out.resolve("papi-09-commissioning.pdf"), ""));
        outputs.put("plan PDF", pages(out.resolve("papi-09-plan.pdf"), ""));
        outputs.put("section PDF", pages(out.resolve("papi-09-section.pdf"), ""));
        outputs.put("setting-out PDF", pages(out.resolve("drawing-set.pdf"), "Drawing Setting out, runway 09, PAPI 09"));
        outputs.put("circuit PDF", pages(out.resolve("drawing-set.pdf"), "Drawing Single-line diagram, Series circuit 1"));
        outputs.put("mounting PDF", pages(out.resolve("drawing-set.pdf"), "Drawing Foundation and mounting, runway 09, PAPI 09"));
        outputs.put("XLSX", workbook(out.resolve("schedule.xlsx")));
    }

    /** Returns the text of the pages on which a text stands, with single blanks. */
    private static String pages(Path file, String wanted) throws IOException {
        StringBuilder text = new StringBuilder();
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String found = stripper.getText(document).replaceAll("\\s+", " ");
                text.append(found.contains(wanted) ? found : "");
            }
        }
        assertTrue(text.length() > 0, wanted);
        return text.toString();
    }

    /** Returns the two sheets of a workbook, a line a row, its cells parted by commas; a comma in a cell becomes a semicolon. */
    private static String workbook(Path file) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            List<String> shared = new ArrayList<>();
            Matcher texts = Pattern.compile("(?s)<si>(.*?)</si>").matcher(part(zip, "xl/sharedStrings.xml"));
            while (texts.find()) {
                shared.add(texts.group(1).replaceAll("<[^>]*>", "").replace("&apos;", "'").replace("&gt;", ">")
                        .replace("&#xb0;", "\u00b0").replace(',', ';'));
            }
            StringBuilder lines = new StringBuilder();
            Matcher rows = Pattern.compile("(?s)<row .*?</row>").matcher(part(zip, "xl/worksheets/sheet1.xml")
                    + part(zip, "xl/worksheets/sheet2.xml"));
            while (rows.find()) {
                List<String> cells = new ArrayList<>();
                Matcher cell = Pattern.compile("<c r=\"[^\"]*\"[^>]*?t=\"(\\w)\"[^>]*><v>([^<]*)</v>").matcher(rows.group());
                while (cell.find()) {
                    cells.add(cell.group(1).equals("s") ? shared.get(Integer.parseInt(cell.group(2))) : cell.group(2));
                }
                lines.append(String.join(",", cells)).append('\n');
            }
            return lines.toString();
        }
    }

    private static String part(ZipFile zip, String name) throws IOException {
        try (InputStream in = zip.getInputStream(zip.getEntry(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Finds what stands between two texts, with a decimal point. */
    static Function<String, String> found(String pattern) {
        return text -> {
            Matcher matcher = Pattern.compile(pattern).matcher(text);
            return matcher.find() ? matcher.group(1).replace(',', '.') : "";
        };
    }

    /** Finds the cell of a column in the line of a table that begins with a text. */
    static Function<String, String> cell(String line, String column) {
        return text -> {
            List<String> lines = text.lines().toList();
            int index = List.of(lines.get(0).split(",")).indexOf(column);
            return lines.stream().filter(each -> each.startsWith(line)).map(each -> each.split(",")[index]).findFirst().orElse("");
        };
    }

    static Function<String, String> property(String kind, String label, String name) {
        return text -> StreamSupport.stream(json(text).get("features").spliterator(), false).map(feature -> feature.get("properties"))
                .filter(facts -> facts.get("kind").asText().equals(kind) && (label.isEmpty() || label.equals(facts.path("label").asText())))
                .map(facts -> facts.get(name).asText()).findFirst().orElse("");
    }

    /** The value or margin of an outcome about the aid. */
    static Function<String, String> outcome(String rule, String field, int which) {
        return text -> StreamSupport.stream(json(text).get("projects").get(0).get("outcomes").spliterator(), false)
                .filter(one -> one.get("rule").asText().equals(rule) && one.get("elementPath").asText().endsWith(AID)
                        && one.get(field).isNumber())
                .map(one -> one.get(field).asText()).skip(which).findFirst().orElse("");
    }

    static JsonNode json(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    static String degrees(String written) {
        Matcher matcher = Pattern.compile("(\\d+)\u00b0([\\d.]+)'").matcher(written);
        return matcher.matches() ? String.format(Locale.ROOT, "%.5f", Double.parseDouble(matcher.group(1)) + Double.parseDouble(matcher
                .group(2)) / 60) : "";
    }
}
