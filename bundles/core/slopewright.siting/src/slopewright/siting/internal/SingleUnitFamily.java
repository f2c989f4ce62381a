package slopewright.siting.internal;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SectorEdge;
import slopewright.siting.SeenUnit;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.standards.RuleSet;

/**
 * One unit that shows several sectors. At a runway the lower edge of the on-slope sector gives the eye height over the threshold; at
 * a helipad the path itself passes through the eye at the hover.
 */
abstract class SingleUnitFamily implements IndicatorFamily {

    private final String key;
    private final String name;
    private final Set<Trait> traits;

    SingleUnitFamily(String key, String name, Set<Trait> traits) {
        this.key = key;
        this.name = name;
        this.traits = traits;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public Set<Trait> traits() {
        return traits;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<Integer> unitCounts() {
        return List.of(1);
    }

    @Override
    public boolean atHelipads() {
        return true;
    }

    /**
     * Returns the sectors.
     *
     * @param reader   the rule set
     * @param slopeDeg the approach slope
     * @param halfDeg  half the on-slope sector
     * @return edges, lowest first
     */
    abstract List<SectorEdge> edges(RuleReader reader, double slopeDeg, double halfDeg);

    /** Notes what a reader must know of the signals, such as how they pulsate. */
    void describe(LayoutBuilder draft) {
        // steady signals need no words
    }

    /** Returns the setting that tables of obstacle surfaces call A, decimal degrees. */
    double lowestSettingDeg(List<SectorEdge> edges, double lowestOnSlopeDeg) {
        return lowestOnSlopeDeg;
    }

    @Override
    public Siting site(SitingRequest request, RuleSet rules) {
        LayoutBuilder draft = new LayoutBuilder(this, request, rules);
        RuleReader reader = draft.reader();
        draft.unitCount();
        double slope = draft.slopeDeg();
        double half = onSlopeSectorDeg(draft) / 2;
        double lowest = slope - half;
        LayoutBuilder.Place place = place(draft, lowest);
        double eyeHeight = place.distanceM() * Angles.tanDeg(slope) + place.lensM();
        double right = request.atHelipad() ? 0 : draft.halfWidthM() + reader.metres(draft.prefix() + "unit-to-edge");
        List<SectorEdge> edges = edges(reader, slope, half);
        describe(draft);
        UnitPlan unit = new UnitPlan("1", 1, new FramePoint(place.distanceM(), right, place.lensM()), slope, 0, edges);
        return draft.finish(place, place.distanceM(), Sides.place(List.of(unit), oneSide(request)), OptionalDouble.of(eyeHeight),
                new Surfaces.Anchor(lowestSettingDeg(edges, lowest), lowest, place.distanceM(), place.distanceM(), place.lensM(),
                        OptionalDouble.empty()));
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, double nominalDistanceM) {
        LayoutBuilder draft = new LayoutBuilder(this, request, rules);
        UnitPlan unit = units.get(0);
        double lowest = unit.settingDeg() - onSlopeSectorDeg(draft) / 2;
        for (SectorEdge edge : unit.edges()) {
            if (meanings(List.of(seen(unit, edge.above()))).containsValue(Meaning.ON_SLOPE)) {
                lowest = edge.angleDeg();
            }
        }
        return draft.laid(units, LayoutBuilder.centre(units), lowestSettingDeg(unit.edges(), lowest),
                LayoutBuilder.heightOn(LayoutBuilder.centre(units), unit.settingDeg()), nominalDistanceM, OptionalDouble.empty());
    }

    private static SeenUnit seen(UnitPlan unit, Light light) {
        return new SeenUnit(unit, light, false, unit.settingDeg(), OptionalDouble.empty());
    }

    private Side oneSide(SitingRequest request) {
        if (request.side() == Side.BOTH) {
            throw new SitingException(name + " is one unit; it stands on one side");
        }
        return request.side();
    }

    private static LayoutBuilder.Place place(LayoutBuilder draft, double lowestDeg) {
        SitingRequest request = draft.request();
        if (request.has(Input.DISTANCE)) {
            return draft.given();
        }
        return request.atHelipad() ? draft.helipadPlace()
                : new LayoutBuilder.Place(draft.ground().solve(EyeTarget.eyeHeightM(request, draft.reader()), lowestDeg, 0), draft.ground());
    }

    private double onSlopeSectorDeg(LayoutBuilder draft) {
        if (draft.request().has(Input.ON_SLOPE_SECTOR)) {
            double entered = draft.request().need(Input.ON_SLOPE_SECTOR);
            if (entered <= 0 || entered >= 2 * draft.slopeDeg()) {
                throw new SitingException("the on-slope sector (on-slope-sector-deg) must be more than zero and less than twice the slope");
            }
            return entered;
        }
        double sector = draft.reader().sectorDegrees(draft.prefix() + "on-slope-sector");
        if (draft.request().option(SitingRequest.OWN_SECTORS).isEmpty() && draft.reader().rules()
                .find(draft.prefix() + "on-slope-sector-deg").filter(value -> value.citation().toConfirm()).isPresent()) {
            draft.reader().note(String.format(Locale.ROOT,
                    "The on-slope sector of %.2f° depends on the make and is from memory: enter or confirm the sectors of the unit in "
                            + "hand.", sector));
        }
        return sector;
    }
}
