package slopewright.checks.internal.plausible;

import java.util.List;
import java.util.Objects;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.circuit.AidLoad;
import slopewright.evaluation.circuit.CircuitLoad;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.siting.ElementNames;

/**
 * The current of a circuit fits its lamps. Where the voltage of their equipment is known, the circuit carries what they draw, to a quarter,
 * which is what leads and converters take (own band); where it is not and a regulator feeds it, it is a series circuit of 6.6 A or 20 A
 * (common practice). A battery lasts from one to a hundred hours (own band). The equipment has the brightness steps of its circuit. A
 * warning: nothing of it moves the signal while the light burns.
 */
public final class CircuitRule extends ProjectRule {
    private static final List<Double> SERIES_A = List.of(6.6, 20.0);
    private static final double SERIES_TOLERANCE_A = 0.1;
    private static final double SHARE = 0.25;
    private static final double LEAST_H = 1;
    private static final double MOST_H = 100;

    /** Made by the service loader. */
    public CircuitRule() {
        super("DATA-44", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome == null || aerodrome.getCircuits().isEmpty()) {
            return;
        }
        for (Circuit circuit : aerodrome.getCircuits()) {
            if (circuit.getCurrentA() != null) {
                current(circuit, outcomes);
            }
            steps(circuit, outcomes);
        }
    }

    private static void current(Circuit circuit, OutcomeCollector outcomes) {
        double current = circuit.getCurrentA();
        double power = CircuitLoad.of(circuit).counted().stream().map(AidLoad::powerW).filter(Objects::nonNull).mapToDouble(
                Double::doubleValue).sum();
        double volts = circuit.getAids().stream().map(ApproachAid::getEquipment).mapToDouble(CircuitRule::volts).average()
                .orElse(Double.NaN);
        if (power > 0 && volts > 0) {
            double drawn = power / volts;
            outcomes.about(circuit).measured(Measure.within(current, drawn, drawn * SHARE, "A"))
                    .step("drawn-current", Words.number(power), Words.number(volts), Words.number(drawn))
                    .saying("drawn", ElementNames.of(circuit), Words.number(current), Words.number(drawn),
                            Words.list(circuit.getAids().stream().map(ApproachAid::getEquipment).filter(Objects::nonNull).distinct()
                                    .map(ElementNames::of).toList()))
                    .advising("correct").add();
        }
        if (circuit.getRegulatorRatingKva() != null && !(volts > 0)) {
            double nominal = Math.abs(current - SERIES_A.get(0)) < Math.abs(current - SERIES_A.get(1)) ? SERIES_A.get(0) : SERIES_A.get(1);
            outcomes.about(circuit).measured(Measure.within(current, nominal, SERIES_TOLERANCE_A, "A"))
                    .saying("series", ElementNames.of(circuit), Words.number(current), Words.number(nominal)).advising("correct").add();
        }
        if (circuit.getCapacityAh() != null && current > 0) {
            double hours = CircuitLoad.of(circuit).usableAh() / current;
            outcomes.about(circuit).measured(Measure.between(hours, LEAST_H, MOST_H, "h"))
                    .saying("battery", ElementNames.of(circuit), Words.number(hours), Words.number(LEAST_H), Words.number(MOST_H))
                    .advising("correct").add();
        }
    }

    private static void steps(Circuit circuit, OutcomeCollector outcomes) {
        for (EquipmentType type : circuit.getAids().stream().map(ApproachAid::getEquipment).filter(Objects::nonNull).distinct().toList()) {
            if (circuit.getBrightnessSteps() != null && type.getBrightnessSteps() != null) {
                boolean same = circuit.getBrightnessSteps().equals(type.getBrightnessSteps());
                outcomes.about(circuit).met(same).saying(same ? "steps" : "other-steps", ElementNames.of(circuit), ElementNames.of(type),
                        Words.count(circuit.getBrightnessSteps()), Words.count(type.getBrightnessSteps())).advising("correct").add();
            }
        }
    }

    private static double volts(EquipmentType type) {
        return type == null || type.getMinVoltageV() == null || type.getMaxVoltageV() == null ? Double.NaN
                : (type.getMinVoltageV() + type.getMaxVoltageV()) / 2;
    }
}
