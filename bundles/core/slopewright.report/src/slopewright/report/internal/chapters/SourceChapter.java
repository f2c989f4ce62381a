package slopewright.report.internal.chapters;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
import slopewright.standards.Source;

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

    void write() {
        Map<String, Siting.CitedUse> used = source.used();
        toConfirm();
        overrides();
        confirmations();
        record();
        html.section("values").table("fine", List.of(30, 9, 6, 27, 13, 15), "value", "number", "unit", "source", "known-as", "remark");
        used.values().forEach(use -> html.row(List.of(use.name(), words.plain(use.value()), ReportWords.unit(use.unit()).strip(),
                use.citation().text(), known(use.citation()), use.citation().note())));
        html.endTable();
        documents(used.values());
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
        html.paragraph("to-confirm-intro").table("fine", List.of(34, 36, 14, 16), "value-or-table", "said-to-be-in", "known-as", "remark");
        open.forEach(citation -> html.row(List.of(citation.key(), citation.text(), words.provenance(citation), citation.note())));
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
            html.row(List.of(key(override.getValueKey(), override.getRuleSetKey()), words.orUnknown(override.getValue()),
                    words.orUnknown(override.getReason()), words.orUnknown(override.getPerson()), words.orUnknown(override.getDate())));
        }
        html.endTable();
    }

    private String key(String value, String ruleSet) {
        return words.orUnknown(value) + (ruleSet == null ? "" : " (" + ruleSet + ")");
    }

    private void confirmations() {
        html.section("confirmations");
        if (source.project().getConfirmations().isEmpty()) {
            html.paragraph("none");
            return;
        }
        html.table("fine", List.of(32, 12, 28, 14, 14), "value", "number", "against", "person", "signed-off");
        for (ValueConfirmation said : source.project().getConfirmations()) {
            boolean rejected = Boolean.TRUE.equals(said.getRejected());
            String number = said.getValue() == null ? words.term("not-known") : words.render(Message.of("plain", ValueNames.number(String
                    .valueOf(said.getValueKey()), said.getValue(), said.getUnit() == null ? "" : said.getUnit())));
            html.row(List.of(words.render(Message.of("plain", ValueNames.of(String.valueOf(said.getValueKey())))) + ": "
                    + key(said.getValueKey(), said.getRuleSetKey()), rejected ? number + ", " + words.term("provenance.rejected") : number,
                    joined(said.getSource(), said.getEdition(), said.getClause(), rejected ? said.getReason() : null),
                    joined(said.getPerson(), said.getDate()), joined(said.getSecondPerson(), said.getSecondDate())));
        }
        html.endTable();
        if (BookUse.state(source.project()) != BookUse.State.NONE) {
            html.paragraph("book", Words.name(source.project().getBookPath()), Words.name(String.valueOf(source.project()
                    .getBookSha256())));
        }
    }

    private static String joined(String... parts) {
        return Stream.of(parts).filter(part -> part != null && !part.isBlank()).collect(Collectors.joining(", "));
    }

    /** What the project holds that no result rests on. */
    private void record() {
        html.section("record").paragraph("record-intro").table("fine", List.of(70, 30), "record-entry", "record-count");
        KeptForTheRecord.entries(source.evaluation()).forEach((feature, count) -> html.row(List.of(words.term("record." + feature),
                String.valueOf(count))));
        html.endTable();
        List<Identified> elements = KeptForTheRecord.elements(source.evaluation());
        if (!elements.isEmpty()) {
            html.paragraph("record-elements", Words.list(elements.stream().map(SourceChapter::name).toList()));
        }
    }

    private static Argument name(Identified element) {
        return element instanceof ProfilePoint point && point.getChainageM() != null ? Message.of("report.record-point",
                Words.m(point.getChainageM()), ElementNames.of((Identified) point.eContainer())) : ElementNames.of(element);
    }

    private void documents(Collection<Siting.CitedUse> used) {
        Set<Source> documents = new LinkedHashSet<>();
        used.forEach(use -> documents.add(use.citation().source()));
        source.result().outcomes().stream().flatMap(outcome -> outcome.citations().stream())
                .forEach(citation -> documents.add(citation.source()));
        html.section("documents").table("fine", List.of(20, 62, 18), "short-name", "document-title", "edition");
        documents.stream().sorted(Comparator.comparing(Source::key)).forEach(document -> html.row(List.of(document.key(), document.title(),
                document.edition())));
        html.endTable();
    }
}
