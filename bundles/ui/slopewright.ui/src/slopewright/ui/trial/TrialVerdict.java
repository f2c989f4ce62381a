package slopewright.ui.trial;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.edit.RecordedEdit;
import slopewright.messages.Argument;
import slopewright.model.Project;
import slopewright.ui.MessageTexts;
import slopewright.ui.Texts;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.properties.OutcomeTexts;

/**
 * What all rules say of a drag while the mouse is held, as the check after the drop says it: how many outcomes there are of each verdict,
 * and which come out otherwise than now. It is worked out in the background, words included, so that a step of the mouse never waits for
 * it. While the answer for a place is under way, nothing is said of that place; what is known of the one before is said of that one, by
 * its name and without a sign.
 */
public final class TrialVerdict {

    private static final Texts TEXTS = Texts.beside(TrialVerdict.class);
    private static final int MOST_CHANGES = 6;

    private final ProjectDocument document;
    private final Runnable arrived;
    private Optional<Object> asked = Optional.empty();
    private Optional<Answer> answer = Optional.empty();

    /**
     * A line.
     *
     * @param text what it says
     * @param sign the verdict that it has as a whole, empty where it is only a text
     */
    public record Said(String text, Optional<Verdict> sign) {
    }

    /** What is known of a place. */
    private record Answer(Object place, String called, CheckResult result, List<Said> lines) {
    }

    /**
     * Makes it.
     *
     * @param document the document
     * @param arrived  is run when an answer is there, to show it
     */
    public TrialVerdict(ProjectDocument document, Runnable arrived) {
        this.document = document;
        this.arrived = arrived;
    }

    /**
     * Asks what a drop would lead to.
     *
     * @param place  where it would be; a place that was asked for last is not asked for again
     * @param called what that place is called, for people
     * @param drop   what the drop does to a copy of the project
     */
    public void ask(Object place, String called, Function<Project, RecordedEdit> drop) {
        if (asked.equals(Optional.of(place))) {
            return;
        }
        asked = Optional.of(place);
        List<Outcome> now = document.lastResult().map(CheckResult::outcomes).orElse(List.of());
        document.tryOut(drop, result -> {
            Answer found = new Answer(place, called, result, lines(result, now));
            return () -> {
                answer = Optional.of(found);
                arrived.run();
            };
        });
    }

    /** Ends the drag. */
    public void end() {
        document.endTrials();
        asked = Optional.empty();
        answer = Optional.empty();
    }

    /** Returns what the rules say of the place that was asked for last; empty while that is under way. */
    public Optional<CheckResult> result() {
        return known().map(Answer::result);
    }

    private Optional<Answer> known() {
        return answer.filter(found -> asked.equals(Optional.of(found.place())));
    }

    /** Returns what is said. */
    public List<Said> lines() {
        return known().map(Answer::lines).orElseGet(() -> {
            List<Said> lines = new ArrayList<>(List.of(new Said(TEXTS.get("trial.checking"), Optional.empty())));
            answer.ifPresent(before -> lines.add(new Said(TEXTS.get("trial.before", before.called(), before.lines().get(0).text()),
                    Optional.empty())));
            return lines;
        });
    }

    private static List<Said> lines(CheckResult then, List<Outcome> now) {
        Map<Verdict, Integer> counts = then.counts();
        List<Said> lines = new ArrayList<>();
        lines.add(new Said(OutcomeTexts.counts(counts), Optional.of(counts.getOrDefault(Verdict.NOT_MET, 0) > 0 ? Verdict.NOT_MET
                : counts.getOrDefault(Verdict.TO_CLEAR_UP, 0) > 0 || !then.anythingEvaluated() ? Verdict.TO_CLEAR_UP : Verdict.MET)));
        List<Outcome> others = changed(then.outcomes(), now);
        others.stream().limit(MOST_CHANGES).forEach(outcome -> lines.add(new Said(TEXTS.get("trial.rule", outcome.rule(),
                MessageTexts.of(outcome.title()), OutcomeTexts.verdict(outcome)), Optional.of(outcome.verdict()))));
        if (others.size() > MOST_CHANGES) {
            lines.add(new Said(TEXTS.get("trial.more", others.size() - MOST_CHANGES), Optional.empty()));
        }
        return List.copyOf(lines);
    }

    /** Returns the findings that come out otherwise, and what is met and was not; the worst first. */
    private static List<Outcome> changed(List<Outcome> then, List<Outcome> now) {
        Map<Key, Outcome> before = named(now);
        List<Outcome> others = new ArrayList<>();
        named(then).forEach((key, outcome) -> {
            Optional<Verdict> was = Optional.ofNullable(before.get(key)).map(Outcome::verdict);
            boolean isFinding = outcome.weight().isPresent();
            if (isFinding && !was.equals(Optional.of(outcome.verdict()))
                    || outcome.verdict() == Verdict.MET && was.filter(verdict -> verdict != Verdict.MET).isPresent()) {
                others.add(outcome);
            }
        });
        others.sort(OutcomeTexts.worstFirst());
        return others;
    }

    /** What makes an outcome the same before and after. */
    private record Key(String rule, String elementId, Argument elementPath, int number) {
    }

    private static Map<Key, Outcome> named(List<Outcome> outcomes) {
        Map<Key, Integer> seen = new HashMap<>();
        Map<Key, Outcome> named = new LinkedHashMap<>();
        for (Outcome outcome : outcomes) {
            int number = seen.merge(new Key(outcome.rule(), outcome.elementId(), outcome.elementPath(), 0), 1, Integer::sum);
            named.put(new Key(outcome.rule(), outcome.elementId(), outcome.elementPath(), number), outcome);
        }
        return named;
    }
}
