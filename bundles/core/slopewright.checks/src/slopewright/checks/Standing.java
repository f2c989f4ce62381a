package slopewright.checks;

import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import slopewright.evaluation.AidEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.standards.Citation;

/**
 * How an aid, or a whole project, stands after a check: one verdict with its counts, in the same words on the first page of a report, on
 * every sheet of a drawing and in the register of the sheets.
 *
 * @param verdict     not met, to clear up or met
 * @param notMet      how many outcomes are not met
 * @param toClearUp   how many outcomes are to be cleared up
 * @param evaluated   whether any rule was met or not met
 */
public record Standing(Verdict verdict, int notMet, int toClearUp, boolean evaluated) {

    /** Refuses a missing verdict. */
    public Standing {
        Objects.requireNonNull(verdict);
    }

    /** Tells how a project stands. */
    public static Standing of(CheckResult result) {
        return counted(result.outcomes());
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
        return counted(result.outcomes().stream().filter(concerning::contains).toList());
    }

    /** Counts outcomes. */
    static Standing counted(List<Outcome> outcomes) {
        int notMet = count(outcomes, Verdict.NOT_MET);
        int toClearUp = count(outcomes, Verdict.TO_CLEAR_UP);
        boolean evaluated = outcomes.stream().anyMatch(Outcome::isEvaluated);
        Verdict verdict = notMet > 0 ? Verdict.NOT_MET : toClearUp > 0 || !evaluated ? Verdict.TO_CLEAR_UP : Verdict.MET;
        return new Standing(verdict, notMet, toClearUp, evaluated);
    }

    private static int count(List<Outcome> outcomes, Verdict verdict) {
        return (int) outcomes.stream().filter(outcome -> outcome.verdict() == verdict).count();
    }

    /** Returns what a person still has to confirm of the values that outcomes rest on, by name of the value or table. */
    public static Collection<Citation> toConfirm(List<Outcome> outcomes) {
        Map<String, Citation> open = new LinkedHashMap<>();
        outcomes.stream().flatMap(outcome -> outcome.citations().stream()).filter(Citation::toConfirm)
                .forEach(citation -> open.putIfAbsent(citation.key(), citation));
        return open.values();
    }

    /** Returns the verdict with its counts in one line: {@code Not met: 3 not met, 1 to clear up}. */
    public Message words() {
        return !evaluated ? Message.of("standing.nothing")
                : Message.of("standing." + verdict.key(), Words.count(notMet), Words.count(toClearUp));
    }
}
