package slopewright.checks;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Siting;
import slopewright.standards.Citation;

/**
 * How an aid, or a whole project, stands after a check: one verdict with its counts, in the same words on the first page of a report, on
 * every sheet of a drawing and in the register of the sheets.
 *
 * @param verdict     not met, to clear up or met
 * @param notMet      how many outcomes are not met
 * @param toClearUp   how many outcomes are to be cleared up
 * @param unconfirmed how many values to be confirmed the layouts and outcomes rest on
 * @param evaluated   whether any rule was met or not met
 */
public record Standing(Verdict verdict, int notMet, int toClearUp, int unconfirmed, boolean evaluated) {

    /** Refuses a missing verdict. */
    public Standing {
        Objects.requireNonNull(verdict);
    }

    /** Tells how a project stands. */
    public static Standing of(ProjectEvaluation evaluation, CheckResult result) {
        return counted(result.outcomes(), evaluation.aids());
    }

    /**
     * Tells how aids stand together: by all that concerns one of them, its parts, its host, what stands around and the values that it
     * rests on.
     *
     * @param aids   the evaluations of one aid or several
     * @param result the check of their project
     * @return how they stand
     */
    public static Standing of(List<AidEvaluation> aids, CheckResult result) {
        Set<Outcome> concerning = Collections.newSetFromMap(new IdentityHashMap<>());
        aids.forEach(aid -> concerning.addAll(SetUpGate.concerning(aid, result.outcomes())));
        return counted(result.outcomes().stream().filter(concerning::contains).toList(), aids);
    }

    private static Standing counted(List<Outcome> outcomes, List<AidEvaluation> aids) {
        int notMet = count(outcomes, Verdict.NOT_MET);
        int toClearUp = count(outcomes, Verdict.TO_CLEAR_UP);
        int unconfirmed = toConfirm(outcomes, aids).size();
        boolean evaluated = outcomes.stream().anyMatch(Outcome::isEvaluated);
        Verdict verdict = notMet > 0 ? Verdict.NOT_MET : toClearUp > 0 || unconfirmed > 0 || !evaluated ? Verdict.TO_CLEAR_UP : Verdict.MET;
        return new Standing(verdict, notMet, toClearUp, unconfirmed, evaluated);
    }

    private static int count(List<Outcome> outcomes, Verdict verdict) {
        return (int) outcomes.stream().filter(outcome -> outcome.verdict() == verdict).count();
    }

    /**
     * Returns what a person still has to confirm of the values that layouts and outcomes rest on, by name of the value or table.
     *
     * @param outcomes outcomes
     * @param aids     aids with their layouts, as they stand and as they were solved
     */
    public static Collection<Citation> toConfirm(List<Outcome> outcomes, List<AidEvaluation> aids) {
        List<Citation> all = new ArrayList<>();
        aids.forEach(aid -> List.of(aid.siting(), aid.solved()).forEach(attempt -> attempt.value().map(Siting::citations).orElse(List.of())
                .forEach(use -> all.add(use.citation()))));
        outcomes.forEach(outcome -> all.addAll(outcome.citations()));
        Map<String, Citation> open = new LinkedHashMap<>();
        all.stream().filter(Citation::toConfirm).forEach(citation -> open.putIfAbsent(citation.key(), citation));
        return open.values();
    }

    /** Returns the verdict with its counts in one line: {@code Not met: 3 not met, 1 to clear up}. */
    public Message words() {
        if (!evaluated) {
            return Message.of("standing.nothing");
        }
        return toClearUp == 0 && verdict == Verdict.TO_CLEAR_UP ? Message.of("standing.unconfirmed", Words.count(unconfirmed))
                : Message.of("standing." + verdict.key(), Words.count(notMet), Words.count(toClearUp));
    }
}
