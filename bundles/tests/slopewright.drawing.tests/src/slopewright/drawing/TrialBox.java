package slopewright.drawing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.siting.GroundSource;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SeenUnit;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.siting.UnshiftedDistance;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/** A family that the product does not know: one box, green over red. */
public final class TrialBox implements IndicatorFamily {

    /** Key of its one value. */
    static final String TO_EDGE = "trial-box.unit-to-edge-m";

    @Override
    public String key() {
        return "trial-box";
    }

    @Override
    public String name() {
        return "trial box";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.SECTORS);
    }

    @Override
    public List<Integer> unitCounts() {
        return List.of(1);
    }

    @Override
    public Siting site(SitingRequest request, RuleSet rules) {
        double slope = request.need(Input.SLOPE);
        double eye = request.need(Input.EYE_HEIGHT);
        CitedValue toEdge = rules.value(TO_EDGE);
        FramePoint place = new FramePoint(eye / Math.tan(Math.toRadians(slope)), -request.need(Input.RUNWAY_WIDTH) / 2 - toEdge.value(), 0);
        return siting(request, rules, UnitPlan.twoColour("1", 1, place, slope, 3, Light.RED, Light.GREEN));
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, UnshiftedDistance unshifted) {
        return siting(request, rules, units.get(0));
    }

    private Siting siting(SitingRequest request, RuleSet rules, UnitPlan unit) {
        double slope = request.need(Input.SLOPE);
        double distance = unit.place().alongM();
        CitedValue toEdge = rules.value(TO_EDGE);
        return new Siting(key(), rules.key(), rules.edition(), slope, distance, UnshiftedDistance.of(distance), slope,
                request.need(Input.EYE_HEIGHT),
                OptionalDouble.empty(), OptionalDouble.empty(), new FramePoint(distance, 0, unit.place().heightM()), GroundSource.UNITS,
                List.of(unit), Optional.empty(), Optional.of(Message.of("siting.no-surface")), Optional.empty(), List.of(),
                List.of(new Siting.CitedUse(toEdge.key(), toEdge.value(), toEdge.unit(), toEdge.citation())));
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        return Map.of("", Light.GREEN.equals(seen.get(0).light()) ? Meaning.ABOVE : Meaning.BELOW);
    }
}
