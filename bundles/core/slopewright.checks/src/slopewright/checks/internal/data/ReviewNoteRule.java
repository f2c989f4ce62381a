package slopewright.checks.internal.data;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.RuleCatalogue;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.model.ReviewNote;

/** A review note is about an element and a rule that exist. A warning: a note that is about nothing answers nothing. */
public final class ReviewNoteRule extends ProjectRule {
    /** Made by the service loader. */
    public ReviewNoteRule() {
        super("REC-01", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        if (evaluation.project().getReviewNotes().isEmpty()) {
            return;
        }
        Set<String> elements = Stream.concat(evaluation.siteElements().stream(), evaluation.aidElements().stream())
                .map(Identified::getId).collect(Collectors.toSet());
        for (ReviewNote note : evaluation.project().getReviewNotes()) {
            boolean element = note.getElementId() == null || elements.contains(note.getElementId());
            boolean rule = note.getRuleId() == null || RuleCatalogue.find(note.getRuleId()).isPresent();
            outcomes.about(note).met(element && rule).saying(!element ? "no-element" : rule ? "found" : "no-rule",
                    Words.name(String.valueOf(note.getElementId())), Words.name(String.valueOf(note.getRuleId())))
                    .advising("correct").add();
        }
    }
}
