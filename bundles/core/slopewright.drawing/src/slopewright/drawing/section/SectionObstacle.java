package slopewright.drawing.section;

import java.util.Objects;
import java.util.Optional;

import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;

/**
 * An obstacle as a section shows it.
 *
 * @param id       id of the element
 * @param label    its name
 * @param shape    where it stands in the frame
 * @param compared how it stands against the obstacle surface; empty where it stands beside it or there is none
 */
public record SectionObstacle(String id, String label, SurveyedShape shape, Optional<Penetration> compared) {

    /** Refuses missing parts. */
    public SectionObstacle {
        Objects.requireNonNull(id);
        Objects.requireNonNull(label);
        Objects.requireNonNull(shape);
        Objects.requireNonNull(compared);
    }

    /** Returns whether it stands under or in the surface, seen in plan. */
    public boolean isInside() {
        return compared.isPresent();
    }

    /** Returns whether it stands through the surface. */
    public boolean isThrough() {
        return excessM() > 0;
    }

    /** Returns how far it stands above the surface, metres; negative below, negative infinity where it stands beside it. */
    public double excessM() {
        return compared.map(Penetration::excessM).orElse(Double.NEGATIVE_INFINITY);
    }

    /** Most of thousands are points, which take no searching. */
    private boolean isPoint() {
        return shape.points().size() == 1;
    }

    private FramePoint point() {
        return shape.points().get(0);
    }

    /** Returns the end farthest out, metres in the landing direction. */
    public double firstM() {
        return isPoint() ? point().alongM() : shape.points().stream().mapToDouble(FramePoint::alongM).min().orElseThrow();
    }

    /** Returns the other end, metres in the landing direction. */
    public double lastM() {
        return isPoint() ? point().alongM() : shape.points().stream().mapToDouble(FramePoint::alongM).max().orElseThrow();
    }

    /** Returns the top, metres above the threshold. */
    public double topM() {
        return isPoint() ? point().heightM() : shape.points().stream().mapToDouble(FramePoint::heightM).max().orElseThrow();
    }

    /** Returns how far right of the centre line its nearest corner stands, metres; negative on the left, 0 where it lies across. */
    public double offsetM() {
        if (isPoint()) {
            return point().rightM();
        }
        double least = shape.points().stream().mapToDouble(FramePoint::rightM).min().orElseThrow();
        double most = shape.points().stream().mapToDouble(FramePoint::rightM).max().orElseThrow();
        return least <= 0 && most >= 0 ? 0 : Math.abs(least) < Math.abs(most) ? least : most;
    }
}
