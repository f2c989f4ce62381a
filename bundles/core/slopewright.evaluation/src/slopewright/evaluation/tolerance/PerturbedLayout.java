package slopewright.evaluation.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.siting.SurfacePlan;
import slopewright.siting.UnitPlan;
import slopewright.standards.RuleSet;

/**
 * A layout that can be assessed with every unit and obstacle a little off. One error for each source, in the order of {@link #sources()}:
 * of each unit its angle, level and place, then of each obstacle its top and place.
 *
 * @param family     the family
 * @param request    what the layout was meant to start from
 * @param rules      the rule set
 * @param siting     the layout as it stands
 * @param shapes     the obstacles that may matter
 * @param tolerances the tolerances of the units
 */
record PerturbedLayout(IndicatorFamily family, SitingRequest request, RuleSet rules, Siting siting, List<StudiedShapes.Shape> shapes,
        Tolerances tolerances) {

    private static final int PER_UNIT = 3;

    PerturbedLayout with(List<StudiedShapes.Shape> studied) {
        return new PerturbedLayout(family, request, rules, siting, studied, tolerances);
    }

    List<ErrorSource> sources() {
        List<ErrorSource> sources = new ArrayList<>();
        for (UnitPlan unit : siting.units()) {
            sources.add(new ErrorSource(ErrorSource.Kind.ANGLE, unit.id(), tolerances.angleMinutes()));
            sources.add(new ErrorSource(ErrorSource.Kind.LEVEL, unit.id(), tolerances.levelM()));
            sources.add(new ErrorSource(ErrorSource.Kind.PLACE, unit.id(), tolerances.placeM()));
        }
        for (StudiedShapes.Shape shape : shapes) {
            sources.add(new ErrorSource(ErrorSource.Kind.OBSTACLE_TOP, shape.name(), shape.shape().verticalAccuracyM()));
            sources.add(new ErrorSource(ErrorSource.Kind.OBSTACLE_PLACE, shape.name(), shape.shape().horizontalAccuracyM()));
        }
        return sources;
    }

    private Siting moved(double[] errors) {
        List<UnitPlan> units = new ArrayList<>();
        int at = 0;
        for (UnitPlan unit : siting.units()) {
            FramePoint place = unit.place();
            units.add(unit.raised(Angles.minutesToDeg(errors[at]))
                    .at(new FramePoint(place.alongM() + errors[at + 2], place.rightM(), place.heightM() + errors[at + 1])));
            at += PER_UNIT;
        }
        return family.assess(request, rules, units, siting.unshifted());
    }

    /** Returns the obstacle surface for some errors, empty where there is none. */
    Optional<ProtectionSurface> surface(double[] errors) {
        return moved(errors).surface().map(SurfacePlan::geometry);
    }

    /** Returns the surface with every unit at an end of all its tolerances at once: -1 for the lower, 0 for none, 1 for the upper. */
    Optional<ProtectionSurface> surfaceAtEnd(int end) {
        return surface(sources().stream().mapToDouble(source -> end * source.tolerance()).toArray());
    }

    /** Returns the quantities by ordinal for some errors; NaN where one cannot be had. */
    double[] assess(double[] errors) {
        Siting found = moved(errors);
        double margin = Double.POSITIVE_INFINITY;
        if (found.surface().isPresent()) {
            ProtectionSurface surface = found.surface().get().geometry();
            int at = siting.units().size() * PER_UNIT;
            for (StudiedShapes.Shape shape : shapes) {
                margin = Math.min(margin, shape.compare(surface, errors[at], errors[at + 1]).map(hit -> -hit.excessM())
                        .orElse(Double.POSITIVE_INFINITY));
                at += 2;
            }
        }
        return new double[] {found.mehtM(), found.wheelClearanceM().orElse(Double.NaN), Double.isInfinite(margin) ? Double.NaN : margin};
    }
}
