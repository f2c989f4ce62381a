package slopewright.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import slopewright.standards.ValueBook;

/** Cases of the rule about the book of values; the book is invented. */
final class BookCases {
    private BookCases() {
    }

    static List<RuleCase> all() {
        return List.of(RuleCase.of("DATA-30", null, "no book", Bases::row, Sample::unchanged),
                RuleCase.of("DATA-30", Result.PASS, "the book is as it was", Bases::row, sample -> named(sample, false)),
                RuleCase.of("DATA-30", Result.NOT_EVALUATED, "the book has changed", Bases::row, sample -> named(sample, true)),
                RuleCase.of("DATA-30", Result.NOT_EVALUATED, "the book is no book any more", Bases::row, BookCases::damaged),
                RuleCase.of("DATA-30", Result.NOT_APPLICABLE, "the book is not at hand", Bases::row, sample -> {
                    sample.project().setBookPath("not-there.csv");
                    sample.project().setBookSha256("0".repeat(64));
                }));
    }

    private static void damaged(Sample sample) {
        named(sample, false);
        try {
            Files.writeString(Path.of(sample.project().getBookPath()), "a letter\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void named(Sample sample, boolean changed) {
        try {
            Path file = Files.createTempFile("book", ".csv");
            file.toFile().deleteOnExit();
            ValueBook.Entry entry = ValueBook.Entry.open("icao:9th", "four-unit-row.boundary-allowance-min", 2, "min", "from-memory",
                    "Doc 9157 Part 4", 1, "ROW-01");
            Files.writeString(file, new ValueBook(List.of(entry), "").text());
            sample.project().setBookPath(file.toString());
            sample.project().setBookSha256(Optional.of(ValueBook.read(file)).map(ValueBook::sha256).orElseThrow());
            if (changed) {
                Files.writeString(file, Files.readString(file) + "## looked at again\n");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
