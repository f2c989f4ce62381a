package slopewright.ui.plan.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.edit.MoveUnits;
import slopewright.geometry.Penetration;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.Runway;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.siting.aid.AidLayouts;
import slopewright.siting.aid.AidRequests;
import slopewright.siting.remedy.SurveyedShape;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;

/**
 * Tries out what moving light units would give, on a copy of their runway or helipad and by the same edit that dropping them makes, so
 * that what is shown is what will be. Obstacles are brought into the frame once; each trial is then a matter of arithmetic.
 */
public final class MoveTrial {

    /**
     * What a move would give.
     *
     * @param siting  the layout as it would stand, empty where it can not be worked out
     * @param excessM how far the worst obstacle would stand above the obstacle surface, metres; empty where none lies under it
     * @param problem why the layout can not be worked out
     */
    public record Result(Optional<Siting> siting, OptionalDouble excessM, Optional<String> problem) {
    }

    private final ApproachAid copy;
    private final List<LightUnit> moved;
    private final Optional<RuleSet> rules;
    private final List<SurveyedShape> shapes;

    /**
     * Prepares trials.
     *
     * @param context the context
     * @param aid     the aid
     * @param units   the units of it that move
     */
    public MoveTrial(PlanContext context, ApproachAid aid, Collection<LightUnit> units) {
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        copier.copy(root(aid));
        copier.copyReferences();
        copy = (ApproachAid) copier.get(aid);
        moved = units.stream().map(unit -> (LightUnit) copier.get(unit)).toList();
        rules = rules(context, aid);
        shapes = Projects.host(aid).flatMap(PlanContext::frame).map(frame -> shapes(context, frame)).orElse(List.of());
    }

    private static EObject root(ApproachAid aid) {
        Optional<Runway> runway = Projects.runway(aid);
        Optional<Helipad> pad = Projects.helipad(aid);
        return runway.isPresent() ? runway.get() : pad.isPresent() ? pad.get() : aid.eContainer();
    }

    private static Optional<RuleSet> rules(PlanContext context, ApproachAid aid) {
        try {
            return Optional.of(context.rules(aid));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static List<SurveyedShape> shapes(PlanContext context, SiteFrame frame) {
        List<SurveyedShape> shapes = new ArrayList<>();
        for (Obstacle obstacle : context.project().getAerodrome().getObstacles()) {
            try {
                shapes.add(SurveyedShape.of(obstacle, frame));
            } catch (SitingException e) {
                // an obstacle without place or height is a finding of its own; there is nothing to compare
                continue;
            }
        }
        return shapes;
    }

    /** Returns the distance that the rule set gives for the aid, metres, empty where it gives none. */
    public OptionalDouble solvedDistanceM() {
        if (rules.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Families.site(String.valueOf(copy.getFamilyKey()), AidRequests.of(copy), rules.get()).distanceM());
        } catch (SitingException e) {
            return OptionalDouble.empty();
        }
    }

    /**
     * Tries a move out.
     *
     * @param alongM metres in the landing direction
     * @param rightM metres to the right of it
     */
    public Result at(double alongM, double rightM) {
        if (rules.isEmpty()) {
            return new Result(Optional.empty(), OptionalDouble.empty(), Optional.of("the rule set is not known"));
        }
        MoveUnits move = MoveUnits.by(moved, alongM, rightM);
        move.execute();
        try {
            Siting siting = AidLayouts.asLaid(copy, rules.get());
            return new Result(Optional.of(siting), excessM(siting), Optional.empty());
        } catch (SitingException e) {
            return new Result(Optional.empty(), OptionalDouble.empty(), Optional.of(e.getMessage()));
        } finally {
            move.undo();
        }
    }

    private OptionalDouble excessM(Siting siting) {
        return excessM(siting.surface(), shapes);
    }

    private static OptionalDouble excessM(Optional<SurfacePlan> surface, List<SurveyedShape> shapes) {
        if (surface.isEmpty()) {
            return OptionalDouble.empty();
        }
        var geometry = surface.get().geometry();
        return shapes.stream().flatMap(shape -> shape.compare(geometry).stream()).mapToDouble(Penetration::excessM).max();
    }

    /** Returns how far the worst obstacle stands above the obstacle surface of a layout at a host, metres. */
    public static OptionalDouble excessM(PlanContext context, ApproachHost host, Siting siting) {
        return PlanContext.frame(host).map(frame -> excessM(siting.surface(), shapes(context, frame))).orElse(OptionalDouble.empty());
    }
}
