package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.evaluation.BookUse;
import slopewright.evaluation.KeptForTheRecord;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.model.ProfilePoint;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.ElementNames;
import slopewright.siting.Siting;
import slopewright.siting.ValueNames;
import slopewright.standards.Citation;

/** Where every number comes from, what is to be confirmed, and what the project overrides or confirms. */
final class SourceChapter {

    private final Html html;
    private final ReportWords words;
    private final ReportSource source;

    SourceChapter(Html html, ReportSource source) {
        this.html = html;
        this.source = source;
        words = html.words();
    }

    /** What is to be confirmed and what the project overrides: it always stands in the report itself. */
    void write() {
        toConfirm();
        overrides();
    }

    /** What was confirmed, what is kept for the record, and every value with its source: for those who look it up. */
    void annex(Documents documents) {
        Map<String, Siting.CitedUse> used = source.used();
        confirmations();
        html.section("values").table("fine", List.of(33, 9, 17, 41), "value", "number", "source", "known-as");
        used.values().forEach(use -> html.row(List.of(name(use.name()), number(use),
                documents.brief(use.citation(), words), remarked(known(use.citation()), use.citation()))));
        html.endTable();
        record();
    }

    private String remarked(String known, Citation citation) {
        return citation.note().isBlank() ? known : known + "; " + words.write(citation.note());
    }

    private String name(String valueKey) {
        return words.render(Message.of("plain", ValueNames.of(valueKey)));
    }

    /** The number with its unit; of a choice its word. */
    private String number(Siting.CitedUse use) {
        return switch (use.unit()) {
            case "choice", "flag" -> words.write(ValueNames.number(use.name(), use.value(), use.unit()));
            case "m" -> words.length(use.value());
            default -> words.plain(use.value()) + ReportWords.unit(use.unit());
        };
    }

    private String known(Citation citation) {
        String state = citation.toConfirm() ? words.term("to-be-confirmed") : citation.confirmation().isEmpty() ? ""
                : words.term("confirmed");
        return words.provenance(citation) + (state.isEmpty() ? "" : ", " + state);
    }

    private void toConfirm() {
        Collection<Citation> open = source.toConfirm();
        html.section("to-confirm");
        if (open.isEmpty()) {
            html.paragraph("nothing-to-confirm");
            return;
        }
        html.paragraph("to-confirm-intro").table("fine", List.of(36, 39, 25), "value-or-table", "said-to-be-in", "known-as");
        open.forEach(citation -> html.row(List.of(name(citation.key()), words.write(citation.text()),
                remarked(words.provenance(citation), citation))));
        html.endTable();
    }

    private void overrides() {
        html.section("overrides");
        if (source.project().getOverrides().isEmpty()) {
            html.paragraph("none");
            return;
        }
        html.table("fine", List.of(28, 10, 34, 16, 12), "value", "number", "reason", "person", "date");
        for (ValueOverride override : source.project().getOverrides()) {
            html.row(List.of(name(String.valueOf(override.getValueKey())) + (override.getRuleSetKey() == null ? "" : " ("
                    + override.getRuleSetKey() + ")"), words.orUnknown(override.getValue()),
                    words.orUnknown(override.getReason()), words.orUnknown(override.getPerson()), words.orUnknown(override.getDate())));
        }
        html.endTable();
    }

    private void confirmations() {
        html.section("confirmations");
        if (source.project().getConfirmations().isEmpty()) {
            html.paragraph("none");
            return;
        }
        Map<String, List<ValueConfirmation>> alike = source.project().getConfirmations().stream().collect(Collectors.groupingBy(
                this::said, LinkedHashMap::new, Collectors.toList()));
        alike.forEach((said, of) -> {
            html.element("p", said).table("fine", List.of(40, 10, 40, 10), "value", "number", "value", "number");
            List<List<String>> cells = of.stream().map(this::confirmed).toList();
            int half = (cells.size() + 1) / 2;
            for (int i = 0; i < half; i++) {
                html.row(Stream.concat(cells.get(i).stream(), (i + half < cells.size() ? cells.get(i + half) : List.of("", "")).stream())
                        .toList());
            }
            html.endTable();
        });
        if (BookUse.state(source.project()) != BookUse.State.NONE) {
            html.paragraph("book", Words.name(source.project().getBookPath()), Words.name(String.valueOf(source.project()
                    .getBookSha256())));
        }
    }

    /** Against what, by whom and when, and whether it was rejected: the same for many. */
    private String said(ValueConfirmation said) {
        boolean rejected = Boolean.TRUE.equals(said.getRejected());
        return words.say(rejected ? "rejected-against" : "confirmed-against", Words.name(joined(said.getSource(), said.getEdition(),
                rejected ? said.getReason() : null)), Words.name(joined(said.getPerson(), said.getDate())), Words.name(orNobody(joined(
                        said.getSecondPerson(), said.getSecondDate()))), Words.name(words.orUnknown(said.getRuleSetKey())));
    }

    private String orNobody(String signed) {
        return signed.isEmpty() ? words.term("nobody") : signed;
    }

    private List<String> confirmed(ValueConfirmation said) {
        String number = said.getValue() == null ? words.term("not-known") : words.render(Message.of("plain", ValueNames.number(String
                .valueOf(said.getValueKey()), said.getValue(), said.getUnit() == null ? "" : said.getUnit())));
        return List.of(joined(name(String.valueOf(said.getValueKey())), said.getClause()), number);
    }

    private static String joined(String... parts) {
        return Stream.of(parts).filter(part -> part != null && !part.isBlank()).collect(Collectors.joining(", "));
    }

    /** What the project holds that no result rests on. */
    private void record() {
        html.section("record").paragraph("record-intro");
        List<String> entries = new ArrayList<>();
        KeptForTheRecord.entries(source.evaluation()).forEach((feature, count) -> entries.add(words.say("matrix-counted", Words.name(
                words.term("record." + feature)), Words.count(count))));
        html.element("p", String.join("; ", entries));
        List<Identified> elements = KeptForTheRecord.elements(source.evaluation());
        if (!elements.isEmpty()) {
            html.paragraph("record-elements", Words.list(elements.stream().map(SourceChapter::name).toList()));
        }
    }

    private static Argument name(Identified element) {
        return element instanceof ProfilePoint point && point.getChainageM() != null ? Message.of("report.record-point",
                Words.m(point.getChainageM()), ElementNames.of((Identified) point.eContainer())) : ElementNames.of(element);
    }
}
