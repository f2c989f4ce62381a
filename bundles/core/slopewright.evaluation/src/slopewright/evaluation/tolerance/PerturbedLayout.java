package slopewright.evaluation.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.ObstacleKind;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.siting.UnitPlan;
import slopewright.standards.RuleSet;

/**
 * A layout that can be assessed with every unit and obstacle a little off. One error for each cause, in the order of {@link #causes()}:
 * of each unit its angle, level and place, then of each obstacle its top and place.
 *
 * @param family     the family
 * @param request    what the layout was meant to start from
 * @param rules      the rule set
 * @param siting     the layout as planned
 * @param shapes     the obstacles that may matter
 * @param tolerances the tolerances of the units
 */
record PerturbedLayout(IndicatorFamily family, SitingRequest request, RuleSet rules, Siting siting, List<Shape> shapes, Tolerances tolerances) {

    private static final int PER_UNIT = 3;
    private static final int PER_SHAPE = 2;

    /** An obstacle in the frame with its survey accuracy. */
    record Shape(String name, ObstacleKind kind, List<FramePoint> points, double horizontalM, double verticalM) {

        Optional<Penetration> compare(ProtectionSurface surface, double topM, double placeM) {
            List<FramePoint> moved = topM == 0 && placeM == 0 ? points : points.stream()
                    .map(point -> new FramePoint(point.alongM() + placeM, point.rightM(), point.heightM() + topM)).toList();
            return switch (kind) {
                case POINT -> surface.compare(moved.get(0), 0, 0);
                case LINE -> surface.compareLine(moved, 0, 0);
                case AREA -> surface.compareArea(moved, 0, 0);
            };
        }
    }

    List<ErrorSource> causes() {
        List<ErrorSource> causes = new ArrayList<>();
        for (UnitPlan unit : siting.units()) {
            String name = "unit " + unit.id();
            causes.add(new ErrorSource(ErrorSource.Kind.ANGLE, name, tolerances.angleMinutes()));
            causes.add(new ErrorSource(ErrorSource.Kind.LEVEL, name, tolerances.levelM()));
            causes.add(new ErrorSource(ErrorSource.Kind.PLACE, name, tolerances.placeM()));
        }
        for (Shape shape : shapes) {
            causes.add(new ErrorSource(ErrorSource.Kind.OBSTACLE_TOP, shape.name(), shape.verticalM()));
            causes.add(new ErrorSource(ErrorSource.Kind.OBSTACLE_PLACE, shape.name(), shape.horizontalM()));
        }
        return causes;
    }

    /** Returns the quantities by ordinal for some errors; NaN where one can not be had. */
    double[] assess(double[] errors) {
        List<UnitPlan> units = new ArrayList<>();
        int at = 0;
        for (UnitPlan unit : siting.units()) {
            FramePoint place = unit.place();
            units.add(unit.raised(Angles.minutesToDeg(errors[at]))
                    .at(new FramePoint(place.alongM() + errors[at + 2], place.rightM(), place.heightM() + errors[at + 1])));
            at += PER_UNIT;
        }
        Siting found = family.assess(request, rules, units, siting.nominalDistanceM());
        double margin = Double.POSITIVE_INFINITY;
        if (found.surface().isPresent()) {
            ProtectionSurface surface = found.surface().get().geometry();
            for (Shape shape : shapes) {
                margin = Math.min(margin, shape.compare(surface, errors[at], errors[at + 1]).map(hit -> -hit.excessM())
                        .orElse(Double.POSITIVE_INFINITY));
                at += PER_SHAPE;
            }
        }
        return new double[] {found.mehtM(), found.wheelClearanceM().orElse(Double.NaN), Double.isInfinite(margin) ? Double.NaN
                : margin};
    }
}
