package slopewright.headless.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import slopewright.checks.MeasureText;
import slopewright.checks.Outcome;
import slopewright.checks.Stages;
import slopewright.checks.Verdict;
import slopewright.evaluation.MadeFrom;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetCell;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;

/** Writes the outcomes of a check for people: as text, and as a table. */
final class CheckText {

    private static final List<String> COLUMNS = List.of("file", "rule", "element", "verdict", "outcome", "severity", "value", "limit",
            "margin", "unit", "missing", "citation", "provenance", "toConfirm", "explanation");
    private static final int DECIMALS = 4;

    private final MessageRenderer words;
    private final Streams streams;

    CheckText(Locale language, Streams streams) {
        words = MessageRenderer.of(language);
        this.streams = streams;
    }

    /** Prints comma-separated values: words for programs and numbers as everywhere, sentences in the language. */
    void csv(List<CheckedFile> checked) {
        List<List<SheetCell>> rows = new ArrayList<>();
        for (CheckedFile file : checked) {
            List<SheetCell> made = file.madeFrom().facts().values().stream().map(SheetCell::text).toList();
            file.result().outcomes().forEach(outcome -> rows.add(Stream.concat(row(file, outcome).stream(), made.stream()).toList()));
        }
        List<String> columns = new ArrayList<>(COLUMNS);
        columns.addAll(MadeFrom.NAMES);
        streams.print(new Sheet("Check", columns, rows, List.of()));
    }

    private List<SheetCell> row(CheckedFile file, Outcome outcome) {
        List<SheetCell> cells = new ArrayList<>();
        List.of(file.file().toString(), outcome.rule(), String.valueOf(outcome.elementId()), outcome.verdict().key(),
                outcome.result().name(), outcome.severity().key()).forEach(text -> cells.add(SheetCell.text(text)));
        List.of(outcome.value(), outcome.limit(), outcome.margin()).forEach(number -> cells.add(cell(number)));
        List.of(outcome.unit(), String.join("; ", outcome.missing().stream().map(words::render).toList()),
                outcome.citation().map(citation -> words.write(citation.text())).orElse(""),
                outcome.citation().map(citation -> citation.provenance().key()).orElse(""), String.valueOf(outcome.toConfirm()),
                words.render(outcome.explanation())).forEach(text -> cells.add(SheetCell.text(text)));
        return cells;
    }

    private static SheetCell cell(OptionalDouble number) {
        return SheetCell.number(number.isPresent() ? number.getAsDouble() : null, DECIMALS, "");
    }

    /** Prints one project: what is found, or all of it, and how many outcomes there are of each verdict. */
    void print(CheckedFile checked, boolean all) {
        say("", "check.head", checked.file().toString(), checked.name(), words.write(checked.result().rules().descriptor().title()),
                checked.result().rules().edition());
        for (Outcome outcome : all ? checked.result().outcomes() : checked.result().findings()) {
            print(outcome);
        }
        long toConfirm = checked.result().outcomes().stream()
                .filter(outcome -> outcome.verdict() == Verdict.TO_CLEAR_UP && outcome.toConfirm()).count();
        streams.say(words.render(Message.of("check.counts", count(checked, Verdict.NOT_MET), count(checked, Verdict.TO_CLEAR_UP),
                Words.count(toConfirm), count(checked, Verdict.MET), count(checked, Verdict.NOT_APPLICABLE),
                Words.count(checked.result().notAtThisStage()), Stages.term(checked.result().stage()))));
    }

    private static Argument count(CheckedFile checked, Verdict verdict) {
        return Words.count(checked.result().counts().get(verdict));
    }

    private void print(Outcome outcome) {
        String weight = outcome.weight().map(severity -> words.write(Words.term("severity." + severity.key()))).orElse("");
        streams.sayf("  %-14s %-8s %-8s %s", words.write(outcome.verdict().term()), weight, outcome.rule(),
                words.write(outcome.elementPath()));
        streams.say("      " + words.render(outcome.explanation()));
        outcome.measure().map(measure -> MeasureText.of(measure, words)).ifPresent(text -> say("      ", "check.value", text.value(),
                text.limit(), text.margin()));
        if (!outcome.missing().isEmpty()) {
            streams.say("      " + words.render(Message.of("check.missing", Words.list(outcome.missing()))));
        }
        outcome.citation().ifPresent(citation -> say("      ", outcome.toConfirm() ? "check.source-to-confirm" : "check.source",
                words.write(citation.text()), words.write(Words.term("provenance." + citation.provenance().key()))));
    }

    private void say(String indent, String key, String... texts) {
        streams.say(indent + words.render(new Message(key, Arrays.stream(texts).map(Words::name).toList())));
    }
}
