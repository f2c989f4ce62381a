package slopewright.checks;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

import slopewright.checks.field.ObstacleField;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.aid.AidLayouts;
import slopewright.siting.aid.AidRequests;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;

/** One approach aid with what was worked out from it, once for all rules. */
public final class AidSubject {

    /**
     * A result or the reason why there is none.
     *
     * @param value  the result, empty where there is none
     * @param reason why there is none; empty where there is a result
     * @param <T>    what it is
     */
    public record Attempt<T>(Optional<T> value, String reason) {

        private static <T> Attempt<T> of(Supplier<T> work) {
            try {
                return new Attempt<>(Optional.of(work.get()), "");
            } catch (SitingException e) {
                return new Attempt<>(Optional.empty(), e.getMessage());
            }
        }
    }

    private final ApproachAid aid;
    private final ApproachHost host;
    private final RuleSet rules;
    private final Optional<IndicatorFamily> family;
    private final Attempt<SitingRequest> request;
    private final Attempt<Siting> laid;
    private final Attempt<Siting> solved;
    private final Attempt<SiteFrame> frame;
    private final Function<SiteFrame, ObstacleField> field;

    /** Works out everything once. */
    public AidSubject(ApproachAid aid, ApproachHost host, RuleSet rules) {
        this(aid, host, rules, frame -> ObstacleField.of(Projects.project(aid).map(Project::getAerodrome).map(Aerodrome::getObstacles)
                .map(List::copyOf).orElse(List.of()), frame));
    }

    AidSubject(ApproachAid aid, ApproachHost host, RuleSet rules, Function<SiteFrame, ObstacleField> field) {
        this.field = field;
        this.aid = aid;
        this.host = host;
        this.rules = rules;
        family = Families.find(String.valueOf(aid.getFamilyKey()));
        request = Attempt.of(() -> AidRequests.of(aid));
        laid = Attempt.of(() -> AidLayouts.asLaid(aid, rules));
        solved = Attempt.of(() -> Families.site(String.valueOf(aid.getFamilyKey()), AidRequests.of(aid), rules));
        frame = Attempt.of(() -> SiteFrame.of(host));
    }

    /** Returns the aid. */
    public ApproachAid aid() {
        return aid;
    }

    /** Returns the runway end or approach direction. */
    public ApproachHost host() {
        return host;
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
        return family.filter(one -> rules.covers(one.key())).isPresent();
    }

    /** Returns what the layout starts from. */
    public Attempt<SitingRequest> request() {
        return request;
    }

    /** Returns what the layout gives as it stands. */
    public Attempt<Siting> laid() {
        return laid;
    }

    /** Returns what the rule set would lay out. */
    public Attempt<Siting> solved() {
        return solved;
    }

    /** Returns the frame on the ground. */
    public Attempt<SiteFrame> frame() {
        return frame;
    }

    /**
     * Returns the obstacles of the project in the frame on the ground.
     *
     * @throws SitingException where there is no such frame; the message says why
     */
    public ObstacleField obstacles() {
        return field.apply(frame.value().orElseThrow(() -> new SitingException(frame.reason())));
    }
}
