package slopewright.ui.review.internal.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.BookKeeping;
import slopewright.checks.Outcome;
import slopewright.checks.RestingValues;
import slopewright.siting.ValueNames;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSets;
import slopewright.standards.ValueBook;
import slopewright.standards.ValueBook.Decision;
import slopewright.standards.ValueBook.Lack;
import slopewright.ui.MessageTexts;
import slopewright.ui.properties.OutcomeTexts;
import slopewright.ui.review.internal.Messages;

/** What is said of an entry of the book. */
public final class BookTexts {
    private BookTexts() {
    }

    static String name(ValueBook.Entry entry) {
        return MessageTexts.of(ValueNames.of(entry.key()));
    }

    static String number(ValueBook.Entry entry) {
        return MessageTexts.of(ValueNames.number(entry.key(), entry.value(), entry.unit()));
    }

    static String ownNumber(ValueBook.Entry entry) {
        return entry.ownValue().map(own -> MessageTexts.of(ValueNames.number(entry.key(), own, entry.unit()))).orElse("");
    }

    static String provenance(ValueBook.Entry entry) {
        return Stream.of(Provenance.values()).filter(known -> known.key().equals(entry.provenance())).findFirst()
                .map(OutcomeTexts::provenance).orElse(entry.provenance());
    }

    /** What was decided, and whether it counts. */
    static String decision(ValueBook.Entry entry) {
        String said = Messages.get("book.decision." + entry.decision().key(), ownNumber(entry));
        return entry.decision() == Decision.OPEN || entry.isSigned() ? said : said + ", " + lacks(entry.lacks());
    }

    static String lacks(List<Lack> lacks) {
        return Messages.get("book.lacks", names(lacks));
    }

    static String names(List<Lack> lacks) {
        return lacks.stream().map(lack -> Messages.get("book.lack." + lack.key())).collect(Collectors.joining(", "));
    }

    static String compared(ValueBook.Entry entry) {
        return joined(entry.document(), entry.edition(), entry.clause());
    }

    /** Where a value comes from, in the language of the window; the book itself is in English. */
    static String source(BookKeeping.Row row) {
        return row.resting().map(resting -> MessageTexts.of(resting.citation().text())).orElseGet(() -> source(row.entry()));
    }

    /** Where the value of an entry comes from, in the language of the window where its rule set is known. */
    static String source(ValueBook.Entry entry) {
        return RuleSets.find(entry.ruleSet()).stream().flatMap(rules -> Stream.concat(rules.values().stream().map(CitedValue::citation),
                rules.tableCitations().stream())).map(Citation::text).filter(text -> text.english().equals(entry.source())).findFirst()
                .map(MessageTexts::of).orElse(entry.source());
    }

    static String people(ValueBook.Entry entry) {
        return Stream.of(joined(entry.person(), entry.date()), joined(entry.secondPerson(), entry.secondDate()))
                .filter(part -> !part.isEmpty()).collect(Collectors.joining("; "));
    }

    private static String joined(String... parts) {
        return Stream.of(parts).filter(part -> !part.isBlank()).collect(Collectors.joining(", "));
    }

    /** What the project itself says of a value, and counts. */
    private static Optional<String> inProject(RestingValues.Resting resting) {
        return resting.outcomes().stream().flatMap(outcome -> outcome.citations().stream())
                .filter(citation -> citation.key().equals(resting.key())).findFirst()
                .map(citation -> citation.provenance() == Provenance.REJECTED ? MessageTexts.of(citation.note()) : citation.confirmation())
                .filter(said -> !said.isBlank());
    }

    /** Everything that is known of a value, and the results that rest on it. */
    public static String details(BookKeeping.Row row) {
        ValueBook.Entry entry = row.entry();
        List<String> lines = new ArrayList<>(List.of(name(entry) + ": " + number(entry), entry.ruleSet() + "  " + entry.key(),
                Messages.get("book.column.source") + ": " + source(row), Messages.get("book.column.provenance") + ": "
                        + provenance(entry)));
        row.resting().map(resting -> MessageTexts.of(resting.citation().note())).filter(note -> !note.isBlank()).ifPresent(lines::add);
        lines.add(Messages.get("book.column.decision") + ": " + decision(entry));
        Stream.of(compared(entry), people(entry), entry.reason()).filter(text -> !text.isBlank()).forEach(lines::add);
        row.resting().flatMap(BookTexts::inProject).map(said -> Messages.get("book.inProject", said)).ifPresent(lines::add);
        lines.add("");
        List<Outcome> outcomes = row.resting().map(resting -> resting.outcomes()).orElse(List.of());
        lines.add(Messages.get("book.rest", outcomes.size()));
        outcomes.stream().sorted(OutcomeTexts.worstFirst()).forEach(outcome -> lines.add("  " + outcome.rule() + " "
                + MessageTexts.of(outcome.title()) + ", " + MessageTexts.of(outcome.elementPath()) + ": " + OutcomeTexts.verdict(outcome)));
        return String.join("\n", lines);
    }
}
