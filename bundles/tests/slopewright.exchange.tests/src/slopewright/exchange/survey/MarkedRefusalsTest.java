package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;

/**
 * Whatever is refused of a survey, and whatever is said of it, is a sentence of the catalogues: what is put into its places is a number, or
 * stands in the file or in its name, or is a word that is the same in every language.
 */
class MarkedRefusalsTest {

    private static final Path ROOT = Path.of(System.getProperty("slopewright.root"));
    private static final int TIMES = 60;
    private static final int LARGE = 200_000;
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");
    /** Sentences around what a library or the file system says. */
    private static final Set<String> FOREIGN = Set.of("plain", "survey-file.no-xml", "survey-file.no-json", "survey-file.no-spreadsheet");
    /** Columns, kinds and options as this program names them, and names of formats. */
    private static final Pattern NAMES = Pattern.compile("EPSG:\\d+|U\\+[0-9A-F]{4}|--[a-z-]+( [a-z-]+)?(, [a-z-]+)?|UTF-8|CRS84|WGS84"
            + "|[a-z]+(Deg|M)|id|name|source|date|position|elevation|latitude|longitude|altitude|group \\d+|ncols|nrows|cellsize|[xy]ll\\w+"
            + "|nodata_value|(\\.[a-z]+(, )?)+|xl/\\S+|point|line|area|Feature|START_\\w+|terrain|obstacles"
            + "|verticalDatum|horizontalAccuracyM");

    @TempDir
    private Path folder;

    static Stream<Path> samples() throws IOException {
        List<Path> all = new ArrayList<>();
        for (String from : List.of("demo-data/harrow-vale/survey", "bundles/tests/slopewright.exchange.tests/src/others",
                "bundles/tests/slopewright.exchange.tests/cases")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(from))) {
                files.filter(Files::isRegularFile).filter(file -> SurveyFile.endings().stream()
                        .anyMatch(ending -> plainName(file).endsWith("." + ending))).sorted().forEach(all::add);
            }
        }
        return all.stream();
    }

    private static String plainName(Path file) {
        return file.getFileName().toString().replaceFirst("\\.gz$", "");
    }

    private static byte[] content(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return file.toString().endsWith(".gz") ? new GZIPInputStream(in).readAllBytes() : in.readAllBytes();
        }
    }

    /** Cuts it off, writes letters over numbers, leaves a part out, or turns single bytes. */
    private static byte[] spoiled(byte[] content, Random random) {
        byte[] copy = content.clone();
        int at = random.nextInt(Math.min(content.length, 3000));
        switch (random.nextInt(4)) {
            case 0:
                return Arrays.copyOf(copy, at);
            case 1:
                for (int i = at; i < Math.min(at + 40, copy.length); i++) {
                    copy[i] = copy[i] >= '0' && copy[i] <= '9' ? (byte) 'x' : copy[i];
                }
                return copy;
            case 2:
                System.arraycopy(content, Math.min(content.length, at + 20), copy, at, Math.max(0, content.length - at - 20));
                return Arrays.copyOf(copy, Math.max(at, content.length - 20));
            default:
                for (int i = 0; i < 4; i++) {
                    copy[random.nextInt(Math.min(content.length, 600))] = (byte) random.nextInt(256);
                }
                return copy;
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void whatIsSaidStandsInTheCatalogues(Path sample) throws IOException {
        byte[] content = content(sample);
        Path file = folder.resolve(plainName(sample));
        String besides = beside(sample);
        String datum = Demo.project().getAerodrome().getVerticalDatum();
        Random random = new Random(plainName(sample).hashCode());
        Set<String> strange = new TreeSet<>();
        int said = 0;
        for (int i = 0; i < (content.length > LARGE ? 3 : TIMES); i++) {
            byte[] spoiled = spoiled(content, random);
            Files.write(file, spoiled);
            byte[] head = Arrays.copyOf(spoiled, Math.min(spoiled.length, LARGE));
            String data = file + datum + besides + new String(head, StandardCharsets.ISO_8859_1) + " " + new String(head,
                    StandardCharsets.UTF_8);
            SurveyReading.Form form = SurveyReading.Form.values()[i % 3];
            for (Message message : said(file, i % 2 == 0 ? Optional.empty() : Optional.of("EPSG:32629"), form)) {
                said++;
                collect(message, data, strange);
            }
        }
        assertTrue(said > 0, "nothing was refused");
        assertEquals(Set.of(), strange);
    }

    /** Lays what belongs to a shape file beside it, and returns what stands there, or within a packed file. */
    private String beside(Path sample) throws IOException {
        String name = sample.getFileName().toString();
        if (name.endsWith(".kmz")) {
            return Files.readString(sample.resolveSibling(name.replace(".kmz", ".kml")));
        }
        StringBuilder found = new StringBuilder(" ");
        for (String ending : name.endsWith(".shp") ? List.of("dbf", "prj", "cpg") : List.<String>of()) {
            Path other = sample.resolveSibling(name.replace("shp", ending));
            if (Files.exists(other)) {
                found.append(Files.readString(Files.copy(other, folder.resolve(other.getFileName())), StandardCharsets.ISO_8859_1));
            }
        }
        return found.toString();
    }

    private static List<Message> said(Path file, Optional<String> grid, SurveyReading.Form form) {
        SurveyOrigin origin = new SurveyOrigin("survey", Optional.of("2026-01-31"), grid, OptionalDouble.of(1), OptionalDouble.of(1),
                SurveyHeights.AS_STATED);
        List<Message> all = new ArrayList<>();
        try {
            SurveyReading reading = SurveyReading.of(Demo.project(), file, origin, Optional.empty(), form);
            all.addAll(reading.notes());
            all.addAll(reading.refused());
            reading.refuseFaults(false);
        } catch (ExchangeException e) {
            all.add(e.reason());
            all.addAll(e.messages());
        }
        return all;
    }

    private static void collect(Argument argument, String data, Set<String> strange) {
        if (argument instanceof Message message) {
            String marked = MessageRenderer.of(MessageRenderer.MARKED).render(Message.of(message.key()));
            boolean known = MessageRenderer.of(Locale.ENGLISH).keys().contains(message.key());
            if (!known || !FOREIGN.contains(message.key()) && !marked.matches("[\\P{L}]*\u27e6.*\u27e7.*|[\\P{L}]*")) {
                strange.add("no sentence: " + message.key());
            }
            if (!FOREIGN.contains(message.key())) {
                message.arguments().forEach(each -> collect(each, data, strange));
            }
        } else if (argument instanceof Argument.Series series) {
            series.items().forEach(each -> collect(each, data, strange));
        } else if (argument instanceof Argument.Name name) {
            String text = name.text().replaceAll("^'|'$", "");
            boolean foreign = Stream.of(text.split(" ")).anyMatch(word -> WORD.matcher(word).find() && !data.contains(word));
            if (foreign && !NAMES.matcher(text).matches()) {
                strange.add(text);
            }
        }
    }

    /** A file that is not there, one of no format, and one of another encoding, each as whoever reads German is told. */
    @Test
    void whatIsRefusedAsAWholeIsSaidInGerman() throws IOException {
        assertEquals("gibt.csv: ist nicht zu lesen: es gibt keine solche Datei und keinen solchen Ordner", german(Path.of("gibt.csv")));
        Path wide = Files.write(folder.resolve("w.csv"), "\ufeffid,latitudeDeg".getBytes(StandardCharsets.UTF_16LE));
        assertEquals(wide + ":1: ist in UTF-16 geschrieben; in UTF-8 schreiben", german(wide));
        Path row = Files.writeString(folder.resolve("r.csv"), "id,latitudeDeg,longitudeDeg,topElevationM\na,47.3,-11.9,hoch\n");
        assertEquals(row + ":2: 'a' topElevationM: 'hoch' ist keine Zahl", german(row));
        Path high = Files.writeString(folder.resolve("h.csv"), "id,latitudeDeg,longitudeDeg,topElevationM\na,47.3,-11.9,9000.5\n");
        assertEquals(high + ":2: 'a' steht auf 9000,5 m Höhe, die kein Ort der Erde hat; sind es Meter?", german(high));
    }

    private static String german(Path file) {
        return MessageRenderer.of(Locale.GERMAN).render(said(file, Optional.empty(), SurveyReading.Form.OBSTACLES).get(0));
    }
}
