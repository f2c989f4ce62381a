package slopewright.checks.internal.range;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.siting.ElementNames;
import slopewright.siting.range.LightCondition;
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
            throw Stop.notApplicable(Message.of("range.none-given", Words.name(facts.rules().key()), Words.name(facts.rules().edition()),
                    Words.name(facts.familyName())));
        }
        return found;
    }

    /** Returns the visibility that goes with the expected ranges. */
    CitedValue visibility() {
        return facts.common("range.useful-visibility-m");
    }

    /** Returns the estimate for the intensity of the equipment; ends the rule where that is missing. */
    RangeEstimate ofEquipment() {
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), Message.of("missing.equipment-type"));
        Message name = Message.of("missing.intensity-of", ElementNames.of(type));
        if (!(AidFacts.need(type.getIntensityCd(), name) > 0)) {
            throw Stop.missing(name, Message.of("range.no-intensity", ElementNames.of(type)));
        }
        return RangeEstimate.of(facts.laid(), facts.rules(), RangeConditions.of(type).withVisibilityM(visibility().value()));
    }

    /** Returns the estimate for what does not depend on light. */
    RangeEstimate ofLayout() {
        return RangeEstimate.of(facts.laid(), facts.rules(), RangeConditions.unknown().withVisibilityM(visibility().value()));
    }
}
