package slopewright.checks.internal.data;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.RuleCatalogue;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.Reviews;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.model.ReviewKind;
import slopewright.model.ReviewNote;

/**
 * A review note is about an element and a rule that exist, a reply about a comment, and a signature about the project as it stands. A
 * warning: a note that is about nothing answers nothing.
 */
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
        Set<String> notes = evaluation.project().getReviewNotes().stream().filter(note -> note.getKind() == ReviewKind.COMMENT)
                .map(Identified::getId).collect(Collectors.toSet());
        for (ReviewNote note : evaluation.project().getReviewNotes()) {
            if (note.getKind() == ReviewKind.SIGNED_OFF) {
                signature(evaluation, note, outcomes);
            }
            boolean isReply = note.getKind() != ReviewKind.COMMENT && note.getKind() != ReviewKind.SIGNED_OFF;
            if (isReply != (note.getNoteId() != null) || isReply && !notes.contains(note.getNoteId())) {
                outcomes.about(note).met(false).saying(note.getNoteId() == null ? "no-comment" : "no-note",
                        Words.name(String.valueOf(note.getNoteId()))).advising("correct").add();
                continue;
            }
            boolean element = note.getElementId() == null || elements.contains(note.getElementId());
            boolean rule = note.getRuleId() == null || RuleCatalogue.find(note.getRuleId()).isPresent();
            outcomes.about(note).met(element && rule).saying(!element ? "no-element" : rule ? "found" : "no-rule",
                    Words.name(String.valueOf(note.getElementId())), Words.name(String.valueOf(note.getRuleId())))
                    .advising("correct").add();
        }
    }

    /** The last signature stands for the project as it is; an earlier one for what it was. */
    private static void signature(ProjectEvaluation evaluation, ReviewNote note, OutcomeCollector outcomes) {
        if (Reviews.signedOff(evaluation.project()).orElseThrow() != note) {
            return;
        }
        if (Reviews.isAsSigned(evaluation.project(), note)) {
            outcomes.about(note).met(true).saying("signed").add();
        } else {
            outcomes.notEvaluated(note, List.of(Message.of("missing.signature")), Message.of("REC-01.changed",
                    Words.name(String.valueOf(note.getPerson())), Words.name(String.valueOf(note.getDate()))));
        }
    }
}
