package slopewright.rcp.internal.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.edit.EditException;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.Messages;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.ui.MessageTexts;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/**
 * What the wizard would make of one family: the very project that it would write, and what the rules say against the indicators in it.
 *
 * @param family  the family
 * @param made    the project with the indicators, evaluated; empty where it cannot be made
 * @param refused why it cannot be made; empty where it can
 * @param notMet  what is not met of the indicators and their units
 * @param fit     how it fits
 */
record FamilyOffer(IndicatorFamily family, Optional<ProjectEvaluation> made, String refused, List<Outcome> notMet, Fit fit) {

    /** How a family fits, the best first. */
    enum Fit {
        /** No rule of the rule set of the site is broken. */
        FITS("family.fits"),
        /** No rule is broken that forbids it, but something is to be read. */
        WITH_REMARKS("family.with-care"),
        /** A rule forbids it here. */
        FORBIDDEN("family.forbidden"),
        /** There is no layout. */
        IMPOSSIBLE("family.impossible");

        private final String key;

        Fit(String key) {
            this.key = key;
        }

        String words() {
            return Messages.get(key);
        }
    }

    /** Returns what can be offered at a site, the best first, else in the order of the families. */
    static List<FamilyOffer> all(SiteDraft draft) {
        Project bare = draft.project();
        return FamilyComparison.of(ProjectEvaluation.of(bare, Optional.empty()), Projects.hosts(bare).get(0)).stream()
                .map(candidate -> of(draft, candidate)).sorted(Comparator.comparing(FamilyOffer::fit)).toList();
    }

    private static FamilyOffer of(SiteDraft draft, Candidate candidate) {
        try {
            ProjectEvaluation made = ProjectEvaluation.of(draft.laidOut(candidate.family().key()), Optional.empty());
            List<Outcome> notMet = Checks.run(made, rule -> true).outcomes().stream()
                    .filter(outcome -> outcome.verdict() == Verdict.NOT_MET && isAboutAid(made.project(), outcome)).toList();
            boolean foreign = made.aids().stream().anyMatch(aid -> aid.aid().getRuleSetKey() != null);
            boolean forbidden = notMet.stream().anyMatch(outcome -> outcome.severity() == Severity.FAIL);
            return new FamilyOffer(candidate.family(), Optional.of(made), "", notMet,
                    forbidden ? Fit.FORBIDDEN : notMet.isEmpty() && !foreign ? Fit.FITS : Fit.WITH_REMARKS);
        } catch (SitingException | EditException | IllegalArgumentException e) {
            return new FamilyOffer(candidate.family(), Optional.empty(), MessageTexts.reason(e), List.of(), Fit.IMPOSSIBLE);
        }
    }

    private static boolean isAboutAid(Project project, Outcome outcome) {
        return Ids.find(project, outcome.elementId()).filter(element -> element instanceof ApproachAid || element instanceof LightUnit)
                .isPresent();
    }

    /** Returns whether the wizard may write it. */
    boolean isOffered() {
        return fit == Fit.FITS || fit == Fit.WITH_REMARKS;
    }

    /** Returns the first indicator, which is shown. */
    Optional<AidEvaluation> first() {
        return made.flatMap(found -> found.aids().stream().findFirst());
    }

    /** Returns what will be written, each indicator in a line, and what the rules say against it. */
    String words() {
        List<String> lines = new ArrayList<>();
        made.map(ProjectEvaluation::aids).orElse(List.of()).forEach(aid -> aid.siting().value()
                .ifPresentOrElse(siting -> lines.add(layout(aid, siting)), () -> lines.add(MessageTexts.of(aid.siting().reason()
                        .orElseThrow()))));
        if (made.isEmpty()) {
            lines.add(refused);
        }
        notMet.forEach(outcome -> lines.add(outcome.rule() + ": " + MessageTexts.of(outcome.message())));
        return String.join("\n", lines);
    }

    private static String layout(AidEvaluation aid, Siting siting) {
        QuantityFormat format = QuantityFormat.preferred();
        return Messages.get("family.layout", MessageTexts.label(aid.host()), siting.units().size(),
                MessageTexts.length(siting.distanceM()), format.showWithUnit(siting.slopeDeg(), Quantity.ANGLE),
                MessageTexts.length(siting.mehtM()), MessageTexts.of(aid.rules().descriptor().name()));
    }
}
