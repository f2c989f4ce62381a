package slopewright.checks.internal.obstacle;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.siting.SurfacePlan;
import slopewright.standards.Citation;
import slopewright.standards.CitedChoice;
import slopewright.standards.RuleSet;

/** What the rules about obstacle surfaces share. */
public final class Surfaces {
    private Surfaces() {
    }

    /**
     * Returns the comparison with the obstacle surface; ends the rule where there is no surface, or nothing is known of what stands
     * there.
     */
    static SurfaceComparison compared(AidFacts facts) {
        SurfaceComparison found = facts.obstacles();
        if (found.isUnsurveyed() && found.uncompared().isEmpty() && !SurveyCover.of(facts).covers(found.surface())) {
            throw noSurvey();
        }
        return found;
    }

    /** Returns the comparison with an area of another rule; ends the rule where nothing is known of what stands there. */
    public static SurfaceComparison compared(AidFacts facts, ProtectionSurface area) {
        Surroundings around = facts.surroundings();
        if (around.count() == 0 && around.uncompared().isEmpty() && !SurveyCover.of(facts).covers(area)) {
            throw noSurvey();
        }
        return around.compare(area);
    }

    private static Stop noSurvey() {
        return Stop.missing(Message.of("missing.obstacle-survey"), Message.of("outcome.no-obstacles"));
    }

    /** Returns why something could not be compared in one of several comparisons, each element once. */
    static List<Message> open(List<SurfaceComparison> compared) {
        Map<Object, Message> reasons = new IdentityHashMap<>();
        List<Message> open = new ArrayList<>();
        for (SurfaceComparison one : compared) {
            for (Uncompared left : one.uncompared()) {
                if (reasons.put(left.element(), left.reason()) == null) {
                    open.add(left.reason());
                }
            }
        }
        return open;
    }

    /** Returns where the surface comes from; its datum decides a comparison as much as its dimensions do. */
    static List<Citation> citations(SurfacePlan surface, RuleSet rules) {
        List<Citation> all = new ArrayList<>(surface.citations());
        rules.choice("obstacle.surface-datum").map(CitedChoice::citation).ifPresent(all::add);
        return all;
    }
}
