package slopewright.standards;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

import slopewright.standards.internal.BookReader;

/**
 * An organisation's book of values: what it compared with its own copies of the documents, once for all its projects. A text file of rows
 * separated by commas, so that it is kept, compared and signed like any other document.
 *
 * @param entries one for each value of a rule set, in the order of the file
 * @param sha256  hash of the bytes of the file, lower-case hexadecimal digits; empty for one that was not read from a file
 */
public record ValueBook(List<Entry> entries, String sha256) {
    /** The columns of the file. */
    public static final List<String> COLUMNS = List.of("rule_set", "key", "value", "unit", "provenance", "rests_on_it", "decision",
            "own_value", "reason", "document", "edition", "clause", "person", "date", "second_person", "second_date");

    /** What was decided about a value. */
    public enum Decision {
        /** Nobody has looked yet. */
        OPEN,
        /** The document says so. */
        CONFIRMED,
        /** The document says otherwise. */
        CORRECTED,
        /** The value is not to be used. */
        REJECTED;

        /** Returns the word in the file. */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * One value.
     *
     * @param ruleSet      key and edition of the rule set, joined by a colon
     * @param key          key of the value or table
     * @param value        the number of the rule set, or the control total of the table, when the row was written
     * @param unit         its unit; empty for a table
     * @param provenance   how well the rule set knows it
     * @param restsOnIt    how many verdicts rested on it when the row was written
     * @param decision     what was decided
     * @param ownValue     the number of the document where it says otherwise
     * @param reason       why it was corrected or rejected
     * @param document     the document that it was compared with
     * @param edition      its edition
     * @param clause       clause, table or figure in it
     * @param person       who compared it
     * @param date         when
     * @param secondPerson who signed it off
     * @param secondDate   when
     */
    public record Entry(String ruleSet, String key, double value, String unit, String provenance, int restsOnIt, Decision decision,
            Optional<Double> ownValue, String reason, String document, String edition, String clause, String person, String date,
            String secondPerson, String secondDate) {

        /** Refuses missing parts. */
        public Entry {
            Objects.requireNonNull(decision);
            Objects.requireNonNull(ownValue);
        }

        /** Makes the row of a value that nobody has looked at. */
        public static Entry open(String ruleSet, String key, double value, String unit, String provenance, int restsOnIt) {
            return new Entry(ruleSet, key, value, unit, provenance, restsOnIt, Decision.OPEN, Optional.empty(), "", "", "", "", "", "", "",
                    "");
        }

        /** Returns whether it was decided, with document, edition, clause and the names and dates of two people. */
        public boolean isSigned() {
            return decision != Decision.OPEN && List.of(document, edition, clause, person, date, secondPerson, secondDate).stream()
                    .noneMatch(String::isBlank) && !person.equals(secondPerson);
        }
    }

    /** Copies the list. */
    public ValueBook {
        entries = List.copyOf(entries);
        Objects.requireNonNull(sha256);
    }

    /**
     * Reads a book.
     *
     * @param file the file
     * @return the book
     * @throws StandardsException where it cannot be read or a row is wrong; the message names file, line and reason
     */
    public static ValueBook read(Path file) {
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file);
        } catch (IOException e) {
            throw new StandardsException(file.toString(), 0, "cannot be read: " + e.getMessage());
        }
        return new ValueBook(BookReader.read(file.toString(), new String(bytes, StandardCharsets.UTF_8)), hash(bytes));
    }

    /** Returns the hash of some bytes, lower-case hexadecimal digits. */
    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Returns the signed entry of a value of a rule set whose number is that of the entry, empty where there is none. */
    public Optional<Entry> signed(RuleSet rules, String key) {
        String name = rules.key() + ":" + rules.edition();
        return entries.stream().filter(entry -> entry.ruleSet().equals(name) && entry.key().equals(key) && entry.isSigned()
                && rules.confirmable(key).orElse(Double.NaN) == entry.value()).findFirst();
    }

    /** Returns the text of the file. */
    public String text() {
        return String.join(",", COLUMNS) + "\n" + entries.stream().map(ValueBook::row).collect(Collectors.joining());
    }

    private static String row(Entry entry) {
        return List.of(entry.ruleSet(), entry.key(), plain(entry.value()), entry.unit().isEmpty() ? "-" : entry.unit(), entry.provenance(),
                String.valueOf(entry.restsOnIt()), entry.decision().key(), entry.ownValue().map(ValueBook::plain).orElse("-"),
                entry.reason(), entry.document(), entry.edition(), entry.clause(), entry.person(), entry.date(), entry.secondPerson(),
                entry.secondDate()).stream().map(ValueBook::quoted).collect(Collectors.joining(",")) + "\n";
    }

    private static String plain(double value) {
        return new java.math.BigDecimal(String.valueOf(value)).stripTrailingZeros().toPlainString();
    }

    private static String quoted(String cell) {
        String line = cell.replaceAll("[\\p{Cntrl}]+", " ");
        return line.contains(",") || line.contains("\"") ? '"' + line.replace("\"", "\"\"") + '"' : line;
    }
}
