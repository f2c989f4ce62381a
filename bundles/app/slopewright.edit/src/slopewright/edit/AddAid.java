package slopewright.edit;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.Proposals;
import slopewright.evaluation.comparison.Candidate;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.Side;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;

/** Places an approach aid at a runway end or helipad, laid out as a rule set has it. */
public final class AddAid extends RecordedEdit {

    private final ApproachHost host;
    private final RuleSet rules;
    private final ApproachAid aid;

    private AddAid(ApproachHost host, RuleSet rules, ApproachAid aid) {
        super("Add " + aid.getName());
        this.host = host;
        this.rules = rules;
        this.aid = aid;
    }

    /**
     * Places an aid. The layout is solved when the edit is carried out.
     *
     * @param host      the runway end or approach direction
     * @param familyKey key of the family
     * @param rules     the rule set that lays it out
     * @param side      the side on which its units stand, seen in the landing direction
     * @return the edit; carrying it out throws a {@link SitingException} where no layout can be made, with the reason
     * @throws SitingException where the family is unknown
     */
    public static AddAid solve(ApproachHost host, String familyKey, RuleSet rules, Side side) {
        ApproachAid aid = Proposals.newAid(host, familyKey, rules, side);
        return new AddAid(host, rules, aid);
    }

    /**
     * Places an aid that a comparison of families proposed, laid out as it was proposed.
     *
     * @param host      the runway end or approach direction at which it was proposed
     * @param candidate a family that could be laid out
     * @param aidRules  whether the aid names the rule set under which it was laid out as its own
     * @return the edit
     * @throws SitingException where the family could not be laid out there, with the reason
     */
    public static AddAid proposed(ApproachHost host, Candidate candidate, boolean aidRules) {
        ApproachAid aid = candidate.aidFor(Projects.project(host).orElseThrow());
        if (aidRules) {
            aid.setRuleSetKey(candidate.rules().key() + ":" + candidate.rules().edition());
        }
        return new AddAid(host, candidate.rules(), aid);
    }

    /** Returns the aid that is placed; it has its units and ids once the edit was carried out. */
    public ApproachAid aid() {
        return aid;
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return List.of(host);
    }

    @Override
    protected void apply() {
        Project project = Projects.project(host).orElseThrow(() -> new EditException(Message.said("edit.no-project",
                Projects.label(host))));
        host.getAids().add(aid);
        if (aid.getUnits().isEmpty()) {
            aid.setSlopeDeg(Proposals.layOut(aid, rules).slopeDeg());
        }
        Ids.assign(aid, project);
    }

    static double datumM(ApproachHost host) {
        return AidLayouts.datumM(host).orElseThrow(() -> new SitingException(
                Message.of("evaluation.refused.no-elevation", ElementNames.of(host))));
    }
}
