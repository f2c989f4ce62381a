package slopewright.checks.internal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.checks.AidSubject;
import slopewright.checks.CheckContext;
import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Rule;
import slopewright.checks.Severity;
import slopewright.checks.field.SurveyField;
import slopewright.geometry.Penetration;
import slopewright.model.ReviewNote;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.standards.Citation;

/** Bulk survey points are compared with the obstacle surfaces like obstacles. */
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
        return "No point of a bulk survey block rises above an obstacle surface, the accuracy of the survey added on the safe side; what"
                + " does is entered as an obstacle and judged there, which a resolved review note on the block states.";
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
                compare(context, block, findings);
                continue;
            }
            boolean resolved = notes.stream().allMatch(note -> Boolean.TRUE.equals(note.getResolved()));
            findings.decide(block, resolved, Optional.empty(), resolved
                    ? "A resolved review note says that what penetrates was entered as obstacles."
                    : "The review note on the block is not resolved. Enter what penetrates as obstacles and resolve it.", severity());
        }
    }

    private void compare(CheckContext context, SurveyBlock block, Findings findings) {
        for (AidSubject aid : context.aids()) {
            if (!aid.isCovered()) {
                continue;
            }
            String surfaceOf = Projects.label(block) + " and the obstacle surface of " + Projects.label(aid.aid());
            Optional<SurfacePlan> surface = aid.laid().value().flatMap(laid -> laid.surface());
            if (surface.isEmpty() || aid.frame().value().isEmpty()) {
                findings.notEvaluated(block, List.of("obstacle surface of " + Projects.label(aid.aid())), "Not compared: " + surfaceOf
                        + "; the layout has no surface on the ground.");
                continue;
            }
            try {
                compare(context.survey(block, aid.frame().value().get()), surface.get(), aid, block, findings);
            } catch (SitingException e) {
                findings.notEvaluated(block, List.of("points of " + Projects.label(block)), "Not compared: " + surfaceOf + ": "
                        + e.getMessage() + ".");
            }
        }
    }

    private void compare(SurveyField points, SurfacePlan surface, AidSubject aid, SurveyBlock block, Findings findings) {
        SurveyField.Result result = points.compare(surface.geometry());
        Citation citation = Obstacles.citation(surface);
        String seen = String.format(Locale.ROOT, "%,d points of %s, %,d of them within the surface of %s", points.count(),
                Projects.label(block), result.inside(), Projects.label(aid.aid()));
        Optional<Penetration> governing = result.governing();
        if (governing.isEmpty()) {
            findings.decide(block, true, citation, seen + ".");
            return;
        }
        boolean toConfirm = Obstacles.isToConfirm(citation, aid.rules());
        double excess = governing.get().excessM();
        String worst = "; point " + points.id(result.worst()) + ", " + Words.m(-governing.get().point().alongM())
                + " before the threshold, its survey accuracy added, stands " + Words.m(Math.abs(excess));
        findings.compare(block, Measure.atMost(excess, 0, "m"), Optional.of(citation), toConfirm, seen + worst + (excess <= 0 ? " below."
                : String.format(Locale.ROOT, " above, %,d points in all. Remove or lower what they mark, or enter it as obstacles with what"
                + " shields them and leave a resolved review note for this rule on the block.", result.above())), severity());
    }
}
