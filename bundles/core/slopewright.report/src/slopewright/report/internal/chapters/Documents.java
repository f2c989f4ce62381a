package slopewright.report.internal.chapters;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import slopewright.messages.Words;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.standards.Citation;
import slopewright.standards.Source;

/** The documents that a project rests on, numbered for its annexes: a table there names number and clause, the list says the rest. */
final class Documents {

    private final Map<Source, Integer> numbers = new LinkedHashMap<>();

    Documents(ReportSource source) {
        Set<Source> documents = new LinkedHashSet<>();
        source.used().values().forEach(use -> documents.add(use.citation().source()));
        source.result().outcomes().stream().flatMap(outcome -> outcome.citations().stream())
                .forEach(citation -> documents.add(citation.source()));
        documents.stream().sorted(Comparator.comparing(Source::key)).forEach(document -> numbers.put(document, numbers.size() + 1));
    }

    /** Prints the list. */
    void write(Html html) {
        ReportWords words = html.words();
        List<String> said = numbers.entrySet().stream().map(entry -> words.say("document-numbered", Words.count(entry.getValue()),
                entry.getKey().title(), entry.getKey().edition())).toList();
        html.section("documents").element("p", String.join("; ", said) + ".").remark("documents-numbered");
    }

    /** Returns number and clause of a citation. */
    String brief(Citation citation, ReportWords words) {
        return words.say("document-and-clause", Words.count(numbers.getOrDefault(citation.source(), 0)), citation.clause()).strip();
    }
}
