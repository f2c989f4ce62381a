package slopewright.siting.internal;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
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
import slopewright.siting.UnshiftedDistance;
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
    void describe(LayoutBuilder layout) {
        // steady signals need no words
    }

    /** Returns the setting that tables of obstacle surfaces call A, decimal degrees. */
    double lowestSettingDeg(List<SectorEdge> edges, double lowestOnSlopeDeg) {
        return lowestOnSlopeDeg;
    }

    @Override
    public Siting site(SitingRequest request, RuleSet rules) {
        LayoutBuilder layout = new LayoutBuilder(this, request, rules);
        layout.unitCount();
        double slope = layout.slopeDeg();
        double half = onSlopeSectorDeg(layout) / 2;
        List<SectorEdge> edges = edges(layout.reader(), slope, half);
        describe(layout);
        LayoutBuilder.Laid laid = lay(layout, slope - half, place -> units(layout, edges, place));
        LayoutBuilder.Place place = laid.place();
        return layout.finish(laid, OptionalDouble.of(layout.nominalHeightM(place.lens(), slope)), new Surfaces.Anchor(
                lowestSettingDeg(edges, slope - half), place.distanceM(), UnshiftedDistance.of(place.distanceM()), place.lensM()));
    }

    private static LayoutBuilder.Laid lay(LayoutBuilder layout, double lowestDeg,
            Function<LayoutBuilder.Place, List<UnitPlan>> units) {
        SitingRequest request = layout.request();
        if (request.atHelipad() || request.has(Input.DISTANCE)) {
            LayoutBuilder.Place place = request.atHelipad() ? layout.helipadPlace() : layout.given();
            return layout.lay(place, units.apply(place));
        }
        return layout.solveLeast(EyeTarget.eyeHeightM(request, layout.reader()), lowestDeg, 0, units);
    }

    private List<UnitPlan> units(LayoutBuilder layout, List<SectorEdge> edges, LayoutBuilder.Place place) {
        double right = layout.request().atHelipad() ? 0
                : layout.halfWidthM() + layout.reader().metres(layout.prefix() + "unit-to-edge");
        UnitPlan unit = new UnitPlan("1", 1, new FramePoint(place.distanceM(), right, place.lensM()), layout.slopeDeg(), 0, edges);
        return Sides.place(List.of(unit), oneSide(layout.request()));
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, UnshiftedDistance unshifted) {
        LayoutBuilder layout = new LayoutBuilder(this, request, rules);
        UnitPlan unit = units.get(0);
        double lowest = unit.settingDeg() - onSlopeSectorDeg(layout) / 2;
        for (SectorEdge edge : unit.edges()) {
            if (meanings(List.of(seen(unit, edge.above()))).containsValue(Meaning.ON_SLOPE)) {
                lowest = edge.angleDeg();
            }
        }
        FramePoint centre = LayoutBuilder.centre(units);
        return layout.laid(units, centre, lowestSettingDeg(unit.edges(), lowest),
                OptionalDouble.of(layout.nominalHeightM(centre, unit.settingDeg())), unshifted);
    }

    private static SeenUnit seen(UnitPlan unit, Light light) {
        return new SeenUnit(unit, light, false, unit.settingDeg(), OptionalDouble.empty());
    }

    private Side oneSide(SitingRequest request) {
        if (request.side() == Side.BOTH) {
            throw new SitingException(Message.of("siting.refused.one-unit", Words.name(name)));
        }
        return request.side();
    }

    private double onSlopeSectorDeg(LayoutBuilder layout) {
        if (layout.request().has(Input.ON_SLOPE_SECTOR)) {
            double entered = layout.request().need(Input.ON_SLOPE_SECTOR);
            if (entered <= 0 || entered >= 2 * layout.slopeDeg()) {
                throw new SitingException(Message.of("siting.refused.sector", Input.ON_SLOPE_SECTOR.message()));
            }
            return entered;
        }
        double sector = layout.reader().sectorDegrees(layout.prefix() + "on-slope-sector");
        if (layout.request().option(SitingRequest.OWN_SECTORS).isEmpty() && layout.reader().rules()
                .find(layout.prefix() + "on-slope-sector-deg").filter(value -> value.citation().toConfirm()).isPresent()) {
            layout.reader().note(Message.of("siting.note.sector-by-make", Words.degrees(sector)));
        }
        return sector;
    }
}
