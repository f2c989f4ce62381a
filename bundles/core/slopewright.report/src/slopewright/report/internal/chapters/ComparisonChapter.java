package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.checks.Verdict;
import slopewright.checks.compare.Criterion;
import slopewright.checks.compare.FamilyVerdicts;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.comparison.Candidate;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachHost;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;

/** Every family that may stand at a runway end or helipad, side by side. */
final class ComparisonChapter {

    private static final double EVEN_M = 0.005;

    private final Html html;
    private final ReportWords words;
    private final ProjectEvaluation evaluation;

    ComparisonChapter(Html html, ProjectEvaluation evaluation) {
        this.html = html;
        this.evaluation = evaluation;
        words = html.words();
    }

    void write() {
        html.paragraph("comparison-intro");
        List<ApproachHost> hosts = evaluation.aids().stream().map(AidEvaluation::host).distinct().toList();
        for (ApproachHost host : hosts) {
            AidEvaluation first = evaluation.aidsOf(host).get(0);
            html.sectionOf(words.path(host));
            try {
                table(first, FamilyVerdicts.of(evaluation, host));
            } catch (SitingException e) {
                html.alert("no-comparison", e.reason());
            }
        }
    }

    private void table(AidEvaluation chosen, List<FamilyVerdicts> families) {
        html.table("numbers", List.of(17, 10, 7, 13, 7, 9, 9, 8, 20), "family", "fits", "score", "verdict-counts",
                "unit-count", "distance-m", "eye-m", "wheels-m", "margin-obstacle");
        Map<FamilyVerdicts, Criterion.Weighed> weighed = new LinkedHashMap<>();
        families.forEach(found -> weighed.put(found, found.weighed()));
        List<Message> shared = shared(families.stream().map(FamilyVerdicts::candidate).toList());
        List<String> remarks = new ArrayList<>();
        for (FamilyVerdicts verdicts : families) {
            Candidate candidate = verdicts.candidate();
            boolean here = candidate.family().key().equals(chosen.aid().getFamilyKey());
            Optional<Siting> siting = candidate.siting();
            html.row(List.of((here ? "\u25cf " : "") + name(candidate), words.term("fit", verdicts.fit()),
                    Criterion.score(weighed.get(verdicts), List.copyOf(weighed.values()), Criterion.alike())
                            .map(score -> words.fixed(score, 0)).orElse("-"),
                    verdicts.outcomes().isEmpty() ? "" : words.say("verdict-counts", Words.count(verdicts.count(Verdict.NOT_MET)),
                            Words.count(verdicts.count(Verdict.TO_CLEAR_UP)), Words.count(verdicts.count(Verdict.MET)),
                            Words.count(verdicts.rulesApplied())),
                    siting.map(found -> String.valueOf(found.units().size())).orElse(""),
                    siting.map(found -> words.two(found.distanceM())).orElse(""), siting.map(found -> words.two(found.mehtM())).orElse(""),
                    words.two(siting.map(Siting::wheelClearanceM).orElse(OptionalDouble.empty())),
                    (margin(candidate.obstacleMarginM()) + " " + candidate.governingObstacle()).strip()));
            String own = sentences(own(verdicts, shared));
            if (!own.isEmpty()) {
                remarks.add(name(candidate) + ": " + own);
            }
        }
        html.endTable().list(remarks);
        if (!shared.isEmpty()) {
            html.remark("comparison-shared", Words.name(sentences(shared)));
        }
        why(chosen, families);
    }

    private String margin(OptionalDouble metres) {
        return metres.isPresent() ? words.margin(metres.getAsDouble(), 0) : "";
    }

    /** Returns the remarks that most of the candidates share, so that they are said once. */
    private static List<Message> shared(List<Candidate> candidates) {
        return candidates.stream().flatMap(candidate -> candidate.remarks().stream()).distinct().filter(remark -> 2 * candidates.stream()
                .filter(candidate -> candidate.remarks().contains(remark)).count() > candidates.size()).toList();
    }

    private static List<Message> own(FamilyVerdicts verdicts, List<Message> shared) {
        return verdicts.candidate().reasons().stream().filter(reason -> !shared.contains(reason)).toList();
    }

    private String sentences(List<Message> reasons) {
        return String.join(" ", words.render(reasons).stream().map(text -> text.endsWith(".") ? text : text + ".").toList());
    }

    private String name(Candidate candidate) {
        return words.family(Optional.of(candidate.family()), candidate.family().key());
    }

    /** Says what the comparison holds for and against the indicator that was chosen. */
    private void why(AidEvaluation chosen, List<FamilyVerdicts> families) {
        Optional<FamilyVerdicts> found = families.stream()
                .filter(verdicts -> verdicts.candidate().family().key().equals(chosen.aid().getFamilyKey()))
                .findFirst();
        if (found.isEmpty()) {
            return;
        }
        Candidate own = found.get().candidate();
        if (found.get().fit() != Candidate.Fit.FITS) {
            html.alert(found.get().fit() == Candidate.Fit.DOES_NOT_FIT ? "chosen-does-not-fit" : "chosen-to-clear-up",
                    Words.name(name(own)),
                    Words.name(sentences(found.get().reasons())));
            return;
        }
        List<Candidate> fit = families.stream().filter(verdicts -> verdicts.fit() == Candidate.Fit.FITS)
                .map(FamilyVerdicts::candidate).toList();
        List<Candidate> covered = fit.stream().filter(candidate -> chosen.rules().covers(candidate.family().ruleKey())).toList();
        List<Argument> reasons = new ArrayList<>();
        reasons.add(Message.of(chosen.rules().covers(own.family().ruleKey()) ? "report.chosen-covered" : "report.chosen-not-covered"));
        own.obstacleMarginM().ifPresent(marginM -> {
            long better = covered.stream().filter(candidate -> candidate.obstacleMarginM().orElse(Double.NEGATIVE_INFINITY) > marginM
                    + EVEN_M).count();
            reasons.add(Message.of(marginM < 0 ? "report.chosen-above" : "report.chosen-below", Words.margin(Math.abs(marginM)),
                    better == 0 ? Message.of("report.chosen-best") : Message.of("report.chosen-better", Words.count(better), Words.count(
                            covered.size()))));
        });
        reasons.add(Message.of("report.chosen-units", own.context().units()));
        html.paragraph("chosen", Words.name(name(own)), Words.count(fit.size()), Words.list(reasons));
    }
}
