package slopewright.exchange.internal.runways;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.reader.NamedCsvRecord;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.runways.OpenAirport;
import slopewright.exchange.runways.OpenRunway;
import slopewright.geometry.Decimals;
import slopewright.messages.Message;

/** A table of runways as comma-separated values, a runway with both of its ends a line, feet and true degrees. */
public final class CsvAirports implements AirportTables {
    private static final List<String> NEEDED = List.of("airport_ident", "length_ft", "width_ft", "surface", "closed");
    private static final List<String> SIDES = List.of("le_", "he_");
    private static final List<String> OF_AN_END = List.of("ident", "latitude_deg", "longitude_deg", "elevation_ft", "heading_degT",
            "displaced_threshold_ft");

    private final String file;
    private final byte[] content;

    /**
     * Takes the whole file.
     *
     * @param file    its name, for messages
     * @param content its bytes, UTF-8
     */
    public CsvAirports(String file, byte[] content) {
        this.file = file;
        this.content = content;
    }

    @Override
    public List<OpenAirport> find(String code) throws ExchangeException {
        List<OpenRunway> runways = new ArrayList<>();
        boolean headed = false;
        try (CsvReader<NamedCsvRecord> records = CsvReader.builder().missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE).allowUnclosedQuote(false)
                .ofNamedCsvRecord(new String(content, StandardCharsets.UTF_8).replace("\uFEFF", ""))) {
            for (NamedCsvRecord record : records) {
                headed = headed || isHeaded(record);
                if (code.equals(text(record, "airport_ident").toUpperCase(Locale.ROOT))) {
                    runways.add(runway(record));
                }
            }
        } catch (CsvParseException | IllegalArgumentException e) {
            throw new ExchangeException(file, 0, Message.said("survey-file.no-runway-table", e));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        if (!headed) {
            throw new ExchangeException(file, 0, Message.of("survey-file.no-runways"));
        }
        return runways.isEmpty() ? List.of() : List.of(new OpenAirport(code, code, false, "", runways));
    }

    private boolean isHeaded(NamedCsvRecord record) throws ExchangeException {
        List<String> missing = new ArrayList<>(NEEDED);
        SIDES.forEach(side -> OF_AN_END.forEach(column -> missing.add(side + column)));
        missing.removeAll(record.getHeader());
        if (!missing.isEmpty()) {
            throw new ExchangeException(file, 1, Message.said("survey-file.runway-column", missing.get(0)));
        }
        return true;
    }

    private OpenRunway runway(NamedCsvRecord record) throws ExchangeException {
        List<OpenRunway.OpenEnd> ends = new ArrayList<>();
        for (String side : SIDES) {
            String ident = text(record, side + "ident");
            if (!ident.isEmpty()) {
                ends.add(new OpenRunway.OpenEnd(ident, number(record, side + "heading_degT"), number(record, side + "latitude_deg"),
                        number(record, side + "longitude_deg"), number(record, side + "displaced_threshold_ft"),
                        number(record, side + "elevation_ft")));
            }
        }
        return new OpenRunway(text(record, "id"), number(record, "length_ft"), number(record, "width_ft"),
                Surfaces.word(text(record, "surface")), "1".equals(text(record, "closed")), ends);
    }

    private static String text(NamedCsvRecord record, String column) {
        return record.findField(column).orElse("").strip();
    }

    private OptionalDouble number(NamedCsvRecord record, String column) throws ExchangeException {
        String text = text(record, column);
        try {
            return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Decimals.parse(text));
        } catch (IllegalArgumentException e) {
            throw new ExchangeException(file, record.getStartingLineNumber(), Message.said("survey-file.column-number", column, text));
        }
    }
}
