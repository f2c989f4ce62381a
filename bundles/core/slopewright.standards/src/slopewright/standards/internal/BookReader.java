package slopewright.standards.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import slopewright.standards.StandardsException;
import slopewright.standards.ValueBook;

/** Reads the rows of a book of values, strictly. */
public final class BookReader {
    private BookReader() {
    }

    /**
     * Reads the rows.
     *
     * @param file name of the file, for complaints
     * @param text its text
     * @throws StandardsException where a row is wrong; the message names file, line and reason
     */
    public static List<ValueBook.Entry> read(String file, String text) {
        List<ValueBook.Entry> entries = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (HeadedCsv.Row row : HeadedCsv.read(file, text, ValueBook.COLUMNS).rows()) {
            ValueBook.Decision decision = decision(row);
            Optional<Double> own = row.isBlank("own_value") ? Optional.empty() : Optional.of(row.number("own_value"));
            if (decision == ValueBook.Decision.CORRECTED && own.isEmpty()) {
                throw row.fault("corrected");
            }
            if (decision == ValueBook.Decision.CORRECTED && row.isBlank("unit")) {
                throw row.fault("corrected-table");
            }
            boolean explained = decision == ValueBook.Decision.OPEN || decision == ValueBook.Decision.CONFIRMED
                    || !row.text("reason").isBlank();
            if (!explained) {
                throw row.fault("unexplained", decision.key());
            }
            if (!seen.add(row.text("rule_set") + " " + row.text("key"))) {
                throw row.fault("twice-in", row.text("key"), row.text("rule_set"));
            }
            entries.add(new ValueBook.Entry(row.text("rule_set"), row.text("key"), row.number("value"),
                    row.isBlank("unit") ? "" : row.text("unit"), row.text("provenance"), row.text("source"),
                    (int) row.number("rests_on_it"), row.text("results"), decision, own, row.text("reason"), row.text("document"),
                    row.text("edition"), row.text("clause"), row.text("person"), row.text("date"), row.text("second_person"),
                    row.text("second_date")));
        }
        return entries;
    }

    private static ValueBook.Decision decision(HeadedCsv.Row row) {
        for (ValueBook.Decision decision : ValueBook.Decision.values()) {
            if (decision.key().equals(row.text("decision"))) {
                return decision;
            }
        }
        throw row.fault("decision", row.text("decision"));
    }
}
