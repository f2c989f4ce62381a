package slopewright.evaluation.landing;

import slopewright.evaluation.Proposals;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;

/** Takes a landing direction and a slope: the one place where an aid is turned to them. */
public final class TakenDirection {

    private TakenDirection() {
    }

    /**
     * Turns the approach direction of an aid and lays the aid out anew for a slope.
     *
     * @param aid      an aid in an approach direction of a helipad, changed
     * @param trueDeg  landing direction, decimal degrees from true north
     * @param slopeDeg slope, decimal degrees
     * @param rules    its rule set
     * @throws SitingException where it is at no helipad, or no layout can be made; the message says why
     */
    public static void take(ApproachAid aid, double trueDeg, double slopeDeg, RuleSet rules) {
        ApproachHost host = Projects.host(aid).orElseThrow();
        if (!(host instanceof ApproachDirection direction)) {
            throw new SitingException(Message.of("landing.no-helipad", Words.name(Projects.label(host))));
        }
        direction.setTrueBearingDeg(trueDeg);
        Proposals.layOutForSlope(aid, slopeDeg, rules);
    }
}
