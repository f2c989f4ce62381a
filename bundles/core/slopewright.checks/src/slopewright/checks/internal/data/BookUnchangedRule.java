package slopewright.checks.internal.data;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.BookUse;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;

/**
 * The book of values that a project names is the one from which its entries were taken. A warning: the verdicts rest on the entries that
 * the project keeps, and do not change silently; somebody has to look at what the book says now.
 */
public final class BookUnchangedRule extends ProjectRule {
    /** Made by the service loader. */
    public BookUnchangedRule() {
        super("DATA-30", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        String path = String.valueOf(evaluation.project().getBookPath());
        switch (BookUse.state(evaluation.project())) {
            case NONE -> {
                // without a book nothing can have changed
            }
            case SAME -> outcomes.about(evaluation.project()).met(true).saying("same", Words.name(path)).add();
            case CHANGED -> outcomes.notEvaluated(evaluation.project(), List.of(Message.of("missing.book-entries")),
                    Message.of("DATA-30.changed", Words.name(path)));
            default -> outcomes.notApplicable(evaluation.project(), Message.of("DATA-30.absent", Words.name(path)));
        }
    }
}
