package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.messages.Message;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;

/** Every family that may stand at a runway end or helipad, side by side. */
final class ComparisonChapter {

    private final Html html;
    private final Project project;
    private final ProjectEvaluation context;

    ComparisonChapter(Html html, Project project, ProjectEvaluation context) {
        this.html = html;
        this.project = project;
        this.context = context;
    }

    void write() {
        html.element("p", "Every family laid out afresh for the same site and aeroplanes, without the choices that were made for the "
                + "indicator that stands there, so that its place may differ from that of the layout. The family that the project has is "
                + "marked.");
        List<ApproachHost> hosts = context.aids().stream().map(AidEvaluation::host).distinct().toList();
        for (ApproachHost host : hosts) {
            AidEvaluation first = context.aids().stream().filter(subject -> subject.host() == host).findFirst().orElseThrow();
            html.section(Projects.path(host));
            try {
                table(first, FamilyComparison.of(context, host));
            } catch (SitingException e) {
                html.element("p class=\"alert\"", "The families can not be compared: " + e.getMessage() + ".");
            }
        }
    }

    private void table(AidEvaluation chosen, List<Candidate> candidates) {
        html.table("fine", List.of(19, 7, 10, 10, 10, 17, 27), List.of("Family", "Units", "Distance m", "Eye height m",
                "Wheels m", "Margin m, obstacle", "Remark"));
        for (Candidate candidate : candidates) {
            boolean here = candidate.family().key().equals(chosen.aid().getFamilyKey());
            html.row("td", List.of((here ? "\u25cf " : "") + candidate.family().name(),
                    candidate.siting().map(siting -> String.valueOf(siting.units().size())).orElse(""),
                    number(candidate.siting().map(Siting::distanceM).orElse(Double.NaN)),
                    number(candidate.siting().map(Siting::mehtM).orElse(Double.NaN)),
                    number(candidate.siting().map(Siting::wheelClearanceM).orElse(OptionalDouble.empty()).orElse(Double.NaN)),
                    (number(candidate.obstacleMarginM().orElse(Double.NaN)) + " " + candidate.governingObstacle()).trim(),
                    text(candidate.reasons())));
        }
        html.endTable();
        why(chosen, candidates);
    }

    /** Says what the comparison holds for and against the indicator that was chosen. */
    private void why(AidEvaluation chosen, List<Candidate> candidates) {
        Optional<Candidate> own = candidates.stream().filter(one -> one.family().key().equals(chosen.aid().getFamilyKey())).findFirst();
        if (own.isEmpty()) {
            return;
        }
        String name = own.get().family().name();
        if (!own.get().fits()) {
            html.element("p class=\"alert\"", "Chosen: " + name + ". Laid out afresh it does not fit here: "
                    + text(own.get().reasons()));
            return;
        }
        List<Candidate> fit = candidates.stream().filter(Candidate::fits).toList();
        List<Candidate> covered = fit.stream().filter(one -> chosen.rules().covers(one.family().key())).toList();
        List<String> reasons = new ArrayList<>();
        reasons.add(chosen.rules().covers(own.get().family().key()) ? "the rule set of the project covers it"
                : "the rule set of the project does not cover it, another one does");
        own.get().obstacleMarginM().ifPresent(margin -> {
            long better = covered.stream().filter(one -> one.obstacleMarginM().orElse(-1) > margin + 0.005).count();
            reasons.add(String.format(Locale.ROOT, "the governing obstacle lies %.2f m %s its surface, %s", Math.abs(margin), margin < 0
                    ? "above" : "below", better == 0 ? "the best of those that the rule set covers and that fit"
                            : better + " of the " + covered.size() + " that the rule set covers and that fit leave more"));
        });
        reasons.add("it needs " + own.get().context().units().english() + " light units or panels");
        html.element("p", "Chosen: " + name + ". It is one of " + fit.size() + " families that fit this site; " + String.join("; ", reasons)
                + ".");
    }

    private static String text(List<Message> sentences) {
        return String.join(" ", sentences.stream().map(Message::english).toList());
    }

    private static String number(double value) {
        return Double.isNaN(value) ? "" : String.format(Locale.ROOT, "%.2f", value);
    }
}
