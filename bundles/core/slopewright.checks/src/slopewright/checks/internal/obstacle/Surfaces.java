package slopewright.checks.internal.obstacle;

import java.util.List;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.messages.Message;
import slopewright.siting.SurfacePlan;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/** What the rules about obstacle surfaces share. */
final class Surfaces {
    private Surfaces() {
    }

    /** Returns the comparison with the obstacle surface; ends the rule where there is no surface, or nothing was surveyed. */
    static SurfaceComparison compared(AidFacts facts) {
        SurfaceComparison found = facts.obstacles();
        if (found.isUnsurveyed() && found.uncompared().isEmpty()) {
            throw noSurvey();
        }
        return found;
    }

    /** Returns what stands around; ends the rule where nothing was surveyed. */
    static Surroundings surroundings(AidFacts facts) {
        Surroundings around = facts.surroundings();
        if (around.count() == 0 && around.uncompared().isEmpty()) {
            throw noSurvey();
        }
        return around;
    }

    private static Stop noSurvey() {
        return Stop.missing(Message.of("missing.obstacle-survey"), Message.of("outcome.no-obstacles"));
    }

    /** Returns where the surface comes from; its datum decides a comparison as much as its dimensions do. */
    static List<Citation> citations(SurfacePlan surface, RuleSet rules) {
        List<Citation> all = new java.util.ArrayList<>(surface.citations());
        rules.find("obstacle.surface-datum").map(CitedValue::citation).ifPresent(all::add);
        return all;
    }
}
