package slopewright.checks.internal;

import java.util.List;
import java.util.Optional;

import slopewright.checks.CheckContext;
import slopewright.checks.Findings;
import slopewright.checks.Rule;
import slopewright.checks.Severity;
import slopewright.model.ReviewNote;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Projects;

/** Bulk survey points are not part of these rules. */
public final class SurveyBlockObstaclesRule implements Rule {

    @Override
    public String id() {
        return "OBS-06";
    }

    @Override
    public String title() {
        return "Bulk survey points";
    }

    @Override
    public String description() {
        return "Points of bulk survey blocks that stand above the obstacle surface are entered as obstacles, which a review note on the"
                + " block states.";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    @Override
    public void check(CheckContext context, Findings findings) {
        for (SurveyBlock block : context.project().getSurveyBlocks()) {
            List<ReviewNote> notes = context.project().getReviewNotes().stream()
                    .filter(note -> id().equals(note.getRuleId()) && block.getId() != null && block.getId().equals(note.getElementId()))
                    .toList();
            if (notes.isEmpty()) {
                findings.notEvaluated(block, List.of("comparison of " + Projects.label(block) + " with the obstacle surfaces"),
                        "The points of " + Projects.label(block)
                                + " are kept outside the project and were not compared here. Run the command surface on"
                                + " them, enter what penetrates as obstacles, and leave a review note for this rule on the block.");
                continue;
            }
            boolean resolved = notes.stream().allMatch(note -> Boolean.TRUE.equals(note.getResolved()));
            findings.decide(block, resolved, Optional.empty(), resolved ? "A resolved review note says that the points were compared."
                    : "The review note on the block is not resolved. Enter what penetrates as obstacles and resolve it.", severity());
        }
    }
}
