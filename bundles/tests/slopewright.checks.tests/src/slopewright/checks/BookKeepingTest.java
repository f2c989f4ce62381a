package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import slopewright.evaluation.BookUse;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.standards.ValueBook;
import slopewright.standards.ValueBook.Compared;
import slopewright.standards.ValueBook.Decision;
import slopewright.testkit.DemoProjects;

/** From what verdicts rest on to the book, and from the book to what they rest on then. Every name is invented. */
class BookKeepingTest {
    /** Annex 14 Vol I, 9th ed., Fig 5-20 A: 30' for the outer units. */
    private static final String OUTER = "icao:9th four-unit-row.outer-offset-min";
    private static final Compared WITH = new Compared("our copy", "9th", "Fig 5-20", "A. Ames", "2026-05-01");

    private Project project;

    @BeforeEach
    void load() throws Exception {
        project = DemoProjects.load("harrow-vale");
    }

    private ProjectEvaluation evaluation() {
        return ProjectEvaluation.of(project, Optional.empty());
    }

    private List<BookKeeping.Row> rows(Optional<ValueBook> book) {
        return BookKeeping.rows(RestingValues.of(List.of(evaluation())), book);
    }

    private static ValueBook.Entry entry(List<BookKeeping.Row> rows, String name) {
        return rows.stream().map(BookKeeping.Row::entry).filter(entry -> entry.name().equals(name)).findFirst().orElseThrow();
    }

    private ValueBook decided(Decision decision, Double own) {
        List<BookKeeping.Row> rows = rows(Optional.empty());
        return ValueBook.of(rows.stream().map(BookKeeping.Row::entry).map(entry -> entry.name().equals(OUTER)
                ? entry.decided(decision, Optional.ofNullable(own), "printed so in our copy", WITH).signedOff("B. Bole", "2026-05-02")
                : entry).toList());
    }

    @Test
    void everyValueThatResultsRestOnIsListedByWeight() {
        List<BookKeeping.Row> rows = rows(Optional.empty());
        ValueBook.Entry outer = entry(rows, OUTER);
        assertEquals(30, outer.value());
        assertEquals("min", outer.unit());
        assertTrue(outer.source().contains("Fig 5-20 A"), outer.source());
        assertTrue(List.of(outer.results().split(" ")).contains("ROW-07"), outer.results());
        assertEquals(outer.restsOnIt(), rows.stream().filter(row -> row.entry() == outer).findFirst().orElseThrow().resting()
                .orElseThrow().outcomes().size());
        for (int i = 1; i < rows.size(); i++) {
            assertTrue(rows.get(i - 1).entry().restsOnIt() >= rows.get(i).entry().restsOnIt());
        }
        assertTrue(rows.stream().anyMatch(row -> !BookKeeping.isToConfirm(row.entry())), "published ones as well");
        assertEquals(ValueBook.Lack.DECISION, outer.lacks().get(0));
    }

    @Test
    void aConfirmedEntrySettlesWhatRestsOnIt() {
        project.getConfirmations().clear();
        ValueBook.Entry open = rows(Optional.empty()).stream().map(BookKeeping.Row::entry).filter(BookKeeping::isToConfirm).findFirst()
                .orElseThrow();
        ValueBook book = ValueBook.of(List.of(open.decided(Decision.CONFIRMED, Optional.empty(), "", WITH)));
        assertEquals(0, BookUse.take(project, book, "book.csv", BookKeeping.resting(rows(Optional.empty()))), "not signed off");
        ValueBook signed = ValueBook.of(List.of(book.entries().get(0).signedOff("B. Bole", "2026-05-02")));
        assertEquals(1, BookUse.take(project, signed, "book.csv", BookKeeping.resting(rows(Optional.empty()))));
        assertTrue(Checks.run(evaluation(), rule -> true).outcomes().stream().flatMap(outcome -> outcome.citations().stream())
                .filter(citation -> citation.key().equals(open.key()) && citation.confirmation().contains("A. Ames")).count() > 0);
        assertEquals(signed.sha256(), project.getBookSha256());
        assertEquals("B. Bole", project.getConfirmations().get(0).getSecondPerson());
    }

    /** However well a value is known: what rests on one that was rejected is to clear up, and says why. */
    @Test
    void aRejectedEntryMakesWhatRestsOnItToClearUp() {
        assertEquals(0, Checks.run(evaluation(), rule -> true).counts().get(Verdict.TO_CLEAR_UP));
        BookUse.take(project, decided(Decision.REJECTED, null), "book.csv", BookKeeping.resting(rows(Optional.empty())));
        List<Outcome> open = Checks.run(evaluation(), rule -> true).outcomes().stream().filter(Outcome::toConfirm).toList();
        assertFalse(open.isEmpty());
        assertTrue(open.stream().allMatch(outcome -> outcome.verdict() == Verdict.TO_CLEAR_UP));
        assertTrue(open.get(0).citations().stream().anyMatch(citation -> citation.note().english().contains("printed so in our copy")));
    }

    /** The rule judges by the number of the document, and the book keeps what the rule set has, with the decision. */
    @Test
    void aCorrectedEntryIsTheNumberByWhichIsJudged() {
        ValueBook book = decided(Decision.CORRECTED, 25.0);
        BookUse.take(project, book, "book.csv", BookKeeping.resting(rows(Optional.empty())));
        assertTrue(Checks.run(evaluation(), rule -> rule.id().equals("ROW-07")).outcomes().stream()
                .anyMatch(outcome -> outcome.verdict() == Verdict.NOT_MET), "the units stand at 30 minutes");
        ValueBook.Entry again = entry(rows(Optional.of(book)), OUTER);
        assertEquals(30, again.value());
        assertTrue(again.isSigned());
        BookUse.take(project, book, "book.csv", BookKeeping.resting(rows(Optional.of(book))));
        assertEquals(1, project.getOverrides().stream().filter(override -> override.getValueKey().equals(
                "four-unit-row.outer-offset-min")).count(), "taken twice, kept once");
    }
}
