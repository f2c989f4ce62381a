package slopewright.checks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import slopewright.standards.Provenance;
import slopewright.standards.ValueBook;

/** How an organisation's book of values is kept: what verdicts rest on meets what the book says, for every door alike. */
public final class BookKeeping {
    /**
     * A value with what the book says of it.
     *
     * @param entry    the row of the book, or that which it will be
     * @param resting  the value and the verdicts that rest on it; empty for one that is only in the book
     * @param isInBook whether the book has it
     */
    public record Row(ValueBook.Entry entry, Optional<RestingValues.Resting> resting, boolean isInBook) {
    }

    private BookKeeping() {
    }

    /**
     * Brings together what verdicts rest on and what a book says.
     *
     * @param values the values that verdicts rest on, those that most rests on first
     * @param book   the book, empty where none is begun
     * @return the values in their order, each as the book has it as long as its number is the same, then what is only in the book
     */
    public static List<Row> rows(List<RestingValues.Resting> values, Optional<ValueBook> book) {
        Map<String, ValueBook.Entry> known = new LinkedHashMap<>();
        book.ifPresent(found -> found.entries().forEach(entry -> known.put(entry.name(), entry)));
        List<Row> rows = new ArrayList<>();
        Set<String> listed = new HashSet<>();
        for (RestingValues.Resting value : values) {
            ValueBook.Entry now = entry(value);
            Optional<ValueBook.Entry> old = Optional.ofNullable(known.get(now.name()));
            listed.add(now.name());
            rows.add(new Row(old.map(entry -> entry.asNow(now)).orElse(now), Optional.of(value), old.isPresent()));
        }
        known.values().stream().filter(entry -> !listed.contains(entry.name()))
                .forEach(entry -> rows.add(new Row(entry, Optional.empty(), true)));
        return List.copyOf(rows);
    }

    /** Returns the row of a value at which nobody has looked. */
    public static ValueBook.Entry entry(RestingValues.Resting value) {
        return ValueBook.Entry.open(value.ruleSet(), value.key(), value.value(), value.unit(), value.citation().provenance().key(),
                value.citation().text().english(), value.restsOnIt(), rules(value));
    }

    private static String rules(RestingValues.Resting value) {
        return value.outcomes().stream().map(Outcome::rule).distinct().sorted().collect(Collectors.joining(" "));
    }

    /** Returns the book of some rows, with the hash that its file has once it is written. */
    public static ValueBook book(List<Row> rows) {
        return ValueBook.of(rows.stream().map(Row::entry).toList());
    }

    /** Returns the names of the values of some rows on which verdicts rest. */
    public static Set<String> resting(List<Row> rows) {
        return rows.stream().filter(row -> row.resting().isPresent()).map(row -> row.entry().name()).collect(Collectors.toSet());
    }

    /** Returns whether a verdict that rests on a value is to clear up until somebody confirms it. */
    public static boolean isToConfirm(ValueBook.Entry entry) {
        try {
            return Provenance.of(entry.provenance()).needsConfirmation();
        } catch (IllegalArgumentException e) {
            return true;
        }
    }
}
