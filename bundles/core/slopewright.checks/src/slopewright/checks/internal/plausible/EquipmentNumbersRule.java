package slopewright.checks.internal.plausible;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.model.MeasuredIntensity;
import slopewright.siting.ElementNames;

/**
 * The numbers of an equipment type fit each other: it can be set from a lower angle to a higher one, and the lower one is level or more
 * than 0.2 degrees, below which it is minutes of arc that were entered; its supply may vary from half to the whole of its greatest
 * voltage; a watt of its lamps gives no more than 500 candelas, and no less than one (own bands, wide around halogen lamps and diodes
 * behind a lens). The intensity that is stated, from which the range is estimated, is no more than the strongest that was measured of that
 * colour, to a twentieth, as light is measured; white counts by itself where it is stated by itself. A warning: what rests on the numbers
 * is compared with the rule set by rules of its own.
 */
public final class EquipmentNumbersRule extends ProjectRule {
    private static final double LEVEL_DEG = 0.2;
    private static final double MOST_CD_PER_W = 500;
    private static final double LEAST_CD_PER_W = 1;
    private static final double MEASURED_TIMES = 1.05;

    /** Made by the service loader. */
    public EquipmentNumbersRule() {
        super("DATA-55", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        if (evaluation.project().getAerodrome() == null) {
            return;
        }
        for (EquipmentType type : evaluation.project().getAerodrome().getEquipmentTypes()) {
            Double least = type.getMinSettingDeg();
            Double most = type.getMaxSettingDeg();
            if (least != null && most != null) {
                boolean sound = least < most && (least == 0 || Math.abs(least) >= LEVEL_DEG) && least > -1;
                outcomes.about(type).met(sound).saying(sound ? "settings" : "wrong-settings", ElementNames.of(type), Words.deg(least),
                        Words.deg(most)).advising("correct").add();
            }
            if (type.getMinVoltageV() != null && type.getMaxVoltageV() != null) {
                outcomes.about(type).measured(Measure.between(type.getMinVoltageV(), type.getMaxVoltageV() / 2, type.getMaxVoltageV(), "V"))
                        .saying("voltage", ElementNames.of(type), Words.number(type.getMinVoltageV()),
                                Words.number(type.getMaxVoltageV())).advising("correct").add();
            }
            if (type.getIntensityCd() != null && type.getLampPowerW() != null && type.getLampsPerUnit() != null) {
                double perWatt = type.getIntensityCd() / (type.getLampPowerW() * type.getLampsPerUnit());
                outcomes.about(type).measured(Measure.between(perWatt, LEAST_CD_PER_W, MOST_CD_PER_W, ""))
                        .saying("intensity", ElementNames.of(type), Words.number(perWatt), Words.number(LEAST_CD_PER_W),
                                Words.number(MOST_CD_PER_W)).advising("correct").add();
            }
            Predicate<LightColour> white = colour -> colour == LightColour.WHITE;
            boolean apart = type.getWhiteIntensityCd() != null;
            measured(type, type.getIntensityCd(), apart ? white.negate() : colour -> true, outcomes);
            measured(type, type.getWhiteIntensityCd(), white, outcomes);
        }
    }

    /** Compares a stated intensity with the strongest that was measured of each colour for which it is stated. */
    private static void measured(EquipmentType type, Double statedCd, Predicate<LightColour> colours, OutcomeCollector outcomes) {
        Map<LightColour, Double> strongest = new EnumMap<>(LightColour.class);
        for (MeasuredIntensity point : type.getIntensities()) {
            if (point.getColour() != null && colours.test(point.getColour()) && point.getIntensityCd() != null) {
                strongest.merge(point.getColour(), point.getIntensityCd(), Math::max);
            }
        }
        if (statedCd != null && !strongest.isEmpty()) {
            Map.Entry<LightColour, Double> weakest = strongest.entrySet().stream().min(Map.Entry.comparingByValue()).orElseThrow();
            outcomes.about(type).measured(Measure.atMost(statedCd, weakest.getValue() * MEASURED_TIMES, "cd"))
                    .saying("measured", ElementNames.of(type), Words.quantity(statedCd, Notation.CANDELA),
                            Words.quantity(weakest.getValue(), Notation.CANDELA),
                            Words.term("colour." + weakest.getKey().getName().toLowerCase(Locale.ROOT))).advising("correct").add();
        }
    }
}
