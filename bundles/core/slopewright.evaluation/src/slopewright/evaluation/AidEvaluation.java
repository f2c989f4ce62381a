package slopewright.evaluation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.ObstacleField;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.SurveyReach;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.OnSlopeBound;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;
import slopewright.standards.WheelClearanceTable;

/**
 * What one approach aid gives: under its own rule set, as its units stand (or as a copy of it proposes), against everything that stands
 * there. Every place that shows a figure of an aid reads it here. It holds no verdict. Worked out when it is first asked for; the aid must
 * not change while its evaluation is in use. Not for several threads.
 */
public final class AidEvaluation {
    private final ApproachAid aid;
    private final ApproachHost host;
    private final RuleSet rules;
    private final Function<SiteFrame, Surroundings> surroundings;
    private final Function<String, Optional<IndicatorFamily>> families;
    private final Optional<IndicatorFamily> family;
    private final boolean proposal;
    private Attempt<SitingRequest> request;
    private Attempt<Siting> siting;
    private Attempt<Siting> solved;
    private Attempt<SiteFrame> frame;
    private Attempt<SurfaceComparison> obstacles;

    AidEvaluation(ApproachAid aid, ApproachHost host, RuleSet rules, Function<SiteFrame, Surroundings> surroundings,
            Function<String, Optional<IndicatorFamily>> families, boolean proposal) {
        this.aid = aid;
        this.host = host;
        this.rules = rules;
        this.surroundings = surroundings;
        this.families = families;
        this.proposal = proposal;
        family = families.apply(String.valueOf(aid.getFamilyKey()));
    }

    /**
     * Evaluates one aid of a project as it stands, or a copy of it in a copy of its surroundings.
     *
     * @param aid   an aid in a runway end or approach direction of a project
     * @param rules its rule set, with the overrides and confirmations of the project
     * @param cache what earlier evaluations of the same project left
     * @return the evaluation
     */
    public static AidEvaluation of(ApproachAid aid, RuleSet rules, EvaluationCache cache) {
        return new AidEvaluation(aid, Projects.host(aid).orElseThrow(), rules,
                frame -> cache.surroundings(Projects.project(aid).orElseThrow(), frame), Families::find, false);
    }

    /**
     * Evaluates one aid of a project as it stands, under its own rule set.
     *
     * @param aid an aid in a runway end or approach direction of a project
     * @return the evaluation
     * @throws IllegalArgumentException where its rule set is unknown, or an override does not fit it
     */
    public static AidEvaluation of(ApproachAid aid) {
        return of(aid, ProjectRules.of(Projects.project(aid).orElseThrow(), aid, Optional.empty()), new EvaluationCache());
    }

    /**
     * Evaluates another aid at the same place under the same rule set against the same surroundings: a proposal for this one.
     *
     * @param proposal a copy of the aid, changed; it hangs in a copy of the runway or helipad with the same place
     * @return the evaluation of the proposal
     */
    public AidEvaluation propose(ApproachAid proposal) {
        return new AidEvaluation(proposal, Projects.host(proposal).orElseThrow(), rules, surroundings, families, true);
    }

    /**
     * Evaluates the aid as it would be after a change, under the same rule set against the same surroundings. Nothing but a copy is
     * changed.
     *
     * @param change makes the change on a copy of the aid, which hangs in a copy of its project without what stands around
     * @return the evaluation of the changed copy
     */
    public AidEvaluation trial(Consumer<ApproachAid> change) {
        ApproachAid copy = TrialCopies.of(aid);
        change.accept(copy);
        return propose(copy);
    }

    /** Returns the aid. */
    public ApproachAid aid() {
        return aid;
    }

    /** Returns whether a copy is evaluated that proposes something, and not what stands in the project. */
    public boolean isProposal() {
        return proposal;
    }

    /**
     * Returns whether an obstacle survey of the place reaches over the whole of the obstacle surface: only that says that nothing else
     * stands there than what is entered.
     */
    public boolean isSurveyed() {
        return obstacles().value().filter(found -> SurveyReach.covers(project().getAerodrome(), host, found.surface())).isPresent();
    }

    /** Returns the runway end or approach direction. */
    public ApproachHost host() {
        return host;
    }

    /** Returns the project in which it stands. */
    public Project project() {
        return Projects.project(host).orElseThrow();
    }

    /** Returns the rule set, with the overrides and confirmations of the project. */
    public RuleSet rules() {
        return rules;
    }

    /** Returns the family, empty where the key is unknown. */
    public Optional<IndicatorFamily> family() {
        return family;
    }

    /** Returns whether the family is known and the rule set covers it. */
    public boolean isCovered() {
        return family.filter(found -> rules.covers(found.ruleKey())).isPresent();
    }

    /** Returns what the layout starts from. */
    public Attempt<SitingRequest> request() {
        if (request == null) {
            request = Attempt.of(() -> AidRequests.of(aid));
        }
        return request;
    }

    private Attempt<IndicatorFamily> known() {
        return Attempt.of(() -> family.orElseGet(() -> Families.get(String.valueOf(aid.getFamilyKey()))));
    }

    /** Returns what the units give as they stand. */
    public Attempt<Siting> siting() {
        if (siting == null) {
            siting = known().then(found -> Attempt.of(() -> AidLayouts.evaluate(aid, found, rules)));
        }
        return siting;
    }

    /** Returns what the rule set would lay out on its ground for lenses as high above it as they stand, or as the equipment has them. */
    public Attempt<Siting> solved() {
        if (solved == null) {
            solved = known().then(found -> Attempt.of(() -> Proposals.solve(aid, found, rules)));
        }
        return solved;
    }

    /**
     * Returns every value on which the layout rests, as it stands and as the rule set would have it. Those that place the edges of sectors
     * are left out where the sectors of the unit in hand stand in for them.
     */
    public List<Siting.CitedUse> values() {
        boolean entered = aid.getEquipment() != null && !aid.getEquipment().getSectors().isEmpty();
        return Stream.of(siting(), solved()).flatMap(attempt -> attempt.value().stream()).flatMap(found -> found.citations().stream())
                .filter(use -> !entered || !use.isSector()).toList();
    }

    /** Returns where those values come from. */
    public List<Citation> restsOn() {
        return values().stream().map(Siting.CitedUse::citation).distinct().toList();
    }

    /**
     * Returns what the rule set would lay out for lenses at the very level at which they stand, whatever the ground is: what the distance
     * and the eye height of a layout that stands are held against.
     */
    public Attempt<Siting> solvedAtLens() {
        return request().then(start -> siting().then(found -> known().then(kind -> Attempt.of(() -> Families.site(kind, start.toBuilder()
                .ground(null).set(Input.GROUND_SLOPE, null).set(Input.LENS_ABOVE_GROUND, null)
                .set(Input.LENS_HEIGHT, found.reference().heightM()).build(), rules)))));
    }

    /** Returns how high the lenses of a layout that is solved stand. */
    public Attempt<LensLevel> lensLevel() {
        return request().then(start -> Attempt.success(LensLevel.of(aid, start)));
    }

    /** Returns whether the aid has units, so that something stands. */
    public boolean isLaidOut() {
        return !aid.getUnits().isEmpty();
    }

    /** Returns what the units give as they stand, or what the rule set would lay out where the aid has no units yet. */
    public Attempt<Siting> layout() {
        return isLaidOut() ? siting() : solved();
    }

    /** Returns the frame on the ground. */
    public Attempt<SiteFrame> frame() {
        if (frame == null) {
            frame = Attempt.of(() -> SiteFrame.of(host));
        }
        return frame;
    }

    /** Returns everything that stands around it, in its frame; a reason where there is no frame on the ground. */
    public Attempt<Surroundings> surroundings() {
        return frame().then(found -> Attempt.of(() -> surroundings.apply(found)));
    }

    /**
     * Returns everything that stands there against the obstacle surface of the layout as it stands; a reason where there is no surface, or
     * no frame on the ground.
     */
    public Attempt<SurfaceComparison> obstacles() {
        if (obstacles == null) {
            obstacles = siting().then(found -> found.surface().isPresent() ? Attempt.success(found.surface().get())
                    : Attempt.<slopewright.siting.SurfacePlan>failure(found.noSurface().orElse(Message.of("siting.no-surface"))))
                    .then(plan -> surroundings().then(around -> Attempt.of(() -> around.compare(plan.geometry()))));
        }
        return obstacles;
    }

    /**
     * Compares an obstacle that is proposed, such as a copy that was moved, with the obstacle surface of the layout as it stands.
     *
     * @param proposed an obstacle, which need not be part of the project
     * @return the comparison, empty where it lies outside; a reason where there is no surface, or the obstacle lacks something
     */
    public Attempt<Optional<ObstacleComparison>> compare(Obstacle proposed) {
        return obstacles().then(known -> {
            ObstacleField field = ObstacleField.of(List.of(proposed), frame().orThrow());
            return field.unplaced().isEmpty() ? Attempt.success(field.compare(known.surface()).stream().findFirst())
                    : Attempt.failure(field.unplaced().get(0).reason());
        });
    }

    /** Returns what stands highest against the obstacle surface, empty where nothing lies within, or nobody knows. */
    public Optional<ObstacleComparison> governing() {
        return obstacles().value().flatMap(SurfaceComparison::governing);
    }

    /**
     * Returns the margin: the height of the obstacle surface above the governing obstacle, the accuracy of its survey on the safe side;
     * metres, negative where it stands through; empty where nothing lies within, or nobody knows.
     */
    public OptionalDouble marginM() {
        return obstacles().value().map(SurfaceComparison::marginM).orElseGet(OptionalDouble::empty);
    }

    /**
     * Returns what bounds the on-slope signal for the least eye height that is published of an aid at a runway: the edge less what the rule
     * set takes off it for that (Annex 14 Vol I, 2.12 e), 2'), whatever is taken off for the siting. Empty where nobody knows, and where
     * the rule set takes nothing off for it.
     */
    public Optional<PublishedHeight> published() {
        return Projects.helipad(host).isPresent() ? Optional.empty() : siting().value().flatMap(found -> family().flatMap(family -> rules
                .find(family.ruleKey() + ".published-eye-height-allowance-min").flatMap(taken -> family.lowestOnSlope(found.units(),
                        Angles.minutesToDeg(taken.value())).map(bound -> new PublishedHeight(bound, taken)))));
    }

    /**
     * The least eye height that is published.
     *
     * @param bound what bounds it, and how high it is
     * @param taken what the rule set takes off the edge, minutes
     */
    public record PublishedHeight(OnSlopeBound bound, CitedValue taken) {
    }

    /** Returns the wheel clearance of each aeroplane group in regular use that has a height; empty at helipads, or where nobody knows. */
    public List<WheelClearance> wheelClearances() {
        if (Projects.helipad(host).isPresent() || siting().value().isEmpty()) {
            return List.of();
        }
        double meht = siting().value().get().mehtM();
        Optional<WheelClearanceTable> table = rules.wheelClearance();
        return host.getRegularGroups().stream().filter(group -> group.getEyeToWheelM() != null)
                .map(group -> new WheelClearance(group, group.getEyeToWheelM(), meht - group.getEyeToWheelM(),
                        table.flatMap(found -> found.group(group.getEyeToWheelM())))).toList();
    }
}
