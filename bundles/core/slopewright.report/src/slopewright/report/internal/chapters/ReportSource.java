package slopewright.report.internal.chapters;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.checks.Standing;
import slopewright.checks.Verdict;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.siting.Siting;
import slopewright.standards.Citation;

/**
 * What a report is made of: one evaluation of the project, and the check that rests on it.
 *
 * @param evaluation the evaluation
 * @param result     what the rules say about it
 */
record ReportSource(ProjectEvaluation evaluation, CheckResult result) {

    /** Returns the project. */
    Project project() {
        return evaluation.project();
    }

    /** Returns what the rules say about an aid and its parts, in the order of the catalogue. */
    List<Outcome> outcomes(AidEvaluation aid) {
        Set<String> ids = new HashSet<>(Set.of(String.valueOf(aid.aid().getId())));
        for (var parts = aid.aid().eAllContents(); parts.hasNext();) {
            EObject part = parts.next();
            if (part instanceof Identified identified) {
                ids.add(String.valueOf(identified.getId()));
            }
        }
        return result.outcomes().stream().filter(outcome -> ids.contains(outcome.elementId())).toList();
    }

    /** Returns what the rules found about an aid and its parts, not met before to clear up. */
    List<Outcome> findings(AidEvaluation aid) {
        return inOrder(outcomes(aid));
    }

    /** Returns what was found about no indicator but about the site or the project, in the same order. */
    List<Outcome> findingsOfSite() {
        Set<Outcome> ofAids = new HashSet<>();
        evaluation.aids().forEach(aid -> ofAids.addAll(outcomes(aid)));
        return inOrder(result.findings().stream().filter(outcome -> !ofAids.contains(outcome)).toList());
    }

    private static List<Outcome> inOrder(List<Outcome> outcomes) {
        return outcomes.stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET || outcome.verdict() == Verdict.TO_CLEAR_UP)
                .sorted((a, b) -> a.verdict() == b.verdict() ? b.weight().orElseThrow().compareTo(a.weight().orElseThrow())
                        : a.verdict().compareTo(b.verdict())).toList();
    }

    /** Returns every number that a layout rests on, once for each rule set; none that those of the unit in hand stand in for. */
    Map<String, Siting.CitedUse> used() {
        Map<String, Siting.CitedUse> used = new LinkedHashMap<>();
        evaluation.aids().forEach(aid -> aid.values().forEach(use -> used.putIfAbsent(aid.rules().key() + aid.rules().edition()
                + use.name(), use)));
        return used;
    }

    /** Returns what a person still has to confirm, by name of the value or table. */
    Collection<Citation> toConfirm() {
        return Standing.toConfirm(result.outcomes());
    }
}
