package slopewright.checks.internal.obstacle;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import slopewright.checks.Cure;
import slopewright.checks.Measure;
import slopewright.checks.Outcome;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.Shielding;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.evaluation.remedy.OtherDirection;
import slopewright.evaluation.remedy.Remedies;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Obstacle;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.siting.SurfacePlan;
import slopewright.standards.Citation;

/**
 * Nothing stands above the obstacle protection surface. A penetration is always of severity fail: an aeroplane that follows the signal
 * may strike what stands there. Where nothing stands through and no survey covers the surface, nobody knows. One that a named object or
 * study shields is accepted; a claim that names neither is to be cleared up.
 */
public final class ObstacleSurfaceRule extends AidRule {
    /** Made by the service loader. */
    public ObstacleSurfaceRule() {
        super("OBS-01", Severity.FAIL);
    }

    @Override
    public Cure cure() {
        return Cure.OBSTACLE_SURFACE;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        SurfaceComparison compared = Surfaces.compared(facts);
        SurfacePlan plan = facts.laid().surface().orElseThrow();
        Argument aid = ElementNames.of(facts.aid());
        for (Uncompared uncompared : compared.uncompared()) {
            if (uncompared.element() instanceof Obstacle) {
                outcomes.notEvaluated(uncompared.element(), List.of(uncompared.reason()),
                        Message.of("OBS-01.uncompared", aid, uncompared.reason()));
            }
        }
        List<Citation> citations = Surfaces.citations(plan, facts.rules());
        if (!facts.evaluation().isProposal()) {
            EachKey key = new EachKey(facts.aid().getId(), Projects.label(facts.aid()), plan.geometry(), citations);
            outcomes.addAll(facts.surroundings().keep(key, () -> each(facts, compared, citations)));
        }
        whole(facts, compared, plan, citations, outcomes);
    }

    /** What decides the outcomes of the obstacles, beside the obstacles. */
    private record EachKey(String aidId, String aidLabel, ProtectionSurface surface, List<Citation> citations) {
        /** Spelled out: what a record has by itself is written anew at every start. */
        @Override
        public boolean equals(Object other) {
            return other instanceof EachKey that && Objects.equals(aidId, that.aidId) && aidLabel.equals(that.aidLabel)
                    && surface.equals(that.surface) && citations.equals(that.citations);
        }

        @Override
        public int hashCode() {
            int hash = Objects.hashCode(aidId);
            hash = 31 * hash + aidLabel.hashCode();
            hash = 31 * hash + surface.hashCode();
            return 31 * hash + citations.hashCode();
        }
    }

    /** What decides the remedies, beside the obstacles. */
    private record RemedyKey(EachKey each, Siting laid, SitingRequest request, String rules) {
    }

    /** What decides the other landing directions: the surveys as well. */
    private record DirectionKey(RemedyKey remedies, List<List<Object>> surveys) {
    }

    private List<Outcome> each(AidFacts facts, SurfaceComparison compared, List<Citation> citations) {
        OutcomeCollector each = new OutcomeCollector(this);
        compared.inside().stream().filter(inside -> inside.obstacle().isPresent())
                .forEach(inside -> single(facts, inside, compared, citations, each));
        return each.outcomes();
    }

    private static void single(AidFacts facts, ObstacleComparison found, SurfaceComparison compared, List<Citation> citations,
            OutcomeCollector outcomes) {
        Obstacle obstacle = found.obstacle().orElseThrow();
        Argument aid = ElementNames.of(facts.aid());
        Argument before = Words.m(-found.worst().point().alongM());
        Message text = Message.of(found.isPenetrating() ? "OBS-01.above" : "OBS-01.below", Words.name(found.label()),
                Words.margin(Math.abs(found.marginM())), aid, before);
        if (found.isPenetrating() && found.shielding().kind() == Shielding.Kind.CLAIMED) {
            outcomes.notEvaluated(obstacle, List.of(Message.of("missing.shielding")), Message.of("OBS-01.claimed", text));
            return;
        }
        OutcomeCollector.Entry entry = outcomes.about(obstacle).measured(Measure.atMost(found.worst().point().heightM(),
                found.worst().limitM(), "m").strict()).citing(citations).saying(text)
                .advising(Boolean.TRUE.equals(obstacle.getTemporary()) ? "temporary" : "permanent");
        surfaceStep(found, compared.surface()).ifPresent(step -> entry.steps(List.of(step)));
        if (found.isPenetrating() && found.shielding().isBacked()) {
            entry.met(true).saying(Message.of("OBS-01.shielded", text, Words.name(found.shielding().by())));
        }
        entry.add();
    }

    /** Returns how the height of the surface follows, where the governing place is one at which it can be written down. */
    private static Optional<Message> surfaceStep(ObstacleComparison found, ProtectionSurface surface) {
        double outward = (found.worst().limitM() - surface.startHeightM()) / Math.tan(Math.toRadians(surface.slopeDeg()));
        return Double.isFinite(outward) ? Optional.of(Message.of("step.surface-height", Words.m(surface.startHeightM()), Words.m(outward),
                Words.deg(surface.slopeDeg()), Words.m(found.worst().limitM()))) : Optional.empty();
    }

    private static void whole(AidFacts facts, SurfaceComparison compared, SurfacePlan plan, List<Citation> citations,
            OutcomeCollector outcomes) {
        Argument surveyed = Words.count(compared.surveyed());
        Argument inside = Words.count(compared.inside().stream()
                .mapToLong(found -> found.block().map(ObstacleComparison.BlockCount::inside).orElse(1)).sum());
        boolean claimed = compared.inside().stream().anyMatch(found -> found.isPenetrating()
                && found.shielding().kind() == Shielding.Kind.CLAIMED);
        boolean penetrated = compared.inside().stream().anyMatch(found -> found.isPenetrating()
                && found.shielding().kind() == Shielding.Kind.NONE);
        boolean covered = SurveyCover.of(facts).covers(compared.surface());
        if (!penetrated && (claimed || !covered || !compared.uncompared().isEmpty())) {
            List<Message> missing = new ArrayList<>(compared.uncompared().stream().map(Uncompared::reason).toList());
            if (claimed) {
                missing.add(Message.of("missing.shielding"));
            }
            if (!covered) {
                missing.add(Message.of("missing.survey-over", ElementNames.of(facts.aid())));
            }
            outcomes.notEvaluated(facts.aid(), missing, Message.of("OBS-01.incomplete", surveyed, inside));
            return;
        }
        Optional<ObstacleComparison> governing = compared.governing();
        if (governing.isEmpty()) {
            outcomes.about(facts.aid()).met(true).citing(citations).saying("nothing-inside", surveyed).add();
            return;
        }
        ObstacleComparison worst = governing.get();
        OutcomeCollector.Entry entry = outcomes.about(facts.aid()).measured(Measure.atLeast(worst.marginM(), 0, "m").strict())
                .met(!penetrated).citing(citations)
                .saying(worst.isPenetrating() ? worst.shielding().isBacked() ? "governing-shielded" : "governing-above" : "governing-below",
                        surveyed, inside, Words.name(worst.label()), Words.margin(Math.abs(worst.marginM())),
                        Words.name(worst.shielding().by()));
        if (penetrated && !facts.evaluation().isProposal()) {
            RemedyKey key = new RemedyKey(new EachKey(facts.aid().getId(), Projects.label(facts.aid()), plan.geometry(), citations),
                    facts.laid(), facts.request(), facts.rules().key());
            RemedyVerdicts verdicts = new RemedyVerdicts(facts.evaluation(), "OBS-01");
            List<Message> remedies = new ArrayList<>(facts.surroundings().keep(key, () -> Remedies.of(facts.evaluation())).stream()
                    .map(verdicts::of).toList());
            facts.surroundings().keep(new DirectionKey(key, SurveyCover.reaches(facts)), () -> OtherDirection.of(facts.evaluation()))
                    .ifPresent(remedies::add);
            entry.advising("remedies", Words.list(remedies));
        }
        entry.add();
    }
}
