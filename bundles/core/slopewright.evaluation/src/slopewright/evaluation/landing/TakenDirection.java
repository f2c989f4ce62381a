package slopewright.evaluation.landing;

import java.util.Locale;

import slopewright.evaluation.Proposals;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
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
            throw new SitingException(Message.of("landing.no-helipad", ElementNames.of(host)));
        }
        turn(direction, trueDeg);
        Proposals.layOutForSlope(aid, slopeDeg, rules);
    }

    /**
     * Turns an approach direction, with what names its bearing; what stands there turns along, for it is placed from the direction.
     *
     * @param direction the direction, changed
     * @param trueDeg   landing direction, decimal degrees from true north
     */
    public static void turn(ApproachDirection direction, double trueDeg) {
        rename(direction, trueDeg);
        direction.setTrueBearingDeg(trueDeg);
    }

    /** A designator that holds the bearing in three digits holds the new one from now on; any other stays. */
    private static void rename(ApproachDirection direction, double trueDeg) {
        if (direction.getDesignator() != null && direction.getTrueBearingDeg() != null) {
            direction.setDesignator(direction.getDesignator().replace(digits(direction.getTrueBearingDeg()), digits(trueDeg)));
        }
    }

    private static String digits(double trueDeg) {
        return String.format(Locale.ROOT, "%03d", Math.floorMod(Math.round(trueDeg), LandingDirections.COUNT));
    }
}
