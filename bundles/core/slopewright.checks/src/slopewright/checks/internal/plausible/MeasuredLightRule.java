package slopewright.checks.internal.plausible;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.model.MeasuredIntensity;
import slopewright.siting.ElementNames;

/**
 * The measured intensities of an equipment type make one beam. No direction is measured twice in one colour; at one elevation the light
 * does not grow by more than a quarter outward from the axis; and a point differs from its nearest neighbour by no more than six times,
 * where the steepest of the printed contours, that of the sector unit (Annex 14 Vol II, 4th ed., Fig 5-11: 1875 to 375 cd), falls five
 * times (own bands). Along the elevation nothing is asked, for the brightest direction of a filtered beam lies off its axis. A warning:
 * whether the light suffices is asked by rules of its own.
 */
public final class MeasuredLightRule extends ProjectRule {
    private static final double SAME_DEG = 0.01;
    private static final double MOST_GROWTH = 1.25;
    private static final double MOST_TIMES = 6;

    /** Made by the service loader. */
    public MeasuredLightRule() {
        super("DATA-62", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        if (evaluation.project().getAerodrome() != null) {
            evaluation.project().getAerodrome().getEquipmentTypes()
                    .forEach(type -> type.getIntensities().forEach(point -> point(type, point, outcomes)));
        }
    }

    private static boolean isWhole(MeasuredIntensity point) {
        return point.getColour() != null && point.getColour() != LightColour.NONE && point.getAzimuthDeg() != null
                && point.getElevationDeg() != null && point.getIntensityCd() != null && point.getIntensityCd() > 0;
    }

    private static void point(EquipmentType type, MeasuredIntensity point, OutcomeCollector outcomes) {
        if (!isWhole(point)) {
            outcomes.notEvaluated(point, List.of(Message.of("missing.measured-light", ElementNames.of(type))),
                    Message.of("DATA-62.incomplete", ElementNames.of(type)));
            return;
        }
        List<MeasuredIntensity> others = type.getIntensities().stream()
                .filter(other -> other != point && isWhole(other) && other.getColour() == point.getColour()).toList();
        if (others.isEmpty()) {
            outcomes.notApplicable(point, Message.of("data.nothing-to-compare"));
            return;
        }
        double apart = others.stream().mapToDouble(other -> apartDeg(point, other)).min().orElseThrow();
        if (apart < SAME_DEG) {
            outcomes.about(point).met(false).saying("twice", ElementNames.of(type), Words.degrees(point.getAzimuthDeg()),
                    Words.degrees(point.getElevationDeg())).advising("correct").add();
            return;
        }
        Optional<MeasuredIntensity> dimmerInside = others.stream()
                .filter(other -> Math.abs(other.getElevationDeg() - point.getElevationDeg()) < SAME_DEG
                        && Math.abs(other.getAzimuthDeg()) < Math.abs(point.getAzimuthDeg()) - SAME_DEG)
                .min(Comparator.comparingDouble(MeasuredIntensity::getIntensityCd));
        double growth = dimmerInside.map(inside -> point.getIntensityCd() / inside.getIntensityCd()).orElse(0.0);
        if (growth > MOST_GROWTH) {
            outcomes.about(point).measured(Measure.atMost(growth, MOST_GROWTH, "")).saying("grows", ElementNames.of(type),
                    Words.quantity(point.getIntensityCd(), Notation.CANDELA),
                            Words.quantity(dimmerInside.orElseThrow().getIntensityCd(), Notation.CANDELA)).advising("correct").add();
            return;
        }
        MeasuredIntensity nearest = others.stream().min(Comparator.comparingDouble(other -> apartDeg(point, other))).orElseThrow();
        double times = Math.max(point.getIntensityCd() / nearest.getIntensityCd(), nearest.getIntensityCd() / point.getIntensityCd());
        outcomes.about(point).measured(Measure.atMost(times, MOST_TIMES, "")).saying("neighbour", ElementNames.of(type),
                Words.quantity(point.getIntensityCd(), Notation.CANDELA),
                            Words.quantity(nearest.getIntensityCd(), Notation.CANDELA)).advising("correct").add();
    }

    private static double apartDeg(MeasuredIntensity point, MeasuredIntensity other) {
        return Math.hypot(point.getAzimuthDeg() - other.getAzimuthDeg(), point.getElevationDeg() - other.getElevationDeg());
    }
}
