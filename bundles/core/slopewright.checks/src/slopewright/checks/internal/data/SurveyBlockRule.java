package slopewright.checks.internal.data;

import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Rule;
import slopewright.checks.internal.Missing;
import slopewright.checks.internal.Words;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.SurveyBlock;

/** Bulk survey data is kept beside the project; the reference must hold. */
public final class SurveyBlockRule implements Rule {

    @Override
    public String id() {
        return "DATA-09";
    }

    @Override
    public void check(ProjectEvaluation context, OutcomeCollector findings) {
        for (SurveyBlock block : context.project().getSurveyBlocks()) {
            Missing missing = new Missing();
            missing.unless(isGiven(block.getPath()), "file name");
            missing.unless(isGiven(block.getSha256()) && block.getSha256().matches("[0-9a-fA-F]{64}"), "SHA-256 hash of its content");
            missing.unless(block.getPointCount() != null && block.getPointCount() > 0, "number of points");
            boolean whole = missing.names().isEmpty();
            findings.decide(block, whole, Optional.empty(), whole ? "The block names file, hash and number of points."
                    : "The block dangles: it gives no " + Words.list(missing.names()) + ". Import the survey again or take the block out.",
                    severity());
        }
    }

    private static boolean isGiven(String text) {
        return text != null && !text.isBlank();
    }
}
