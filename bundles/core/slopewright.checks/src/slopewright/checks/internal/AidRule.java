package slopewright.checks.internal;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.function.Predicate;

import slopewright.checks.Cure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.siting.SitingException;
import slopewright.siting.Trait;

/**
 * A rule about approach aids: it goes through those that the rule set covers and whose family has the traits that it needs. A rule that
 * needs none is a general one and goes through all.
 */
public abstract class AidRule extends ProjectRule {
    private final Set<Trait> needs;

    public AidRule(String id, Severity severity, Trait... needs) {
        super(id, severity);
        this.needs = Set.of(needs);
    }

    /** Returns the traits of the families about which it has something to say; none for a general rule. */
    public final Set<Trait> needs() {
        return needs;
    }

    @Override
    public Cure cure() {
        return Cure.LAYOUT;
    }

    @Override
    public final void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        check(evaluation, aid -> true, outcomes);
    }

    /** Goes through some of the aids alone. */
    public final void check(ProjectEvaluation evaluation, Predicate<AidEvaluation> wanted, OutcomeCollector outcomes) {
        for (AidEvaluation aid : evaluation.aids()) {
            if (wanted.test(aid) && asksAbout(aid)) {
                guarded(aid.aid(), outcomes, () -> check(new AidFacts(aid), outcomes));
            }
        }
    }

    /** Returns whether the rule has something to say about an aid, be it that it does not apply: it never passes one over in silence. */
    public final boolean asksAbout(AidEvaluation aid) {
        return aid.isCovered() && aid.family().orElseThrow().traits().containsAll(needs);
    }

    /** Runs a part of the rule; what is missing there becomes an outcome of the element. */
    public static void guarded(Identified element, OutcomeCollector outcomes, Runnable part) {
        try {
            part.run();
        } catch (Stop stop) {
            if (stop.missing().isEmpty()) {
                outcomes.notApplicable(element, stop.explanation());
            } else {
                outcomes.notEvaluated(element, stop.missing(), stop.explanation());
            }
        } catch (SitingException e) {
            outcomes.notEvaluated(element, List.of(e.reason()), Message.of("outcome.unsolved", e.reason()));
        } catch (IllegalArgumentException | ArithmeticException | NoSuchElementException | IndexOutOfBoundsException e) {
            outcomes.notEvaluated(element, List.of(Message.of("missing.sound-numbers")), Message.of("outcome.out-of-range",
                    Words.name(String.valueOf(e.getMessage()))));
        }
    }

    /** Checks one aid. */
    public abstract void check(AidFacts facts, OutcomeCollector outcomes);
}
