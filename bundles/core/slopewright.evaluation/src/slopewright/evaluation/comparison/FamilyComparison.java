package slopewright.evaluation.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ProjectRules;
import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Side;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Proposes every family that may stand at a site. */
public final class FamilyComparison {

    private FamilyComparison() {
    }

    /**
     * Proposes every family at a runway end or approach direction. A family that the rule set does not cover is laid out under the
     * first one that does, for the same wheel clearance, and says so. The verdicts of rules are no part of it.
     *
     * @param evaluation the evaluation of the project; the rule set of the first aid there counts, else that of the project
     * @param host       the runway end or approach direction
     * @return one candidate a family, in the order of the families
     */
    public static List<Candidate> of(ProjectEvaluation evaluation, ApproachHost host) {
        return of(evaluation, host, Optional.empty());
    }

    /** The same on a side of a runway; empty for that of what stands there, else the left. */
    public static List<Candidate> of(ProjectEvaluation evaluation, ApproachHost host, Optional<Side> side) {
        List<Candidate> candidates = new ArrayList<>();
        for (IndicatorFamily family : Families.all()) {
            if (host instanceof RunwayEnd ? family.atRunways() : family.atHelipads()) {
                candidates.add(of(evaluation, host, family, side));
            }
        }
        return candidates;
    }

    /**
     * Proposes one family at a runway end or approach direction, as above.
     *
     * @param evaluation the evaluation of the project
     * @param host       the runway end or approach direction
     * @param family     the family
     * @param side       the side on which it shall stand; empty for that of what stands there, else the left
     * @return the candidate
     */
    public static Candidate of(ProjectEvaluation evaluation, ApproachHost host, IndicatorFamily family, Optional<Side> side) {
        List<AidEvaluation> there = evaluation.aidsOf(host);
        Optional<AidEvaluation> standing = there.stream().filter(aid -> family.key().equals(aid.aid().getFamilyKey())).findFirst();
        RuleSet own = standing.or(() -> there.stream().findFirst()).map(AidEvaluation::rules).orElse(evaluation.rules());
        Optional<RuleSet> covering = own.covers(family.ruleKey()) ? Optional.of(own)
                : RuleSets.all().stream().filter(rules -> rules.covers(family.ruleKey())).findFirst()
                        .map(rules -> ProjectRules.of(evaluation.project(), Optional.of(rules.key() + ":" + rules.edition())));
        FamilyProposal proposal = new FamilyProposal(evaluation, host, family, side, own, covering, standing);
        return proposal.candidate();
    }
}
