package slopewright.checks.internal.range;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.siting.Colour;
import slopewright.siting.ElementNames;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.range.Allard;
import slopewright.siting.range.EyeThreshold;
import slopewright.siting.range.LightCondition;
import slopewright.siting.range.LightOutput;
import slopewright.siting.range.PrintedLight;
import slopewright.siting.range.RangeConditions;
import slopewright.siting.range.RangeEstimate;
import slopewright.standards.CitedValue;

/** From how far the rule set expects an indicator to be of use, and from how far the one in hand is estimated to be seen. */
final class UsefulRange {

    private final AidFacts facts;

    UsefulRange(AidFacts facts) {
        this.facts = facts;
    }

    /** A range that is expected under one light. */
    record Expected(LightCondition condition, CitedValue range) {
    }

    /** Returns what is expected by day and at night; ends the rule where the rule set gives neither. */
    List<Expected> expected() {
        List<Expected> found = new ArrayList<>();
        for (LightCondition condition : List.of(LightCondition.DAY, LightCondition.NIGHT)) {
            Optional<CitedValue> range = facts.find("useful-range-" + condition.key() + "-m");
            range.ifPresent(value -> found.add(new Expected(condition, value)));
        }
        if (found.isEmpty()) {
            throw Stop.notApplicable(Message.of("range.none-given", facts.rules().descriptor().name(), Words.name(facts.rules().edition()),
                    facts.familyName()));
        }
        return found;
    }

    /**
     * Returns the same, or where the rule set gives neither a range nor intensities of a light, the distance at which an approach is
     * decided: an indicator that is not seen from there is none.
     */
    private List<Expected> expectedAtLeast() {
        if (hasNone() && facts.indicator().displayForm() == IndicatorFamily.DisplayForm.LIGHTS) {
            CitedValue decision = facts.common("glide-path.decision-distance-m");
            return List.of(new Expected(LightCondition.DAY, decision), new Expected(LightCondition.NIGHT, decision));
        }
        return expected();
    }

    private boolean hasNone() {
        return Stream.of(LightCondition.DAY, LightCondition.NIGHT)
                .allMatch(condition -> facts.find("useful-range-" + condition.key() + "-m").isEmpty())
                && Stream.of(Colour.values()).allMatch(colour -> PrintedLight.of(facts.indicator(), facts.rules(), colour,
                        LightCondition.DAY, true).isEmpty());
    }

    /** Returns the visibility that goes with the expected ranges. */
    CitedValue visibility() {
        return facts.common("range.useful-visibility-m");
    }

    /**
     * How far the light in hand is seen under one light.
     *
     * @param expected    the range that is expected
     * @param output      what is known of the weakest unit toward an eye on the slope at that range
     * @param threshold   what the eye needs
     * @param rangeM      how far it is seen by every text on the eye, metres
     * @param mildRangeM  how far it is seen by the one that asks least, metres
     */
    record Seen(Expected expected, LightOutput.Output output, EyeThreshold threshold, double rangeM, double mildRangeM) {

        double intensityCd() {
            return output.intensityCd().orElseThrow();
        }

        /** Returns whether the texts on the eye disagree about the expected range. */
        boolean isDisputed() {
            return rangeM < expected.range().value() && mildRangeM >= expected.range().value();
        }
    }

    /** Returns how far the equipment is seen; ends the rule where its intensity toward the eye is not known. */
    List<Seen> ofEquipment() {
        List<Expected> expected = expectedAtLeast();
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), Message.of("missing.equipment-type"));
        Message name = Message.of("missing.intensity-of", ElementNames.of(type));
        if (!(AidFacts.need(type.getIntensityCd(), name) > 0)) {
            throw Stop.missing(name, Message.of("range.no-intensity", ElementNames.of(type)));
        }
        LightOutput output = LightOutput.of(facts.indicator(), facts.rules(), RangeConditions.of(type));
        double extinction = Allard.extinctionPerM(visibility().value(), facts.common("range.contrast-threshold-percent").value());
        return expected.stream().map(range -> seen(range, output, extinction)).toList();
    }

    private Seen seen(Expected one, LightOutput output, double extinction) {
        LightOutput.Output there = output.weakestOnSlope(facts.laid(), one.range().value(), one.condition());
        double intensity = there.intensityCd().orElseThrow(() -> Stop.unsolved(there.reason().orElseThrow()));
        EyeThreshold threshold = EyeThreshold.of(facts.rules(), one.condition());
        return new Seen(one, there, threshold, Allard.range(intensity, extinction, threshold.strictest().value()).rangeM(),
                Allard.range(intensity, extinction, threshold.mildest().value()).rangeM());
    }

    /** Returns the estimate for what does not depend on light. */
    RangeEstimate ofLayout() {
        return RangeEstimate.of(facts.laid(), facts.rules(), RangeConditions.unknown().withVisibilityM(visibility().value()));
    }
}
