package slopewright.siting;

import java.util.Objects;
import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.standards.Citation;
import slopewright.standards.CitedChoice;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleChoice;
import slopewright.standards.RuleSet;

/**
 * How a light that flashes or pulsates goes on and off in time. Flashes are on for half of each period, which RD 862/2009 (Annex 14
 * Vol II) 5.3.5.9 recommends. Pulses follow one of two published descriptions that exclude each other; what neither gives a number for
 * is drawn by an assumption, and said so.
 *
 * @param rateHz   how many times a second it comes on; zero where it is steady or dark
 * @param onShare  share of each period in which it is on, from 0 to 1
 * @param source   where the rate comes from; empty where it is assumed
 * @param isAssumed whether a number that no source gives decides what is shown
 */
public record LightRhythm(double rateHz, double onShare, Optional<Citation> source, boolean isAssumed) {

    /** Always on. */
    public static final LightRhythm STEADY = new LightRhythm(0, 1, Optional.empty(), false);
    /** Never on. */
    public static final LightRhythm DARK = new LightRhythm(0, 0, Optional.empty(), false);
    /** Least flash rate of the heliport text, taken where a rule set gives none. */
    public static final double USUAL_FLASH_HZ = 2;
    /** How far from the path pulses that rise in rate reach their quickest; an assumption, decimal degrees. */
    public static final double QUICKEST_AT_DEG = 1.5;
    /** Assumed rate at the edge of the path. */
    public static final double SLOWEST_PULSE_HZ = 1;
    /** Assumed quickest rate; not over three a second, the limit that protects photosensitive people. */
    public static final double QUICKEST_PULSE_HZ = 3;
    /** How far from the path pulses that shrink end; an assumption for the limit of visibility, decimal degrees. */
    public static final double SHORTEST_AT_DEG = 3;

    private static final double FLASH_ON_SHARE = 0.5;
    private static final double LEAST_ON_SHARE = 0.05;
    private static final String FLASH_KEY = ".flash-rate-hz";

    /** Refuses missing parts and numbers out of range. */
    public LightRhythm {
        Objects.requireNonNull(source);
        if (!(rateHz >= 0) || !(onShare >= 0 && onShare <= 1)) {
            throw new IllegalArgumentException("a rhythm needs a rate of zero or more and a share from 0 to 1");
        }
    }

    /**
     * Returns the rhythm of what a unit shows.
     *
     * @param family key of the family
     * @param rules  the rule set
     * @param seen   what is seen of the unit
     * @return the rhythm
     */
    public static LightRhythm of(String family, RuleSet rules, SeenUnit seen) {
        return switch (seen.light().form()) {
            case STEADY -> STEADY;
            case OFF -> DARK;
            case FLASHING -> flashing(family, rules);
            case PULSATING -> pulsating(family, rules, deviationDeg(seen));
        };
    }

    private static LightRhythm flashing(String family, RuleSet rules) {
        Optional<CitedValue> rate = rules.find(family + FLASH_KEY);
        return new LightRhythm(rate.map(CitedValue::value).orElse(USUAL_FLASH_HZ), FLASH_ON_SHARE, rate.map(CitedValue::citation),
                rate.isEmpty());
    }

    private static LightRhythm pulsating(String family, RuleSet rules, double deviationDeg) {
        Optional<CitedChoice> form = rules.choice(family + ".pulse-form");
        Optional<CitedValue> rate = rules.find(family + ".pulse-rate-hz");
        if (form.isPresent() && form.get().word() == RuleChoice.LENGTH && rate.isPresent()) {
            double share = Math.max(LEAST_ON_SHARE, Math.min(1, 1 - deviationDeg / SHORTEST_AT_DEG));
            return new LightRhythm(rate.get().value(), share, rate.map(CitedValue::citation), true);
        }
        double far = Math.max(0, Math.min(1, deviationDeg / QUICKEST_AT_DEG));
        double risen = SLOWEST_PULSE_HZ + (QUICKEST_PULSE_HZ - SLOWEST_PULSE_HZ) * far;
        return new LightRhythm(risen, FLASH_ON_SHARE, form.map(CitedChoice::citation), true);
    }

    /** Returns how far into the sector the eye is, from the edge toward the path, decimal degrees. */
    private static double deviationDeg(SeenUnit seen) {
        double least = Double.POSITIVE_INFINITY;
        for (SectorEdge edge : seen.unit().edges()) {
            boolean bounds = edge.above().equals(seen.light()) || edge.below().equals(seen.light());
            if (bounds) {
                double half = Angles.minutesToDeg(edge.widthMinutes()) / 2;
                least = Math.min(least, Math.max(0, Math.abs(seen.elevationDeg() - edge.angleDeg()) - half));
            }
        }
        return Double.isFinite(least) ? least : 0;
    }

    /** Returns whether it goes on and off. */
    public boolean isTimed() {
        return rateHz > 0 && onShare > 0 && onShare < 1;
    }

    /**
     * Returns where in its period it is after some time.
     *
     * @param phase   where it was, from 0 (coming on) to 1
     * @param seconds the time that has passed
     * @return from 0 to less than 1
     */
    public double advance(double phase, double seconds) {
        double turned = phase + seconds * rateHz;
        return turned - Math.floor(turned);
    }

    /** Returns whether it is on at a place in its period, from 0 (coming on) to 1. */
    public boolean isOn(double phase) {
        return onShare >= 1 || phase < onShare;
    }
}
