package slopewright.ui.plan.internal.grid;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.ui.MessageTexts;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;

/**
 * What light units snap to: where the rule set has them, bar lines of others, the offset of others on either side, the spacing of the
 * rule set from a neighbour, and the grid while it is shown.
 */
public final class UnitSnaps {

    private static final double REACH_PX = 6;

    private final PlanContext context;
    private final List<LightUnit> moved;
    private final LightUnit lead;
    private final List<LightUnit> others = new ArrayList<>();
    private final List<LightUnit> siblings = new ArrayList<>();
    private final Optional<Siting> solved;

    /**
     * Makes them for units that are being moved.
     *
     * @param context the context
     * @param aid     their aid
     * @param moved   the units
     * @param solved  how the rule set lays the aid out, empty where it can't
     */
    public UnitSnaps(PlanContext context, ApproachAid aid, Collection<LightUnit> moved, Optional<Siting> solved) {
        this.context = context;
        this.moved = List.copyOf(moved);
        this.lead = this.moved.get(0);
        this.solved = solved;
        for (ApproachAid neighbour : Projects.host(aid).map(ApproachHost::getAids).map(List::copyOf).orElse(List.of())) {
            neighbour.getUnits().stream().filter(unit -> !this.moved.contains(unit) && unit.getAlongM() != null && unit.getRightM() != null)
                    .forEach(neighbour == aid ? siblings::add : others::add);
        }
    }

    private Optional<UnitPlan> solvedLead() {
        return solved.flatMap(siting -> siting.units().stream().filter(plan -> plan.id().equals(lead.getLabel())).findFirst());
    }

    private double reachM() {
        return REACH_PX / context.diagram().view().scale();
    }

    /** Returns what a distance along the runway of the leading unit snaps to. */
    public Optional<Snapping.Target> along(double alongM) {
        Snapping snapping = new Snapping(reachM());
        solvedLead().ifPresent(plan -> snapping.to(plan.place().alongM(), Messages.get("snap.solved-distance")));
        siblings.forEach(unit -> snapping.to(unit.getAlongM(), Messages.get("snap.bar-of", label(unit))));
        others.forEach(unit -> snapping.to(unit.getAlongM(), Messages.get("snap.bar-of", aidLabel(unit))));
        return grid(snapping).near(alongM);
    }

    /** Returns what a distance to the right of the centre line of the leading unit snaps to. */
    public Optional<Snapping.Target> right(double rightM) {
        Snapping snapping = new Snapping(reachM());
        solvedLead().ifPresent(plan -> snapping.to(plan.place().rightM(), Messages.get("snap.solved-offset")));
        for (double spacing : spacings()) {
            for (LightUnit unit : siblings) {
                String name = Messages.get("snap.spacing", Readings.length(spacing), label(unit));
                snapping.to(unit.getRightM() + spacing, name).to(unit.getRightM() - spacing, name);
            }
        }
        siblings.forEach(unit -> snapping.to(-unit.getRightM(), Messages.get("snap.mirror-of", label(unit))));
        others.forEach(unit -> snapping.to(Math.copySign(unit.getRightM(), rightM), Messages.get("snap.offset-of", aidLabel(unit))));
        return grid(snapping).near(rightM);
    }

    private Snapping grid(Snapping snapping) {
        return context.settings().isGrid()
                ? snapping.toGrid(GridFrame.spacingM(context.diagram().view().scale()), Messages.get("snap.grid")) : snapping;
    }

    /** Returns the spacings between neighbours in the layout of the rule set, metres. */
    public List<Double> spacings() {
        List<Double> found = new ArrayList<>();
        List<UnitPlan> units = solved.map(Siting::units).orElse(List.of());
        for (int i = 1; i < units.size(); i++) {
            double gap = Math.abs(Math.abs(units.get(i).place().rightM()) - Math.abs(units.get(i - 1).place().rightM()));
            boolean sameSide = units.get(i).place().rightM() * units.get(i - 1).place().rightM() > 0;
            if (sameSide && gap > 0.1 && found.stream().noneMatch(known -> Math.abs(known - gap) < 0.002)) {
                found.add(Math.round(gap * 1000) / 1000.0);
            }
        }
        return found;
    }

    /** Returns the distance to the nearest neighbour on the bar of a unit that stands alone at a place, metres. */
    public Optional<Double> gapM(double rightM) {
        return moved.size() > 1 ? Optional.empty()
                : siblings.stream().filter(unit -> Objects.equals(unit.getBar(), lead.getBar()) && unit.getRightM() * rightM > 0)
                        .map(unit -> Math.abs(unit.getRightM() - rightM)).min(Double::compare);
    }

    private static String label(LightUnit unit) {
        return Messages.get("tip.unit", Objects.requireNonNullElse(unit.getLabel(), "?"));
    }

    private static String aidLabel(LightUnit unit) {
        return Projects.aid(unit).map(MessageTexts::label).orElse("?");
    }
}
