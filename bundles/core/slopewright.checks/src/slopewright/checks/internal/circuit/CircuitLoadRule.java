package slopewright.checks.internal.circuit;

import java.util.Objects;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.ProjectRule;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.circuit.AidLoad;
import slopewright.evaluation.circuit.CircuitLoad;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;

/**
 * What hangs on a circuit is within the rating of what feeds it; the current that a battery is reckoned with is not less than its lamps
 * take. A warning: an overloaded circuit goes out, and one that is out shows nothing false.
 */
public final class CircuitLoadRule extends ProjectRule {
    private static final double TO_KILO = 1000;

    /** Made by the service loader. */
    public CircuitLoadRule() {
        super("CIRC-03", Severity.WARNING);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        if (evaluation.project().getAerodrome() == null) {
            return;
        }
        for (Circuit circuit : evaluation.project().getAerodrome().getCircuits()) {
            AidRule.guarded(circuit, outcomes, () -> check(CircuitLoad.of(circuit), outcomes));
        }
    }

    private static void check(CircuitLoad load, OutcomeCollector outcomes) {
        Argument name = ElementNames.of(load.circuit());
        if (load.aids().isEmpty()) {
            throw Stop.notApplicable(Message.of("CIRC-03.empty", name));
        }
        double lamps = AidFacts.need(load.powerW(), Message.of("missing.lamp-power", name, equipment(load)));
        if (load.hasBattery()) {
            battery(load, lamps, outcomes);
            return;
        }
        double rating = AidFacts.need(load.circuit().getRegulatorRatingKva(), Message.of("missing.rating", name));
        double total = lamps + AidFacts.need(load.cableW(), Message.of("missing.cable", name));
        outcomes.about(load.circuit()).measured(Measure.atMost(total / TO_KILO, rating, "kVA"))
                .step("circuit-load", watts(lamps), watts(total - lamps), watts(total))
                .saying("compared", name, watts(total), watts(rating * TO_KILO), equipment(load)).advising("relieve").add();
    }

    /** At the highest voltage lamps of a power take the least current; a lower one that was entered cannot be theirs. */
    private static void battery(CircuitLoad load, double lampsW, OutcomeCollector outcomes) {
        Argument name = ElementNames.of(load.circuit());
        double current = AidFacts.need(load.circuit().getCurrentA(), Message.of("missing.current", name));
        double most = load.aids().stream().mapToDouble(CircuitLoadRule::highestVoltageV).min().orElseThrow();
        double least = lampsW / most;
        outcomes.about(load.circuit()).measured(Measure.atLeast(current, least, "A"))
                .step("least-current", watts(lampsW), Words.quantity(most, Notation.VOLTS), Words.number(least))
                .saying("battery", name, Words.number(current), Words.number(least), equipment(load)).advising("correct").add();
    }

    private static double highestVoltageV(AidLoad load) {
        EquipmentType type = load.aid().getEquipment();
        return AidFacts.need(type.getMaxVoltageV(), Message.of("missing.highest-voltage-of", ElementNames.of(type)));
    }

    private static Argument equipment(CircuitLoad load) {
        return Words.list(load.aids().stream().map(aid -> aid.aid().getEquipment()).filter(Objects::nonNull).distinct()
                .map(ElementNames::of).toList());
    }

    private static Argument watts(double watts) {
        return Words.quantity(watts, Notation.WATTS);
    }
}
