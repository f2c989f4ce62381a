package slopewright.exchange.internal.survey;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/** Comma-separated values with a header, see {@link TableRows}. */
public final class CsvSurvey implements SurveyFormat {

    @Override
    public String name() {
        return "CSV with a header";
    }

    @Override
    public List<String> endings() {
        return List.of("csv");
    }

    @Override
    public void read(SurveyInput input) throws IOException, ExchangeException {
        TableRows rows = new TableRows(input);
        if (input.wantsColumns()) {
            Optional<List<String>> header = PlainPointRows.read(input);
            if (header.isPresent()) {
                rows.take(header.get(), 1);
                rows.end();
                return;
            }
        }
        try (Reader text = input.openTable();
                CsvReader<CsvRecord> records = CsvReader.builder().fieldSeparator(input.separator())
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE).extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .allowUnclosedQuote(false).ofCsvRecord(text)) {
            for (CsvRecord row : records) {
                rows.take(row.getFields(), row.getStartingLineNumber());
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } catch (CsvParseException e) {
            throw input.fault(0, e.getCause() == null ? Reasoned.of(e) : Message.said("survey-file.of-column", e, e.getCause()));
        }
        rows.end();
    }
}
