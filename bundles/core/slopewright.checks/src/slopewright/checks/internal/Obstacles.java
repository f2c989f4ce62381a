package slopewright.checks.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

import slopewright.checks.Findings;
import slopewright.model.Aerodrome;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.siting.remedy.SurveyedShape;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.Citation;

/** The obstacles of a project in the frame of one aid. */
final class Obstacles {

    /**
     * One obstacle.
     *
     * @param obstacle the obstacle of the model
     * @param shape    its shape in the frame
     */
    record Placed(Obstacle obstacle, SurveyedShape shape) {

        String label() {
            return Projects.label(obstacle);
        }

        boolean isShielded() {
            return Boolean.TRUE.equals(obstacle.getShielded());
        }
    }

    private Obstacles() {
    }

    /**
     * Brings all obstacles into the frame of an aid.
     *
     * @param broken receives those that lack a number, with the reason
     * @throws Stop where the project has no obstacles
     */
    static List<Placed> of(AidFacts facts, BiConsumer<Obstacle, String> broken) {
        List<Obstacle> all = Projects.project(facts.aid()).map(Project::getAerodrome).map(Aerodrome::getObstacles).map(List::copyOf)
                .orElse(List.of());
        if (all.isEmpty()) {
            throw Stop.missing("obstacle survey", "Not evaluated: the project has no obstacles. Enter or import the obstacle survey.");
        }
        SiteFrame frame = facts.frame();
        List<Placed> placed = new ArrayList<>();
        for (Obstacle obstacle : all) {
            try {
                placed.add(new Placed(obstacle, SurveyedShape.of(obstacle, frame)));
            } catch (SitingException e) {
                broken.accept(obstacle, e.getMessage());
            }
        }
        return placed;
    }

    /** Brings the obstacles that lack no number into the frame of an aid; the others are findings of rules about the data. */
    static List<Placed> whole(AidFacts facts) {
        List<String> broken = new ArrayList<>();
        return of(facts, (obstacle, reason) -> broken.add(reason));
    }

    /** Returns the obstacle surface; ends the rule where there is none, with the reason that the siting gives. */
    static SurfacePlan surface(AidFacts facts) {
        Siting laid = facts.laid();
        return laid.surface().orElseThrow(() -> {
            String reason = laid.notes().stream().filter(note -> note.startsWith("No obstacle surface")).findFirst()
                    .orElse("No obstacle surface: the rule set gives none for this layout.");
            return Stop.missing("slope or dimensions of the obstacle surface", "Not evaluated. " + reason);
        });
    }

    static Citation citation(SurfacePlan surface) {
        return Findings.weakest(surface.citations());
    }
}
