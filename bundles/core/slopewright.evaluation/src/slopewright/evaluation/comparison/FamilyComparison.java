package slopewright.evaluation.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.AidRequests;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.SurfacePlan;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.standards.WheelClearanceTable;

/** Lays out every family that may stand at a site. */
public final class FamilyComparison {

    private FamilyComparison() {
    }

    /**
     * Lays out every family at a runway end or approach direction. A family that the rule set does not cover is laid out under the
     * first one that does, for the same eye height over the threshold, and says so.
     *
     * @param evaluation the evaluation of the project; a rule set that was named for it counts, else that of the first aid there, else
     *                   that of the project
     * @param host       the runway end or approach direction
     * @return one candidate a family, in the order of the families
     */
    public static List<Candidate> of(ProjectEvaluation evaluation, ApproachHost host) {
        RuleSet rules = evaluation.aidsOf(host).stream().findFirst().map(AidEvaluation::rules).orElse(evaluation.rules());
        List<Candidate> candidates = new ArrayList<>();
        for (IndicatorFamily family : Families.all()) {
            if (host instanceof RunwayEnd ? family.atRunways() : family.atHelipads()) {
                candidates.add(candidate(evaluation, host, rules, family));
            }
        }
        return candidates;
    }

    private static Candidate candidate(ProjectEvaluation evaluation, ApproachHost host, RuleSet rules, IndicatorFamily family) {
        Project project = evaluation.project();
        Optional<RuleSet> covering = rules.covers(family.key()) ? Optional.of(rules)
                : RuleSets.all().stream().filter(other -> other.covers(family.key())).findFirst();
        if (covering.isEmpty()) {
            return without(project, family, rules, "no rule set covers it", VisibleRange.none());
        }
        RuleSet used = covering.get();
        List<String> remarks = new ArrayList<>();
        if (used != rules) {
            remarks.add("not covered by " + rules.key() + "; laid out under " + used.key());
        }
        try {
            SitingRequest request = sameEyeHeight(withSlope(host, remarks), rules, used, remarks);
            Optional<String> forbidden = forbidden(family, used, request);
            forbidden.ifPresent(remarks::add);
            Siting siting = Families.site(family.key(), request, used);
            Worst worst = worst(evaluation, host, siting.surface());
            VisibleRange range = VisibleRange.of(project, siting, used);
            return new Candidate(family, used, Optional.of(siting), String.join("; ", remarks), forbidden.isEmpty(), worst.marginM(),
                    worst.obstacle(), range.dayM(), range.nightM(), range.note(),
                    OperationalContext.of(project, family, used, siting.units().size()));
        } catch (SitingException e) {
            return without(project, family, used, e.getMessage(), VisibleRange.published(family.key(), used));
        }
    }

    /** Takes the slope of the first indicator there, or what gives it, where the approach has none of its own; the remark says so. */
    private static SitingRequest.Builder withSlope(ApproachHost host, List<String> remarks) {
        SitingRequest.Builder builder = AidRequests.ofHost(host);
        if (host.getDesiredSlopeDeg() == null) {
            Optional<ApproachAid> there = host.getAids().stream()
                    .filter(aid -> aid.getSlopeDeg() != null || aid.getGroundSpeedKt() != null && aid.getDescentFtmin() != null)
                    .findFirst();
            there.ifPresent(aid -> {
                builder.set(Input.SLOPE, aid.getSlopeDeg()).set(Input.GROUND_SPEED, aid.getGroundSpeedKt())
                        .set(Input.DESCENT, aid.getDescentFtmin());
                remarks.add("at the slope of " + Projects.label(aid));
            });
        }
        return builder;
    }

    private static Candidate without(Project project, IndicatorFamily family, RuleSet rules, String reason, VisibleRange range) {
        return new Candidate(family, rules, Optional.empty(), reason, true, OptionalDouble.empty(), "", range.dayM(), range.nightM(),
                range.note(), OperationalContext.of(project, family, rules, family.unitCounts().get(0)));
    }

    /** Says so where the rule set keeps the family for other code numbers. */
    private static Optional<String> forbidden(IndicatorFamily family, RuleSet rules, SitingRequest request) {
        Optional<CitedValue> from = rules.find(family.key() + ".code-from");
        Optional<CitedValue> to = rules.find(family.key() + ".code-to");
        Optional<Double> code = request.number(Input.CODE);
        if (code.isEmpty() || from.isEmpty() || to.isEmpty() || code.get() >= from.get().value() && code.get() <= to.get().value()) {
            return Optional.empty();
        }
        return Optional.of(String.format(Locale.ROOT, "not allowed for code %.0f: %s keeps it for code %.0f to %.0f (%s)", code.get(),
                rules.key(), from.get().value(), to.get().value(), to.get().citation().text()));
    }

    /**
     * Asks a rule set without wheel clearances for the clearance that the first one desires, or else the first rule set that has a
     * table; the remark says whose it is.
     */
    private static SitingRequest sameEyeHeight(SitingRequest.Builder builder, RuleSet rules, RuleSet used, List<String> remarks) {
        SitingRequest request = builder.build();
        if (used.wheelClearance().isPresent() || request.has(Input.EYE_HEIGHT)) {
            return request;
        }
        Optional<RuleSet> source = rules.wheelClearance().isPresent() ? Optional.of(rules)
                : RuleSets.all().stream().filter(other -> other.wheelClearance().isPresent()).findFirst();
        Optional<WheelClearanceTable.Group> group = source.flatMap(RuleSet::wheelClearance)
                .flatMap(table -> request.number(Input.EYE_TO_WHEEL).flatMap(table::group));
        if (group.isEmpty()) {
            return request;
        }
        if (source.get() != rules) {
            remarks.add(String.format(Locale.ROOT, "%s has no wheel clearances; the %.2f m that %s desires are taken", used.key(),
                    group.get().desiredM(), source.get().key()));
        }
        return request.toBuilder().clearance(SitingRequest.Clearance.CHOSEN).set(Input.CHOSEN_CLEARANCE, group.get().desiredM()).build();
    }

    /** The obstacle that stands highest against the surface. */
    private record Worst(OptionalDouble marginM, String obstacle) {
    }

    private static Worst worst(ProjectEvaluation evaluation, ApproachHost host, Optional<SurfacePlan> surface) {
        Optional<ObstacleComparison> governing = surface
                .flatMap(plan -> evaluation.surroundings(host).compare(plan.geometry()).governing());
        return governing.map(found -> new Worst(OptionalDouble.of(found.marginM()), found.label()))
                .orElse(new Worst(OptionalDouble.empty(), ""));
    }
}
