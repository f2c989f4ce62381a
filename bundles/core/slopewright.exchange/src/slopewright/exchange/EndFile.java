package slopewright.exchange;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;

import slopewright.evaluation.sweep.SweptEnd;
import slopewright.geometry.Decimals;
import slopewright.messages.Message;
import slopewright.messages.Reasoned;
import slopewright.messages.RefusedException;

/**
 * A table of runway ends as comma-separated values with the header {@link #HEADER}, in UTF-8. A row that is faulty is named and loses no
 * other.
 *
 * @param ends    the sound rows in their order
 * @param refused the others, each with file, line and reason
 */
public record EndFile(List<SweptEnd> ends, List<ExchangeException> refused) {

    /** The only header. */
    public static final String HEADER = "id,aerodrome,latitudeDeg,longitudeDeg,trueBearingDeg,elevationM,verticalDatum";

    /** The most rows that a table may have. */
    public static final int MOST_ROWS = 200_000;

    private static final int COLUMNS = 7;

    /** Copies the lists. */
    public EndFile {
        ends = List.copyOf(ends);
        refused = List.copyOf(refused);
    }

    /**
     * Reads a table.
     *
     * @param file the file
     * @throws ExchangeException where it cannot be read to its end; the message names file, line and reason
     */
    public static EndFile read(Path file) throws ExchangeException {
        List<SweptEnd> ends = new ArrayList<>();
        List<ExchangeException> refused = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8);
                CsvReader<CsvRecord> records = CsvReader.builder().missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE).allowUnclosedQuote(false).ofCsvRecord(text)) {
            boolean headed = false;
            for (CsvRecord row : records) {
                if (!headed) {
                    headed = true;
                    refuseHeader(file, row);
                } else if (ends.size() + refused.size() >= MOST_ROWS) {
                    throw new ExchangeException(file.toString(), row.getStartingLineNumber(), Message.said("survey-file.row-too-many",
                            MOST_ROWS));
                } else {
                    row(file, row, ids, ends, refused);
                }
            }
        } catch (UncheckedIOException | CsvParseException e) {
            throw unread(file, e.getCause() == null ? e : e.getCause());
        } catch (IOException e) {
            throw unread(file, e);
        }
        if (ends.isEmpty() && refused.isEmpty()) {
            throw new ExchangeException(file.toString(), 0, Message.of("survey-file.no-runway-end"));
        }
        return new EndFile(ends, refused);
    }

    private static ExchangeException unread(Path file, Throwable cause) {
        return new ExchangeException(file.toString(), 0, cause instanceof NoSuchFileException ? Message.of("survey-file.no-file")
                : cause instanceof CharacterCodingException ? Message.of("survey-file.no-utf8") : Message.said("survey-file.unreadable",
                        cause));
    }

    private static void refuseHeader(Path file, CsvRecord row) throws ExchangeException {
        if (!String.join(",", row.getFields()).replace("\uFEFF", "").equals(HEADER)) {
            throw new ExchangeException(file.toString(), 1, Message.said("survey-file.header", HEADER));
        }
    }

    private static void row(Path file, CsvRecord row, Set<String> ids, List<SweptEnd> ends, List<ExchangeException> refused) {
        List<String> fields = row.getFields().stream().map(String::strip).toList();
        try {
            if (fields.size() != COLUMNS) {
                throw new RefusedException(Message.said("survey-file.fields-needed", fields.size(), COLUMNS));
            }
            if (fields.get(0).isEmpty() || !ids.add(fields.get(0))) {
                throw new RefusedException(fields.get(0).isEmpty() ? Message.of("survey-file.no-id")
                        : Message.said("survey-file.id-twice", fields.get(0)));
            }
            ends.add(new SweptEnd(fields.get(0), fields.get(1), Decimals.parse(fields.get(2)), Decimals.parse(fields.get(3)),
                    Decimals.parse(fields.get(4)), Decimals.parse(fields.get(5)), fields.get(6)));
        } catch (IllegalArgumentException e) {
            refused.add(new ExchangeException(file.toString(), row.getStartingLineNumber(), Reasoned.of(e)));
        }
    }
}
