package slopewright.exchange.survey;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.internal.survey.SpreadsheetRows;
import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/**
 * The beginning of a table, for whoever says how it is to be read: its columns, its first rows, and a guess at its form. Of a column whose
 * name says nothing certain nothing is guessed.
 *
 * @param columns the headers
 * @param rows    the first rows, each with as many fields as there are columns
 * @param guess   how it is probably to be read
 */
public record TablePreview(List<String> columns, List<List<String>> rows, TableForm guess) {

    private static final int BEGINNING_BYTES = 1 << 16;
    private static final int MOST_ROWS = 5;
    private static final Charset WESTERN = Charset.forName("windows-1252");
    private static final List<Character> SEPARATORS = List.of(',', ';', '\t', '|');
    private static final Map<String, Set<String>> WORDS = Map.of("latitudeDeg", Set.of("lat", "latitude", "breite", "lat_dd", "y_lat"),
            "longitudeDeg", Set.of("lon", "lng", "long", "longitude", "länge", "laenge", "lon_dd", "x_lon"), "eastM",
            Set.of("e", "east", "easting", "x", "rechtswert", "rechts", "ost"), "northM",
            Set.of("n", "north", "northing", "y", "hochwert", "hoch", "nord"), "elevationM",
            Set.of("z", "elev", "elevation", "amsl", "msl", "höhe", "hoehe"), "topElevationM",
            Set.of("top", "top_elev", "topelev", "oberkante", "ok"), "heightM", Set.of("agl", "height", "height_agl", "hgt"),
            "groundElevationM", Set.of("ground", "ground_elev", "gelände", "gelaende", "gok"), "name",
            Set.of("name", "designation", "bezeichnung", "description"), "id", Set.of("id", "no", "nr", "number", "nummer", "point"));

    /** Copies the lists. */
    public TablePreview {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /**
     * Looks at the beginning of a table.
     *
     * @param file the file
     * @throws ExchangeException where it cannot be read as a table
     */
    public static TablePreview of(Path file) throws ExchangeException {
        if (String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            return of(file, spreadsheet(file), ',', StandardCharsets.UTF_8);
        }
        byte[] beginning;
        try (InputStream in = Files.newInputStream(file)) {
            beginning = in.readNBytes(BEGINNING_BYTES);
        } catch (IOException e) {
            throw new ExchangeException(file.toString(), 0, Message.said("survey-file.unreadable", e));
        }
        Charset encoding = isUtf8(beginning) ? StandardCharsets.UTF_8 : WESTERN;
        String text = new String(beginning, encoding);
        if (text.startsWith("\uFEFF")) {
            text = text.substring(1);
        }
        int lastLine = beginning.length == BEGINNING_BYTES ? text.lastIndexOf('\n') + 1 : text.length();
        String whole = text.substring(0, lastLine);
        String header = whole.lines().findFirst().orElse("");
        char separator = SEPARATORS.stream().max((one, other) -> Long.compare(count(header, one), count(header, other))).orElseThrow();
        return of(file, records(file, whole, separator), separator, encoding);
    }

    private static List<List<String>> spreadsheet(Path file) throws ExchangeException {
        List<List<String>> found = new ArrayList<>();
        try {
            SpreadsheetRows.read(() -> Files.newInputStream(file), (fields, line) -> found.add(fields) && found.size() <= MOST_ROWS,
                    reason -> new ExchangeException(file.toString(), 0, reason));
        } catch (IOException e) {
            throw new ExchangeException(file.toString(), 0, Message.said("survey-file.unreadable", e));
        }
        return found;
    }

    private static TablePreview of(Path file, List<List<String>> all, char separator, Charset encoding) throws ExchangeException {
        if (all.isEmpty()) {
            throw new ExchangeException(file.toString(), 1, Message.of("survey-file.empty"));
        }
        List<String> columns = all.get(0).stream().map(String::strip).toList();
        List<List<String>> rows = all.stream().skip(1).filter(row -> row.size() == columns.size()).toList();
        boolean comma = separator != ',' && rows.stream().flatMap(List::stream).anyMatch(field -> field.strip().matches("[+-]?\\d+,\\d+"))
                && rows.stream().flatMap(List::stream).noneMatch(field -> field.strip().matches("[+-]?\\d+\\.\\d+"));
        return new TablePreview(columns, rows, new TableForm(separator, comma, false, encoding, meanings(columns)));
    }

    private static long count(String text, char letter) {
        return text.chars().filter(each -> each == letter).count();
    }

    private static boolean isUtf8(byte[] bytes) {
        try {
            // a letter that the end of the beginning cut in two is none of the fault of the file
            int end = bytes.length;
            while (bytes.length == BEGINNING_BYTES && end > 0 && (bytes[end - 1] & 0x80) != 0) {
                end--;
            }
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, 0, end));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }

    private static List<List<String>> records(Path file, String text, char separator) throws ExchangeException {
        List<List<String>> found = new ArrayList<>();
        try (CsvReader<CsvRecord> records = CsvReader.builder().fieldSeparator(separator).missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE).ofCsvRecord(new StringReader(text))) {
            for (CsvRecord row : records) {
                if (found.size() > MOST_ROWS) {
                    break;
                }
                found.add(row.getFields());
            }
        } catch (CsvParseException | UncheckedIOException e) {
            throw new ExchangeException(file.toString(), 0, Reasoned.of(e));
        } catch (IOException e) {
            throw new ExchangeException(file.toString(), 0, Message.said("survey-file.unreadable", e));
        }
        return found;
    }

    /** A meaning that two columns could have is that of neither. */
    private static Map<String, String> meanings(List<String> columns) {
        Map<String, String> found = new LinkedHashMap<>();
        columns.forEach(column -> found.put(column, meaning(column)));
        List<String> all = List.copyOf(found.values());
        found.replaceAll((column, meaning) -> all.stream().filter(meaning::equals).count() > 1 ? "" : meaning);
        return found;
    }

    private static String meaning(String column) {
        String name = column.toLowerCase(Locale.ROOT);
        Stream<String> exact = TableForm.MEANINGS.stream().filter(meaning -> meaning.toLowerCase(Locale.ROOT).equals(name));
        return Stream.concat(exact, WORDS.entrySet().stream().filter(words -> words.getValue().contains(name)).map(Map.Entry::getKey))
                .findFirst().orElse("");
    }
}
