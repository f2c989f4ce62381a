package slopewright.standards;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

import slopewright.messages.Message;
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
    public static final List<String> COLUMNS = List.of("rule_set", "key", "value", "unit", "provenance", "source",
            "rests_on_it", "results", "decision", "own_value", "reason", "document", "edition", "clause", "person", "date",
            "second_person", "second_date");

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

    /** What an entry still lacks before it counts. */
    public enum Lack {
        /** Nobody has decided. */
        DECISION,
        /** The number of the document, where it says otherwise; another one than that of the rule set. A table has none. */
        OWN_VALUE,
        /** Why it was corrected or rejected. */
        REASON,
        /** The document with which it was compared. */
        DOCUMENT,
        /** The edition of the document. */
        EDITION,
        /** Clause, table or figure in it. */
        CLAUSE,
        /** The name of who compared it. */
        PERSON,
        /** When: year, month, day. */
        DATE,
        /** The name of a second person. */
        SECOND_PERSON,
        /** When that person signed it off, not before it was compared. */
        SECOND_DATE;

        /** Returns the word by which catalogues name it. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
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
     * @param source       where the rule set has it from
     * @param restsOnIt    how many verdicts rested on it when the row was written
     * @param results      the rules that gave them, parted by blanks
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
    public record Entry(String ruleSet, String key, double value, String unit, String provenance, String source, int restsOnIt,
            String results, Decision decision, Optional<Double> ownValue, String reason, String document, String edition, String clause,
            String person, String date, String secondPerson, String secondDate) {

        private static final double SAME = 1e-9;

        /** Refuses missing parts. */
        public Entry {
            Objects.requireNonNull(decision);
            Objects.requireNonNull(ownValue);
        }

        /** Makes the row of a value that nobody has looked at. */
        public static Entry open(String ruleSet, String key, double value, String unit, String provenance, String source, int restsOnIt,
                String results) {
            return new Entry(ruleSet, key, value, unit, provenance, source, restsOnIt, results, Decision.OPEN, Optional.empty(), "", "",
                    "", "", "", "", "", "");
        }

        /** Returns the rule set and the key in one word, by which no two entries of a book are the same. */
        public String name() {
            return ruleSet + " " + key;
        }

        /** Returns the entry as somebody decided it; whoever signed off an earlier decision has not signed this one. */
        public Entry decided(Decision what, Optional<Double> own, String why, Compared with) {
            return new Entry(ruleSet, key, value, unit, provenance, source, restsOnIt, results, what,
                    what == Decision.CORRECTED ? own : Optional.empty(), why, with.document(), with.edition(), with.clause(),
                    with.person(), with.date(), "", "");
        }

        /** Returns the entry as nobody has looked at it. */
        public Entry undecided() {
            return open(ruleSet, key, value, unit, provenance, source, restsOnIt, results);
        }

        /** Returns the entry signed off by a second person. */
        public Entry signedOff(String by, String when) {
            return new Entry(ruleSet, key, value, unit, provenance, source, restsOnIt, results, decision, ownValue, reason, document,
                    edition, clause, person, date, by, when);
        }

        /**
         * Returns the row as it is now: what was decided stays as long as number and unit are the same; where it comes from and what rests
         * on it is that of now.
         */
        public Entry asNow(Entry now) {
            boolean same = value == now.value && unit.equals(now.unit);
            return !same ? now : new Entry(ruleSet, key, value, unit, now.provenance, now.source, now.restsOnIt, now.results, decision,
                    ownValue, reason, document, edition, clause, person, date, secondPerson, secondDate);
        }

        /** Returns whether a number is that of the value, within the last digit that a computer holds. */
        public boolean isValue(double number) {
            return Math.abs(number - value) <= SAME * Math.max(1, Math.abs(value));
        }

        /** Returns what it lacks of a decision, in the order in which one asks for it; without the second person. */
        public List<Lack> lacksToDecide() {
            List<Lack> lacks = new ArrayList<>();
            boolean corrected = decision == Decision.CORRECTED;
            add(lacks, decision != Decision.OPEN, Lack.DECISION);
            add(lacks, !corrected || !unit.isEmpty() && ownValue.filter(own -> Double.isFinite(own) && !isValue(own)).isPresent(),
                    Lack.OWN_VALUE);
            add(lacks, !corrected && decision != Decision.REJECTED || says(reason), Lack.REASON);
            add(lacks, says(document), Lack.DOCUMENT);
            add(lacks, !edition.isBlank(), Lack.EDITION);
            add(lacks, !clause.isBlank(), Lack.CLAUSE);
            add(lacks, SignedNames.isName(person), Lack.PERSON);
            add(lacks, day(date).isPresent(), Lack.DATE);
            return List.copyOf(lacks);
        }

        /** Returns what it lacks before it counts, in the order in which one asks for it. */
        public List<Lack> lacks() {
            List<Lack> lacks = new ArrayList<>(lacksToDecide());
            add(lacks, SignedNames.isName(secondPerson) && !SignedNames.isSame(person, secondPerson), Lack.SECOND_PERSON);
            Optional<LocalDate> second = day(secondDate);
            add(lacks, second.isPresent() && day(date).filter(first -> first.isAfter(second.get())).isEmpty(), Lack.SECOND_DATE);
            return List.copyOf(lacks);
        }

        private static void add(List<Lack> lacks, boolean given, Lack lack) {
            if (!given) {
                lacks.add(lack);
            }
        }

        /** A letter alone is a keystroke and no document and no reason. */
        private static boolean says(String text) {
            return text.strip().length() > 1;
        }

        private static Optional<LocalDate> day(String text) {
            try {
                return Optional.of(LocalDate.parse(text.strip()));
            } catch (DateTimeParseException e) {
                return Optional.empty();
            }
        }

        /** Returns whether it was decided, with document, edition, clause and the names and dates of two people. */
        public boolean isSigned() {
            return lacks().isEmpty();
        }
    }

    /**
     * What somebody held a value against.
     *
     * @param document the document
     * @param edition  its edition
     * @param clause   clause, table or figure in it
     * @param person   who
     * @param date     when, year, month, day
     */
    public record Compared(String document, String edition, String clause, String person, String date) {
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
            throw new StandardsException(file.toString(), 0, Message.said("rule-file.unread", e));
        }
        return new ValueBook(BookReader.read(file.toString(), new String(bytes, StandardCharsets.UTF_8)), hash(bytes));
    }

    /** Makes the book of some entries, with the hash that its file has once it is written. */
    public static ValueBook of(List<Entry> entries) {
        return new ValueBook(entries, hash(new ValueBook(entries, "").text().getBytes(StandardCharsets.UTF_8)));
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
                entry.source(), String.valueOf(entry.restsOnIt()), entry.results(), entry.decision().key(),
                entry.ownValue().map(ValueBook::plain).orElse("-"), entry.reason(), entry.document(), entry.edition(), entry.clause(),
                entry.person(), entry.date(), entry.secondPerson(), entry.secondDate()).stream().map(ValueBook::quoted)
                .collect(Collectors.joining(",")) + "\n";
    }

    private static String plain(double value) {
        return new java.math.BigDecimal(String.valueOf(value)).stripTrailingZeros().toPlainString();
    }

    private static String quoted(String cell) {
        String line = cell.replaceAll("[\\p{Cntrl}]+", " ");
        return line.contains(",") || line.contains("\"") ? '"' + line.replace("\"", "\"\"") + '"' : line;
    }
}
