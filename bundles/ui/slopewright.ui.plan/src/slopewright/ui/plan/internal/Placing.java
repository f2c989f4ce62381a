package slopewright.ui.plan.internal;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Predicate;

import slopewright.edit.AddAid;
import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.TrialCopies;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachHost;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Side;
import slopewright.siting.SitingException;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.MessageTexts;

/** Finds out where an aid of a family belongs that the user wants near a place, and how it would be laid out there. */
public final class Placing {

    /** How far beyond the threshold a runway end still is the one that is meant, metres. */
    private static final double LANDING_PART_M = 900;

    /**
     * Where and how an aid would be laid out.
     *
     * @param host    the runway end or approach direction
     * @param side    on which side
     * @param figures what the layout would give, empty where none can be made
     * @param problem why none can be made
     */
    public record Proposal(ApproachHost host, Side side, Optional<TrialFigures> figures, Optional<String> problem) {
    }

    private record HostCopy(ApproachHost of, ProjectEvaluation in, ApproachHost copy) {
    }

    private final PlanContext context;
    private Optional<HostCopy> copy = Optional.empty();

    /** Makes one for a plan. */
    public Placing(PlanContext context) {
        this.context = context;
    }

    /**
     * Finds the runway end or helipad nearest to a place.
     *
     * @param place  the place
     * @param wanted which ones count
     * @return the nearest, empty where there is none with a place
     */
    public Optional<ApproachHost> nearest(PlanPoint place, Predicate<ApproachHost> wanted) {
        return Projects.hosts(context.project()).stream().filter(wanted).filter(host -> context.axis(host).isPresent())
                .min(Comparator.comparingDouble(host -> distanceM(host, place)));
    }

    private double distanceM(ApproachHost host, PlanPoint place) {
        FramePoint point = context.axis(host).orElseThrow().toFrame(place, 0);
        double half = Projects.runway(host).map(Runway::getLengthM).orElse(0.0) / 2;
        double reach = host instanceof RunwayEnd ? Math.min(LANDING_PART_M, half) : 0;
        double beyond = point.alongM() < 0 ? -point.alongM() : Math.max(0, point.alongM() - reach);
        return Math.hypot(beyond, point.rightM());
    }

    /** Returns whether a family may stand at a runway end or helipad. */
    public static boolean suits(IndicatorFamily family, ApproachHost host) {
        return host instanceof RunwayEnd ? family.atRunways() : family.atHelipads();
    }

    /**
     * Proposes a layout near a place: at the nearest suitable runway end or helipad, on the side that the place lies on, or on both where
     * the family cannot stand on that one.
     *
     * @param familyKey key of the family
     * @param place     the place
     * @return empty where there is no suitable runway end or helipad
     * @throws IllegalArgumentException where the rule set of the project is unknown
     */
    public Optional<Proposal> propose(String familyKey, PlanPoint place) {
        IndicatorFamily family = Families.get(familyKey);
        ProjectEvaluation evaluation = context.document().evaluation();
        return nearest(place, host -> suits(family, host)).map(host -> {
            PlanAxis axis = context.axis(host).orElseThrow();
            Side side = axis.toFrame(place, 0).rightM() < 0 ? Side.LEFT : Side.RIGHT;
            Proposal clicked = propose(evaluation, familyKey, host, side);
            Proposal both = clicked.figures().isPresent() ? clicked : propose(evaluation, familyKey, host, Side.BOTH);
            return both.figures().isPresent() ? both : clicked;
        });
    }

    /** Tries the edit out that a click makes, on a copy. */
    private Proposal propose(ProjectEvaluation evaluation, String familyKey, ApproachHost host, Side side) {
        if (AidLayouts.datumM(host).isEmpty()) {
            return new Proposal(host, side, Optional.empty(), Optional.of(Messages.get("place.no-elevation", MessageTexts.label(host))));
        }
        AddAid edit = AddAid.solve(copyOf(host, evaluation), familyKey, evaluation.rules(), side);
        try {
            edit.execute();
        } catch (SitingException e) {
            return new Proposal(host, side, Optional.empty(), Optional.of(MessageTexts.of(e.reason())));
        }
        try {
            TrialFigures figures = TrialFigures.of(evaluation.propose(edit.aid(), evaluation.rules()));
            return new Proposal(host, side, Optional.of(figures), Optional.empty());
        } finally {
            edit.undo();
        }
    }

    /** The copy serves until the project changes. */
    private ApproachHost copyOf(ApproachHost host, ProjectEvaluation evaluation) {
        if (copy.filter(known -> known.of() == host && known.in() == evaluation).isEmpty()) {
            copy = Optional.of(new HostCopy(host, evaluation, TrialCopies.of(host)));
        }
        return copy.get().copy();
    }
}
