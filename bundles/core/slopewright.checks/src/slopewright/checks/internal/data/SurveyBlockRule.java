package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.Missing;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.model.SurveyBlock;

/**
 * Bulk survey data is kept beside the project; the reference must hold, or its points are compared with nothing. Severity fail: a point
 * of it may stand through a surface.
 */
public final class SurveyBlockRule extends ProjectRule {
    /** Made by the service loader. */
    public SurveyBlockRule() {
        super("DATA-09", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        for (SurveyBlock block : evaluation.project().getSurveyBlocks()) {
            Missing missing = new Missing();
            missing.unless(isGiven(block.getPath()), "missing.file-name");
            missing.unless(isGiven(block.getSha256()) && block.getSha256().matches("[0-9a-fA-F]{64}"), "missing.sha256");
            missing.unless(block.getPointCount() != null && block.getPointCount() > 0, "missing.point-count");
            boolean whole = missing.names().isEmpty();
            outcomes.about(block).met(whole).saying(whole ? "whole" : "lacking", Words.list(missing.names())).advising("import").add();
        }
    }

    private static boolean isGiven(String text) {
        return text != null && !text.isBlank();
    }
}
