package slopewright.evaluation.comparison;

import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.siting.IndicatorFamily;
import slopewright.siting.Siting;
import slopewright.standards.RuleSet;

/**
 * One family at a site.
 *
 * @param family            the family
 * @param rules             the rule set under which it was laid out
 * @param siting            the layout, empty where it does not fit
 * @param reason            why it does not fit, or what a reader must know; may be empty
 * @param allowed           whether the rule set allows the family for the code number of the runway, as far as both say so
 * @param obstacleMarginM   height of the obstacle surface above the governing obstacle, metres; negative where it stands through;
 *                          empty where there is no surface or no obstacle under it
 * @param governingObstacle name of that obstacle; empty where there is none
 * @param rangeDayM         how far it is seen by day, metres: published, or estimated; empty where neither can be had
 * @param rangeNightM       how far it is seen by night, metres: published, or estimated; empty where neither can be had
 * @param rangeNote         how the ranges were had, and from how far its units are told apart
 * @param context           how many units it needs and what feeds them
 */
public record Candidate(IndicatorFamily family, RuleSet rules, Optional<Siting> siting, String reason, boolean allowed,
        OptionalDouble obstacleMarginM, String governingObstacle, OptionalDouble rangeDayM, OptionalDouble rangeNightM, String rangeNote,
        OperationalContext context) {

    /** Returns whether it can be laid out here and is allowed here. */
    public boolean fits() {
        return siting.isPresent() && allowed;
    }
}
