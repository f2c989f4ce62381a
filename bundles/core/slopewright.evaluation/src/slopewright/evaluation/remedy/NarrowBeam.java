package slopewright.evaluation.remedy;

import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.ObstacleField;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.SurveyField;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Siting;
import slopewright.standards.RemedyKind;

/**
 * How far the beam is narrowed so that nothing that penetrates lies within: obstacles and survey points alike, with the accuracy of their
 * survey. It helps where all of it stands on one side and not too near the axis. The surface stays penetrated.
 */
final class NarrowBeam {
    private static final double LEAST_BEAM_DEG = 1;
    private static final double STEPS_PER_DEG = 10;

    private final Siting laid;
    private final ProtectionSurface surface;
    private final SurfaceComparison compared;
    private final Surroundings surroundings;
    private double leastRightDeg = Double.POSITIVE_INFINITY;
    private double leastLeftDeg = Double.POSITIVE_INFINITY;

    NarrowBeam(Siting laid, ProtectionSurface surface, SurfaceComparison compared, Surroundings surroundings) {
        this.laid = laid;
        this.surface = surface;
        this.compared = compared;
        this.surroundings = surroundings;
    }

    Remedy remedy() {
        for (ObstacleComparison penetrating : compared.inside()) {
            if (penetrating.isUnshieldedPenetration()) {
                placed(penetrating).ifPresent(this::count);
            }
        }
        for (Surroundings.Block block : surroundings.blocks()) {
            for (SurveyField.Above above : block.points().above(surface, Integer.MAX_VALUE)) {
                count(above.point(), block.points().horizontalAccuracyM());
            }
        }
        boolean left = Double.isFinite(leastLeftDeg);
        double least = left ? leastLeftDeg : leastRightDeg;
        double step = Math.ceil(least * STEPS_PER_DEG - 1) / STEPS_PER_DEG;
        if (left && Double.isFinite(leastRightDeg) || !(least >= LEAST_BEAM_DEG) || !(step > 0)) {
            return Remedy.none(RemedyKind.NARROW_BEAM, Message.of("remedy.narrow-beam-none"));
        }
        return new Remedy(RemedyKind.NARROW_BEAM, OptionalDouble.of(least), OptionalDouble.of(step), left,
                Message.of(left ? "remedy.narrow-beam-left" : "remedy.narrow-beam-right", Words.degrees(step)));
    }

    /** A shape that reaches over the axis counts on both sides. */
    private void count(ObstacleField.Placed placed) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (FramePoint point : placed.shape().points()) {
            double blur = blurDeg(point, placed.shape().horizontalAccuracyM());
            lowest = Math.min(lowest, azimuthDeg(point) - blur);
            highest = Math.max(highest, azimuthDeg(point) + blur);
        }
        count(lowest, highest);
    }

    private void count(FramePoint point, double accuracyM) {
        double blur = blurDeg(point, accuracyM);
        count(azimuthDeg(point) - blur, azimuthDeg(point) + blur);
    }

    private void count(double lowestDeg, double highestDeg) {
        if (highestDeg >= 0) {
            leastRightDeg = Math.min(leastRightDeg, Math.max(0, lowestDeg));
        }
        if (lowestDeg <= 0) {
            leastLeftDeg = Math.min(leastLeftDeg, Math.max(0, -highestDeg));
        }
    }

    private double blurDeg(FramePoint point, double accuracyM) {
        return Math.toDegrees(Math.atan2(accuracyM, Math.max(1, point.planDistanceM(laid.reference()))));
    }

    private Optional<ObstacleField.Placed> placed(ObstacleComparison found) {
        return surroundings.obstacles().placed().stream().filter(place -> place.obstacle() == found.element()).findFirst();
    }

    /** Returns the azimuth of a point from the indicator, degrees to the right of the axis seen in the landing direction. */
    private double azimuthDeg(FramePoint point) {
        ProtectionSurface fromIndicator = new ProtectionSurface(laid.reference().alongM(), 0, 0, 0, surface.lengthM(), 0,
                surface.axisTurnDeg());
        return Math.toDegrees(Math.atan2(fromIndicator.offsetM(point.alongM(), point.rightM()),
                fromIndicator.outwardM(point.alongM(), point.rightM())));
    }
}
