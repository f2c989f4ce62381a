package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.Outcome;
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
import slopewright.model.util.Projects;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;

/** Every family that may stand at a runway end or helipad, side by side. */
final class ComparisonChapter {

    private static final double EVEN_M = 0.005;
    /** What so many families share is said once, with their names. */
    private static final int SEVERAL = 3;

    private final Html html;
    private final ReportWords words;
    private final ProjectEvaluation evaluation;
    private final Map<Criterion, Integer> weights;

    ComparisonChapter(Html html, ProjectEvaluation evaluation, Map<Criterion, Integer> weights) {
        this.html = html;
        this.evaluation = evaluation;
        this.weights = weights;
        words = html.words();
    }

    void write() {
        html.paragraph("comparison-intro", Criterion.message(weights));
        List<ApproachHost> chosen = evaluation.aids().stream().map(AidEvaluation::host).distinct().toList();
        for (ApproachHost host : chosen.isEmpty() ? Projects.hosts(evaluation.project()) : chosen) {
            html.sectionOf(words.path(host));
            try {
                table(host, FamilyVerdicts.of(evaluation, host, List.of(Optional.empty()), weights));
            } catch (SitingException e) {
                html.alert("no-comparison", e.reason());
            }
        }
    }

    private void table(ApproachHost host, List<FamilyVerdicts> families) {
        Optional<AidEvaluation> chosen = evaluation.aidsOf(host).stream().findFirst();
        List<Message> against = families.stream().findFirst().map(first -> first.place().reasons()).orElse(List.of());
        if (!against.isEmpty()) {
            html.element("p class=\"alert\"", words.render(Message.of("comparison.place", Words.name(sentences(against)))));
        }
        html.table("numbers", List.of(16, 10, 7, 13, 7, 11, 9, 8, 19), "family", "fits", "score", "verdict-counts",
                "unit-count", "distance-m", "eye-m", "wheels-m", "margin-obstacle");
        Map<FamilyVerdicts, Criterion.Weighed> weighed = new LinkedHashMap<>();
        families.forEach(found -> weighed.put(found, found.weighed()));
        List<Candidate> candidates = families.stream().map(FamilyVerdicts::candidate).toList();
        int most = candidates.size() / 2 + 1;
        List<Message> shared = remarks(candidates, most);
        List<Message> once = remarks(candidates, Math.min(SEVERAL, most));
        Map<String, String> remarks = new LinkedHashMap<>();
        for (FamilyVerdicts verdicts : families) {
            Candidate candidate = verdicts.candidate();
            boolean here = chosen.filter(aid -> candidate.family().key().equals(aid.aid().getFamilyKey())).isPresent();
            Optional<Siting> siting = candidate.siting();
            html.row(List.of((here ? "\u25cf " : "") + name(candidate), words.term("fit", verdicts.fit()),
                    Criterion.score(weighed.get(verdicts), List.copyOf(weighed.values()), weights)
                            .map(score -> words.fixed(score, 0)).orElse("-"),
                    verdicts.outcomes().isEmpty() ? "" : words.say("verdict-counts", Words.count(verdicts.count(Verdict.NOT_MET)),
                            Words.count(verdicts.count(Verdict.TO_CLEAR_UP)), Words.count(verdicts.count(Verdict.MET)),
                            Words.count(verdicts.rulesApplied())),
                    siting.map(found -> String.valueOf(found.units().size())).orElse(""),
                    siting.map(found -> words.two(found.distanceM())).orElse(""), siting.map(found -> words.two(found.mehtM())).orElse(""),
                    words.two(siting.map(Siting::wheelClearanceM).orElse(OptionalDouble.empty())),
                    (margin(candidate.obstacleMarginM()) + " " + candidate.governingObstacle()).strip()));
            String own = sentences(own(verdicts, once));
            if (!own.isEmpty()) {
                remarks.merge(own, name(candidate), ComparisonChapter::both);
            }
        }
        once.stream().filter(remark -> !shared.contains(remark)).forEach(remark -> remarks.put(sentences(List.of(remark)),
                candidates.stream().filter(candidate -> candidate.remarks().contains(remark)).map(this::name)
                        .collect(Collectors.joining(", "))));
        html.endTable().list(bullets(remarks));
        if (!shared.isEmpty()) {
            html.remark("comparison-shared", Words.name(sentences(shared)));
        }
        sides(host, families);
        chosen.ifPresent(aid -> why(aid, families));
    }

    /** Says on which side the families were laid out, and what is otherwise on the other one. */
    private void sides(ApproachHost host, List<FamilyVerdicts> families) {
        Optional<Side> side = families.stream().map(found -> found.candidate().side()).flatMap(Optional::stream)
                .filter(found -> found != Side.BOTH).findFirst();
        if (side.isEmpty()) {
            return;
        }
        Side other = side.get() == Side.LEFT ? Side.RIGHT : Side.LEFT;
        Map<String, String> otherwise = new LinkedHashMap<>();
        for (FamilyVerdicts there : FamilyVerdicts.of(evaluation, host, List.of(Optional.of(other)), weights)) {
            families.stream().filter(here -> differs(here, there)).forEach(here -> otherwise.merge(words.term("fit", there.fit()) + ". "
                    + sentences(there.outcomes().isEmpty() ? there.candidate().objections() : FamilyVerdicts.brief(beside(here, there))),
                    name(there.candidate()), ComparisonChapter::both));
        }
        Argument where = Words.term("side." + other.key());
        html.element("p", words.render(Message.of("comparison.laid-on", Words.term("side." + side.get().key()))) + " "
                + words.render(Message.of("comparison.other-side." + (otherwise.isEmpty() ? "same" : "differs"), where)));
        html.list(bullets(otherwise));
    }

    /** Returns what the rules say on the other side alone. */
    private static List<Outcome> beside(FamilyVerdicts here, FamilyVerdicts there) {
        Set<String> said = here.outcomes().stream().map(outcome -> outcome.rule() + outcome.verdict()).collect(Collectors.toSet());
        return there.outcomes().stream().filter(outcome -> !said.contains(outcome.rule() + outcome.verdict())).toList();
    }

    /** Returns whether a family that can stand on one side alone comes to something else on the other one. */
    private static boolean differs(FamilyVerdicts here, FamilyVerdicts there) {
        return here.candidate().family() == there.candidate().family() && !here.candidate().side().equals(Optional.of(Side.BOTH))
                && !(here.fit() == there.fit() && here.named().equals(there.named()));
    }

    private String margin(OptionalDouble metres) {
        return metres.isPresent() ? words.margin(metres.getAsDouble(), 0) : "";
    }

    /** Returns the remarks that so many of the candidates share, so that they are said once. */
    private static List<Message> remarks(List<Candidate> candidates, int least) {
        return candidates.stream().flatMap(candidate -> candidate.remarks().stream()).distinct().filter(remark -> candidates.stream()
                .filter(candidate -> candidate.remarks().contains(remark)).count() >= least).toList();
    }

    /** Returns what is said and of which families, those first. */
    private static List<String> bullets(Map<String, String> said) {
        return said.entrySet().stream().map(one -> one.getValue() + ": " + one.getKey()).toList();
    }

    private static String both(String before, String more) {
        return before + ", " + more;
    }

    private static List<Message> own(FamilyVerdicts verdicts, List<Message> once) {
        return Stream.concat(FamilyVerdicts.brief(verdicts.outcomes()).stream(), verdicts.candidate().reasons().stream())
                .filter(reason -> !once.contains(reason)).toList();
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
