package slopewright.ui.plan.internal.policies;

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
import slopewright.model.Project;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.properties.OutcomeTexts;

/**
 * What all rules say of a drag while the mouse is held, as the check after the drop says it: how many outcomes there are of each verdict,
 * and which come out otherwise than now. While the answer for a place is under way, that of the place before is shown without any sign.
 */
public final class DragVerdict {

    private static final int MOST_CHANGES = 6;

    private final ProjectDocument document;
    private final Runnable arrived;
    private Optional<Object> asked = Optional.empty();
    private Optional<Object> answered = Optional.empty();
    private Optional<CheckResult> answer = Optional.empty();

    /**
     * Makes it.
     *
     * @param document the document
     * @param arrived  is run when an answer is there, to show it
     */
    public DragVerdict(ProjectDocument document, Runnable arrived) {
        this.document = document;
        this.arrived = arrived;
    }

    /**
     * Asks what a drop would lead to.
     *
     * @param place where it would be; a place that was asked for last is not asked for again
     * @param drop  what the drop does to a copy of the project
     */
    void ask(Object place, Function<Project, RecordedEdit> drop) {
        if (asked.equals(Optional.of(place))) {
            return;
        }
        asked = Optional.of(place);
        document.tryOut(drop, result -> {
            answered = Optional.of(place);
            answer = Optional.of(result);
            arrived.run();
        });
    }

    /** Ends the drag. */
    void end() {
        document.endTrials();
        asked = Optional.empty();
        answered = Optional.empty();
        answer = Optional.empty();
    }

    /** Returns what the rules say of the place that was asked for last; empty while that is under way. */
    public Optional<CheckResult> result() {
        return asked.isPresent() && asked.equals(answered) ? answer : Optional.empty();
    }

    /** Returns what is said. */
    List<Line> lines() {
        if (answer.isEmpty()) {
            return List.of(Line.of(Messages.get("move.checking")));
        }
        List<Line> lines = of(answer.get(), document.lastResult());
        return result().isPresent() ? lines : lines.stream().map(line -> Line.of(line.text())).toList();
    }

    private static List<Line> of(CheckResult then, Optional<CheckResult> now) {
        Map<Verdict, Integer> counts = then.counts();
        String text = OutcomeTexts.counts(counts);
        List<Line> lines = new ArrayList<>();
        lines.add(signed(text, counts.getOrDefault(Verdict.NOT_MET, 0) > 0 ? Verdict.NOT_MET
                : counts.getOrDefault(Verdict.TO_CLEAR_UP, 0) > 0 || !then.anythingEvaluated() ? Verdict.TO_CLEAR_UP : Verdict.MET));
        Map<String, Outcome> before = named(now.map(CheckResult::outcomes).orElse(List.of()));
        List<Outcome> others = new ArrayList<>();
        named(then.outcomes()).forEach((name, outcome) -> {
            Optional<Verdict> was = Optional.ofNullable(before.get(name)).map(Outcome::verdict);
            boolean isFinding = outcome.weight().isPresent();
            if (isFinding && !was.equals(Optional.of(outcome.verdict()))
                    || outcome.verdict() == Verdict.MET && was.filter(verdict -> verdict != Verdict.MET).isPresent()) {
                others.add(outcome);
            }
        });
        others.sort(OutcomeTexts.worstFirst());
        others.stream().limit(MOST_CHANGES).forEach(outcome -> lines.add(signed(Messages.get("move.rule", outcome.rule(),
                MessageTexts.of(outcome.title()), OutcomeTexts.verdict(outcome)), outcome.verdict())));
        if (others.size() > MOST_CHANGES) {
            lines.add(Line.of(Messages.get("move.more-rules", others.size() - MOST_CHANGES)));
        }
        return lines;
    }

    private static Line signed(String text, Verdict verdict) {
        return switch (verdict) {
            case NOT_MET -> Line.of(text, false);
            case TO_CLEAR_UP -> Line.warning(text);
            case MET -> Line.of(text, true);
            default -> Line.of(text);
        };
    }

    private static Map<String, Outcome> named(List<Outcome> outcomes) {
        Map<String, Integer> seen = new HashMap<>();
        Map<String, Outcome> named = new LinkedHashMap<>();
        for (Outcome outcome : outcomes) {
            String name = outcome.rule() + " " + outcome.elementId() + " " + outcome.elementPath();
            named.put(name + " " + seen.merge(name, 1, Integer::sum), outcome);
        }
        return named;
    }
}
