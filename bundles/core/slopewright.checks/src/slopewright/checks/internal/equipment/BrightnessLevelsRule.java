package slopewright.checks.internal.equipment;

import java.util.List;
import java.util.stream.IntStream;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.BrightnessLevel;
import slopewright.model.EquipmentType;
import slopewright.siting.ElementNames;

/**
 * The steps of a brightness knob are as many as the equipment has, and each takes more power than the one before. A warning: a wrong step
 * makes a wrong endurance of the battery, and nothing false in the signal.
 */
public final class BrightnessLevelsRule extends AidRule {
    /** Made by the service loader. */
    public BrightnessLevelsRule() {
        super("EQUIP-16", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        EquipmentType type = facts.aid().getEquipment();
        if (type == null || type.getBrightnessLevels().isEmpty()) {
            throw Stop.notApplicable(Message.of("EQUIP-16.none"));
        }
        Argument name = ElementNames.of(type);
        int steps = AidFacts.need(type.getBrightnessSteps(), Message.of("missing.EQUIP-04", name));
        List<Double> powers = type.getBrightnessLevels().stream().map(BrightnessLevel::getPowerPercent).toList();
        powers.forEach(power -> AidFacts.need(power, Message.of("missing.EQUIP-16", name)));
        boolean rising = IntStream.range(1, powers.size()).allMatch(i -> powers.get(i) > powers.get(i - 1));
        boolean met = rising && powers.size() == steps;
        outcomes.about(facts.aid()).met(met).saying(met ? "rising" : rising ? "other-count" : "not-rising", name,
                Words.count(powers.size()), Words.count(steps)).advising("correct").add();
    }
}
