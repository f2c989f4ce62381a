package slopewright.checks;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import slopewright.geometry.FramePoint;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Meaning;
import slopewright.siting.OnSlopeBound;
import slopewright.siting.SeenUnit;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.siting.UnshiftedDistance;
import slopewright.standards.RuleSet;

/** A family that the product does not know: a variant of the row of four, which takes its values and its siting. */
public final class TrialRow implements IndicatorFamily {
    /** Its key. */
    static final String KEY = "trial-row";

    private static IndicatorFamily row() {
        return Families.get("four-unit-row");
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public String ruleKey() {
        return "four-unit-row";
    }

    @Override
    public Set<Trait> traits() {
        return row().traits();
    }

    @Override
    public String name() {
        return "trial row";
    }

    @Override
    public List<Integer> unitCounts() {
        return row().unitCounts();
    }

    @Override
    public boolean atHelipads() {
        return row().atHelipads();
    }

    @Override
    public Siting site(SitingRequest request, RuleSet rules) {
        return row().site(request, rules);
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, UnshiftedDistance unshifted) {
        return row().assess(request, rules, units, unshifted);
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        return row().meanings(seen);
    }

    @Override
    public List<SeenUnit> look(List<UnitPlan> units, FramePoint eye) {
        return row().look(units, eye);
    }

    @Override
    public Optional<OnSlopeBound> lowestOnSlope(List<UnitPlan> units, double allowanceDeg) {
        return row().lowestOnSlope(units, allowanceDeg);
    }
}
