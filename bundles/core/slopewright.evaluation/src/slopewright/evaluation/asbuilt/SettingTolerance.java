package slopewright.evaluation.asbuilt;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.siting.IndicatorFamily;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/**
 * By how much the angle of a unit may be off, and what a measured difference comes to. Every place that judges a measured angle asks
 * here. Differences compare within the resolution at which angles are kept, a millionth of a degree.
 *
 * @param accuracy    how exactly an angle has to be set; empty where the rule set says nothing
 * @param resetBeyond beyond which difference a unit in use is set again; empty where the rule set says nothing
 */
public record SettingTolerance(Optional<CitedValue> accuracy, Optional<CitedValue> resetBeyond) {
    private static final double RESOLUTION_MIN = 60e-6;

    /** What a measured angle comes to. */
    public enum Verdict {
        /** No angle was measured. */
        NOT_MEASURED,
        /**
         * Within tolerance: off by no more than the accuracy of setting, or than the limit for setting again where that is all there is.
         */
        WITHIN,
        /** Outside the accuracy of setting, but not so far off that a unit in use is set again. Not accepted when it is commissioned. */
        OUTSIDE,
        /** So far off that it is to be set again. */
        SET_AGAIN,
        /** The rule set gives no tolerance, so nobody knows. */
        NO_TOLERANCE;

        /** Returns whether the unit may be accepted as it is set: within tolerance and nothing else. */
        public boolean isAccepted() {
            return this == WITHIN;
        }
    }

    /** Refuses missing parts. */
    public SettingTolerance {
        Objects.requireNonNull(accuracy);
        Objects.requireNonNull(resetBeyond);
    }

    /** Reads the tolerance of a family. */
    public static SettingTolerance of(RuleSet rules, IndicatorFamily family) {
        return new SettingTolerance(rules.find(family.ruleKey() + ".setting-accuracy-min"),
                rules.find(family.ruleKey() + ".reset-beyond-min"));
    }

    /** Returns the limit of {@link Verdict#WITHIN}; empty where the rule set gives no tolerance. */
    public Optional<CitedValue> limit() {
        return accuracy.or(() -> resetBeyond);
    }

    /**
     * Judges a difference.
     *
     * @param offMin measured less planned angle, minutes of arc; empty where none was measured
     * @return what it comes to
     */
    public Verdict verdict(OptionalDouble offMin) {
        if (offMin.isEmpty()) {
            return Verdict.NOT_MEASURED;
        }
        if (limit().isEmpty()) {
            return Verdict.NO_TOLERANCE;
        }
        double off = Math.abs(offMin.getAsDouble()) - RESOLUTION_MIN;
        if (off <= limit().get().value()) {
            return Verdict.WITHIN;
        }
        return resetBeyond.filter(beyond -> off <= beyond.value()).isPresent() ? Verdict.OUTSIDE : Verdict.SET_AGAIN;
    }
}
