package slopewright.checks.internal;

import slopewright.checks.Findings;
import slopewright.checks.field.ObstacleField;
import slopewright.siting.Siting;
import slopewright.siting.SurfacePlan;
import slopewright.standards.Citation;
import slopewright.standards.RuleSet;

/** The obstacles of a project in the frame of one aid. */
final class Obstacles {

    private Obstacles() {
    }

    /**
     * Returns all obstacles in the frame of an aid.
     *
     * @throws Stop where the project has no obstacles
     */
    static ObstacleField of(AidFacts facts) {
        ObstacleField field = facts.obstacles();
        if (field.count() == 0 && field.broken().isEmpty()) {
            throw Stop.missing("obstacle survey", "Not evaluated: the project has no obstacles. Enter or import the obstacle survey.");
        }
        return field;
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

    /** Returns whether a comparison rests on an unconfirmed value: the datum of the surface decides it as much as its dimensions do. */
    static boolean isToConfirm(Citation surface, RuleSet rules) {
        return surface.toConfirm() || rules.find("obstacle.surface-datum").filter(datum -> datum.citation().toConfirm()).isPresent();
    }

    static Citation citation(SurfacePlan surface) {
        return Findings.weakest(surface.citations());
    }
}
