package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.checks.Result;
import slopewright.checks.Stages;
import slopewright.checks.Verdict;
import slopewright.evaluation.AidEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;

/** The verdict with its counts, every open finding with its clause, and what was not evaluated. */
final class ResultChapter {

    private final Html html;
    private final ReportWords words;
    private final ReportSource source;
    private final Conclusion conclusion;

    ResultChapter(Html html, ReportSource source, Conclusion conclusion) {
        this.html = html;
        this.source = source;
        this.conclusion = conclusion;
        words = html.words();
    }

    void write() {
        CheckResult result = source.result();
        html.chapter("result");
        conclusion.write(html);
        html.table("counts", List.of(24, 11, 11, 11, 13, 15, 15), "outcomes-of", "not-met", "to-clear-up", "met", "not-applicable",
                "of-which-to-confirm", "of-which-not-at-this-stage");
        row("design", result.counts(false), of(false));
        row("data", result.counts(true), of(true));
        row("all", result.counts(), result.outcomes());
        html.endTable().remark("what-to-confirm-means").section("findings");
        Map<String, List<Outcome>> findings = new LinkedHashMap<>();
        findings.put(words.say("findings-of-site"), source.findingsOfSite());
        source.evaluation().aids().forEach(aid -> findings.put(words.path(aid.aid()), source.findings(aid)));
        findings.values().removeIf(List::isEmpty);
        if (findings.isEmpty()) {
            html.paragraph("no-findings");
        } else {
            new OutcomeTables(html, source.project()).findings(findings);
        }
        notEvaluated(result);
    }

    private List<Outcome> of(boolean aboutData) {
        return source.result().outcomes().stream().filter(outcome -> outcome.isAboutData() == aboutData).toList();
    }

    private void row(String kind, Map<Verdict, Integer> counts, List<Outcome> outcomes) {
        long toConfirm = outcomes.stream().filter(outcome -> outcome.verdict() == Verdict.TO_CLEAR_UP && outcome.toConfirm()).count();
        long later = outcomes.stream().filter(outcome -> outcome.result() == Result.NOT_AT_THIS_STAGE).count();
        List<String> cells = new ArrayList<>(List.of(words.say("counts." + kind)));
        for (Verdict verdict : List.of(Verdict.NOT_MET, Verdict.TO_CLEAR_UP, Verdict.MET, Verdict.NOT_APPLICABLE)) {
            cells.add(String.valueOf(counts.get(verdict)));
        }
        cells.addAll(List.of(String.valueOf(toConfirm), String.valueOf(later)));
        html.styledRow("all".equals(kind) ? "sum" : "plain", cells);
    }

    /** Everything that nobody may conclude anything about: by want of an input, by the stage, by nature. */
    private void notEvaluated(CheckResult result) {
        html.section("not-evaluated");
        List<String> said = new ArrayList<>();
        for (AidEvaluation aid : source.evaluation().aids()) {
            aid.siting().reason().ifPresent(reason -> said.add(words.say("not-laid-out", Words.name(words.name(aid.aid())), reason)));
            aid.obstacles().value().ifPresentOrElse(compared -> compared.uncompared().forEach(left -> said.add(words.say("not-compared-for",
                    Words.name(words.name(aid.aid())), Words.name(left.label()), left.reason()))), () -> aid.siting().value().ifPresent(
                            siting -> said.add(words.say("no-surface-for", Words.name(words.name(aid.aid())), aid.obstacles().reason()
                                    .orElse(Message.of("siting.no-surface"))))));
        }
        long open = result.outcomes().stream().filter(outcome -> outcome.result() == Result.NOT_EVALUATED).count();
        if (open > 0) {
            said.add(words.say("not-evaluated-count", Words.count(open)));
        }
        Set<String> later = new LinkedHashSet<>();
        result.outcomes().stream().filter(outcome -> outcome.result() == Result.NOT_AT_THIS_STAGE)
                .forEach(outcome -> later.add(words.say("rule-and-title", Words.name(outcome.rule()), outcome.title())));
        if (!later.isEmpty()) {
            said.add(words.say("not-at-stage", Words.name(words.render(Message.of("plain", Stages.term(result.stage())))),
                    Words.names(later)));
        }
        said.add(words.say("never-evaluated"));
        html.list(said);
    }
}
