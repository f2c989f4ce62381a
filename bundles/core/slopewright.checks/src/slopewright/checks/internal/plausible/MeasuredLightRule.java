package slopewright.checks.internal.plausible;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.model.MeasuredIntensity;
import slopewright.siting.ElementNames;

/**
 * The measured intensities of an equipment type make one beam of the colours that its units show. Each is of a colour that a unit shows at
 * its elevation. No direction is measured twice in one colour, and directions within a tenth of a degree are one, as closely as a table is
 * turned; none lies further than ten degrees from the next. The light has one peak: at one elevation it does not grow by more than a
 * quarter outward from the axis, nor at one azimuth beyond a direction that is dimmer by as much than one nearer to the setting. A point
 * differs from its nearest neighbour by no more than a quarter and ten times a degree, and six times in all, where the steepest of the
 * printed contours, that of the sector unit (Annex 14 Vol II, 4th ed., Fig 5-11: 1875 to 375 cd), falls five times within two degrees (own
 * bands). Severity warning: whether the light suffices is asked by rules of its own.
 */
public final class MeasuredLightRule extends ProjectRule {
    private static final double SAME_DEG = 0.1;
    private static final double ROUNDING_DEG = 1e-9;
    private static final double FURTHEST_DEG = 10;
    private static final double MOST_GROWTH = 1.25;
    private static final double MOST_TIMES = 6;
    private static final double TIMES_A_DEGREE = 10;

    /** Made by the service loader. */
    public MeasuredLightRule() {
        super("DATA-62", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        if (evaluation.project().getAerodrome() != null) {
            for (EquipmentType type : evaluation.project().getAerodrome().getEquipmentTypes()) {
                ShownColours shown = ShownColours.of(evaluation.project(), type);
                type.getIntensities().forEach(point -> point(type, shown, point, outcomes));
            }
        }
    }

    private static boolean isWhole(MeasuredIntensity point) {
        return point.getColour() != null && point.getColour() != LightColour.NONE && point.getAzimuthDeg() != null
                && point.getElevationDeg() != null && point.getIntensityCd() != null && point.getIntensityCd() > 0;
    }

    private static void point(EquipmentType type, ShownColours shown, MeasuredIntensity point, OutcomeCollector outcomes) {
        if (!isWhole(point)) {
            outcomes.notEvaluated(point, List.of(Message.of("missing.measured-light", ElementNames.of(type))),
                    Message.of("DATA-62.incomplete", ElementNames.of(type)));
            return;
        }
        if (!shown.isUnknown() && !shown.shows(point.getColour(), point.getElevationDeg())) {
            outcomes.about(point).met(false).saying("colour", ElementNames.of(type),
                    Words.term("colour." + point.getColour().getName().toLowerCase(Locale.ROOT)), Words.deg(point.getAzimuthDeg()),
                    Words.deg(point.getElevationDeg())).advising("correct").add();
            return;
        }
        List<MeasuredIntensity> others = type.getIntensities().stream()
                .filter(other -> other != point && isWhole(other) && other.getColour() == point.getColour()).toList();
        if (others.isEmpty()) {
            outcomes.notApplicable(point, Message.of("data.nothing-to-compare"));
            return;
        }
        MeasuredIntensity nearest = others.stream().min(Comparator.comparingDouble(other -> apartDeg(point, other))).orElseThrow();
        double apart = apartDeg(point, nearest);
        if (apart < SAME_DEG - ROUNDING_DEG) {
            outcomes.about(point).met(false).saying("twice", ElementNames.of(type), Words.deg(point.getAzimuthDeg()),
                    Words.deg(point.getElevationDeg())).advising("correct").add();
            return;
        }
        if (apart > FURTHEST_DEG) {
            outcomes.about(point).measured(Measure.atMost(apart, FURTHEST_DEG, "deg")).saying("far", ElementNames.of(type),
                    Words.deg(point.getAzimuthDeg()), Words.deg(point.getElevationDeg()), Words.deg(apart)).advising("correct").add();
            return;
        }
        Optional<MeasuredIntensity> dimmerInside = Stream.concat(dimmestNearerTheAxis(point, others).stream(),
                dimmestOfTheSide(point, others).stream()).min(Comparator.comparingDouble(MeasuredIntensity::getIntensityCd));
        double growth = dimmerInside.map(inside -> point.getIntensityCd() / inside.getIntensityCd()).orElse(0.0);
        if (growth > MOST_GROWTH) {
            outcomes.about(point).measured(Measure.atMost(growth, MOST_GROWTH, "")).saying("grows", ElementNames.of(type),
                    candela(point), candela(dimmerInside.orElseThrow())).advising("correct").add();
            return;
        }
        double most = Math.min(MOST_TIMES, MOST_GROWTH * Math.pow(TIMES_A_DEGREE, apart));
        double times = Math.max(point.getIntensityCd() / nearest.getIntensityCd(), nearest.getIntensityCd() / point.getIntensityCd());
        outcomes.about(point).measured(Measure.atMost(times, most, "")).saying("neighbour", ElementNames.of(type), candela(point),
                candela(nearest), Words.deg(point.getAzimuthDeg()), Words.deg(point.getElevationDeg()), Words.deg(apart))
                .advising("correct").add();
    }

    private static Argument candela(MeasuredIntensity point) {
        return Words.quantity(point.getIntensityCd(), Notation.CANDELA);
    }

    private static Optional<MeasuredIntensity> dimmestNearerTheAxis(MeasuredIntensity point, List<MeasuredIntensity> others) {
        return others.stream().filter(other -> isSame(other.getElevationDeg(), point.getElevationDeg())
                && Math.abs(other.getAzimuthDeg()) < Math.abs(point.getAzimuthDeg()) - SAME_DEG / 2)
                .min(Comparator.comparingDouble(MeasuredIntensity::getIntensityCd));
    }

    /** The dimmest direction nearer to the setting, at the same azimuth and side, where one nearer still is brighter by a quarter. */
    private static Optional<MeasuredIntensity> dimmestOfTheSide(MeasuredIntensity point, List<MeasuredIntensity> others) {
        List<MeasuredIntensity> nearer = others.stream().filter(other -> isSame(other.getAzimuthDeg(), point.getAzimuthDeg())
                && other.getElevationDeg() * point.getElevationDeg() >= 0
                && Math.abs(other.getElevationDeg()) < Math.abs(point.getElevationDeg()) - SAME_DEG / 2).toList();
        return nearer.stream().min(Comparator.comparingDouble(MeasuredIntensity::getIntensityCd))
                .filter(dimmest -> nearer.stream().anyMatch(other -> Math.abs(other.getElevationDeg()) < Math.abs(dimmest.getElevationDeg())
                        && other.getIntensityCd() > dimmest.getIntensityCd() * MOST_GROWTH));
    }

    private static boolean isSame(double angleDeg, double otherDeg) {
        return Math.abs(angleDeg - otherDeg) < SAME_DEG / 2;
    }

    private static double apartDeg(MeasuredIntensity point, MeasuredIntensity other) {
        return Math.hypot(point.getAzimuthDeg() - other.getAzimuthDeg(), point.getElevationDeg() - other.getElevationDeg());
    }
}
