package slopewright.siting.witness;

import java.util.List;
import java.util.Optional;
import java.util.Random;

import slopewright.siting.Families;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.witness.Approach;
import slopewright.witness.Builder;
import slopewright.witness.Demand;
import slopewright.witness.Edition;
import slopewright.witness.Family;
import slopewright.witness.Ground;
import slopewright.witness.Layout;
import slopewright.witness.Plan;

/**
 * One random layout, said to both implementations in their own words.
 *
 * @param name     combination and number, for messages
 * @param plan     what the witness is to lay out
 * @param ground   its ground
 * @param demand   what fixes its distance
 * @param code     code number
 * @param approach approach
 * @param request  the same for the product
 */
record Trial(String name, Plan plan, Ground ground, Demand demand, int code, Approach approach, SitingRequest request) {

    /** Number of layouts of each family under each rule set; more for a soak. */
    private static final int USUAL = 12;
    private static final long SEED_STEP = 0x9E3779B97F4A7C15L;

    static int count() {
        return Integer.getInteger("slopewright.witness.cases", USUAL);
    }

    /** Returns numbers that are the same in every run; others where a seed is named, so that a soak can go on where another ended. */
    static Random random(long number) {
        return new Random(number + Long.getLong("slopewright.witness.seed", 0) * SEED_STEP);
    }

    /** Returns every family under every rule set that covers it on both sides, as {@code edition family}. */
    static List<String> combinations() {
        return List.of(Edition.values()).stream().flatMap(edition -> List.of(Family.values()).stream()
                .filter(family -> edition.covers(family) && rules(edition).covers(family.key()))
                .map(family -> edition.key() + " " + family.key())).toList();
    }

    static RuleSet rules(Edition edition) {
        return RuleSets.find(edition.key()).orElseThrow();
    }

    static Edition edition(String combination) {
        return Edition.of(combination.substring(0, combination.indexOf(' ')));
    }

    static Family family(String combination) {
        String key = combination.substring(combination.indexOf(' ') + 1);
        return List.of(Family.values()).stream().filter(family -> family.key().equals(key)).findFirst().orElseThrow();
    }

    boolean atHelipad() {
        return demand instanceof Demand.Hover;
    }

    /** Returns the layout of the product; empty where it refuses. */
    Optional<Siting> product() {
        try {
            return Optional.of(Families.site(plan.family().key(), request, rules(plan.edition())));
        } catch (SitingException e) {
            return Optional.empty();
        }
    }

    /**
     * Returns the distance of the witness with every level difference made good. Fig 5-19 d corrects for it; the 0.3 m under which the
     * older edition lets it be (from memory) is a leave, not a duty, and the product never takes it.
     */
    double distanceM() {
        return slopewright.witness.Siting.exactDistanceM(plan, ground, demand);
    }

    Layout layout(double distanceM) {
        return Builder.at(plan, ground, distanceM);
    }
}
