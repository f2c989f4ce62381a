package slopewright.siting.range;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/**
 * The illuminance that the eye needs under one light. Texts disagree: where nobody has settled on one by a confirmation or an override, a
 * light is seen only where it suffices by all of them.
 *
 * @param condition the light
 * @param values    what the texts say, lux; at least one
 */
public record EyeThreshold(LightCondition condition, List<CitedValue> values) {

    /** Copies the list. */
    public EyeThreshold {
        values = List.copyOf(values);
    }

    /**
     * Reads what a rule set says of a light.
     *
     * @throws IllegalArgumentException where it says nothing
     */
    public static EyeThreshold of(RuleSet rules, LightCondition condition) {
        String key = "range.eye-illuminance-" + condition.key();
        List<CitedValue> all = Stream.concat(Stream.of(rules.value(key + "-lx")), rules.find(key + "-lighting-circular-lx").stream())
                .toList();
        List<CitedValue> settled = all.stream().filter(value -> !value.citation().toConfirm()).toList();
        return new EyeThreshold(condition, settled.isEmpty() ? all : settled);
    }

    /** Returns the greatest, which decides. */
    public CitedValue strictest() {
        return values.stream().max(Comparator.comparingDouble(CitedValue::value)).orElseThrow();
    }

    /** Returns the least: what does not suffice for it suffices for none. */
    public CitedValue mildest() {
        return values.stream().min(Comparator.comparingDouble(CitedValue::value)).orElseThrow();
    }
}
