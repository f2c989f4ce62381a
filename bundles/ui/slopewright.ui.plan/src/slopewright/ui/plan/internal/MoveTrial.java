package slopewright.ui.plan.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.edit.MoveAid;
import slopewright.edit.MoveUnits;
import slopewright.edit.RecordedEdit;
import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.AidRequests;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.Penetration;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.LightUnit;
import slopewright.model.Runway;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;
import slopewright.ui.diagram.WorldBox;
import slopewright.ui.plan.internal.obstacles.Obstructions;

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

    /** How far around the surface obstacles are compared before they are looked up again, metres. */
    private static final double AROUND_M = 1500;
    private static final double MARGIN_M = 500;

    private final PlanContext context;
    private final ApproachAid copy;
    private final List<LightUnit> moved;
    private final boolean whole;
    private final boolean takenLeft;
    private final Optional<RuleSet> rules;
    private final Optional<SiteFrame> frame;
    private final Optional<PlanAxis> axis;
    private Optional<WorldBox> known = Optional.empty();
    private List<SurveyedShape> shapes = List.of();

    /**
     * Prepares trials.
     *
     * @param context   the context
     * @param aid       the aid
     * @param units     the units of it that move
     * @param takenLeft whether they were taken by a unit on the left of the centre line
     */
    public MoveTrial(PlanContext context, ApproachAid aid, Collection<LightUnit> units, boolean takenLeft) {
        this.context = context;
        this.takenLeft = takenLeft;
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        copier.copy(root(aid));
        copier.copyReferences();
        copy = (ApproachAid) copier.get(aid);
        moved = units.stream().map(unit -> (LightUnit) copier.get(unit)).toList();
        whole = units.size() > 1 && units.size() == aid.getUnits().size();
        rules = context.rulesOf(aid);
        frame = Projects.host(aid).flatMap(PlanContext::frame);
        axis = Projects.host(aid).flatMap(context::axis);
    }

    /** Returns the rule set that the aid is laid out under, empty where it is not known. */
    public Optional<RuleSet> rules() {
        return rules;
    }

    private static EObject root(ApproachAid aid) {
        Optional<Runway> runway = Projects.runway(aid);
        Optional<Helipad> pad = Projects.helipad(aid);
        return runway.isPresent() ? runway.get() : pad.isPresent() ? pad.get() : aid.eContainer();
    }

    /** Returns how the rule set lays the aid out, empty where it can't. */
    public Optional<Siting> solved() {
        try {
            return rules.map(ruleSet -> Families.site(String.valueOf(copy.getFamilyKey()), AidRequests.of(copy), ruleSet));
        } catch (SitingException e) {
            return Optional.empty();
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
            return new Result(Optional.empty(), OptionalDouble.empty(), Optional.of(Messages.get("read.no-rules")));
        }
        RecordedEdit move = whole ? MoveAid.by(copy, alongM, rightM, takenLeft) : MoveUnits.by(moved, alongM, rightM);
        move.execute();
        try {
            Siting siting = AidLayouts.evaluate(copy, rules.get());
            return new Result(Optional.of(siting), excessM(siting), Optional.empty());
        } catch (SitingException e) {
            return new Result(Optional.empty(), OptionalDouble.empty(), Optional.of(e.getMessage()));
        } finally {
            move.undo();
        }
    }

    private OptionalDouble excessM(Siting siting) {
        Optional<WorldBox> box = siting.surface().flatMap(surface -> axis.flatMap(one -> Obstructions.box(one, surface.geometry())));
        if (box.isEmpty() || frame.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (known.filter(one -> one.holds(box.get())).isEmpty()) {
            WorldBox around = box.get().grown(AROUND_M);
            known = Optional.of(around);
            shapes = shapes(context, frame.get(), around);
        }
        return excessM(siting.surface().orElseThrow(), shapes);
    }

    private static List<SurveyedShape> shapes(PlanContext context, SiteFrame frame, WorldBox box) {
        List<SurveyedShape> shapes = new ArrayList<>();
        context.obstacles().query(box, entry -> {
            try {
                shapes.add(SurveyedShape.of(entry.obstacle(), frame));
            } catch (SitingException e) {
                // an obstacle without height is a finding of its own; there is nothing to compare
                return;
            }
        });
        return shapes;
    }

    private static OptionalDouble excessM(SurfacePlan surface, List<SurveyedShape> shapes) {
        return shapes.stream().flatMap(shape -> shape.compare(surface.geometry()).stream()).mapToDouble(Penetration::excessM).max();
    }

    /** Returns how far the worst obstacle stands above the obstacle surface of a layout at a host, metres. */
    public static OptionalDouble excessM(PlanContext context, ApproachHost host, Siting siting) {
        Optional<SiteFrame> frame = PlanContext.frame(host);
        Optional<SurfacePlan> surface = siting.surface();
        Optional<WorldBox> box = surface.flatMap(one -> context.axis(host).flatMap(axis -> Obstructions.box(axis, one.geometry())));
        return frame.isEmpty() || box.isEmpty() ? OptionalDouble.empty()
                : excessM(surface.orElseThrow(), shapes(context, frame.get(), box.get().grown(MARGIN_M)));
    }
}
