package slopewright.siting.internal;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.siting.Colour;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SectorEdge;
import slopewright.siting.SeenUnit;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.standards.RuleSet;

/** Two units beside each other at a helipad, trade name CHAPI: each white, green and red from top to bottom, one set higher. */
public final class HeliportPair implements IndicatorFamily {

    private static final Map<Set<Colour>, Meaning> MEANINGS = Map.of(Set.of(Colour.WHITE), Meaning.WELL_ABOVE,
            Set.of(Colour.WHITE, Colour.GREEN), Meaning.ABOVE, Set.of(Colour.GREEN), Meaning.ON_SLOPE, Set.of(Colour.GREEN, Colour.RED),
            Meaning.BELOW, Set.of(Colour.RED), Meaning.WELL_BELOW);

    @Override
    public String key() {
        return "heliport-pair";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.SECTORS, Trait.SECTORS_BY_MAKE, Trait.PAIR);
    }

    @Override
    public String name() {
        return "CHAPI";
    }

    @Override
    public List<Integer> unitCounts() {
        return List.of(2);
    }

    @Override
    public boolean atRunways() {
        return false;
    }

    @Override
    public boolean atHelipads() {
        return true;
    }

    @Override
    public Siting site(SitingRequest request, RuleSet rules) {
        LayoutBuilder draft = new LayoutBuilder(this, request, rules);
        draft.unitCount();
        RuleReader reader = draft.reader();
        double slope = draft.slopeDeg();
        double half = reader.sectorDegrees("heliport-pair.on-slope-half");
        double green = reader.sectorDegrees("heliport-pair.green-sector");
        double width = reader.minutes("heliport-pair.transition-width");
        double spacing = reader.metres("heliport-pair.unit-spacing");
        LayoutBuilder.Place place = request.has(Input.DISTANCE) ? draft.given() : draft.helipadPlace();
        double eyeHeight = place.distanceM() * Angles.tanDeg(slope) + place.lensM();
        List<UnitPlan> units = List.of(unit("low", -spacing / 2, slope + half - green, slope + half, width, place),
                unit("high", spacing / 2, slope - half, slope - half + green, width, place));
        return draft.finish(place, place.distanceM(), units, OptionalDouble.of(eyeHeight), new Surfaces.Anchor(slope - half, slope - half,
                place.distanceM(), place.distanceM(), place.lensM(), OptionalDouble.empty()));
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, double nominalDistanceM) {
        LayoutBuilder draft = new LayoutBuilder(this, request, rules);
        double lowest = units.stream().filter(unit -> !unit.edges().isEmpty()).mapToDouble(unit -> unit.edges().get(0).angleDeg()).max()
                .orElseThrow(() -> new SitingException("no unit of the layout has sectors"));
        double path = units.stream().mapToDouble(unit -> unit.edges().get(unit.edges().size() - 1).angleDeg()).min().orElseThrow();
        return draft.laid(units, LayoutBuilder.centre(units), lowest,
                LayoutBuilder.heightOn(LayoutBuilder.centre(units), (lowest + path) / 2), nominalDistanceM, OptionalDouble.empty());
    }

    private static UnitPlan unit(String id, double rightM, double redToGreenDeg, double greenToWhiteDeg, double widthMin,
            LayoutBuilder.Place place) {
        return new UnitPlan(id, 1, new FramePoint(place.distanceM(), rightM, place.lensM()), (redToGreenDeg + greenToWhiteDeg) / 2, 0,
                List.of(new SectorEdge(redToGreenDeg, widthMin, Light.RED, Light.GREEN),
                        new SectorEdge(greenToWhiteDeg, widthMin, Light.GREEN, Light.WHITE)));
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        Set<Colour> colours = seen.stream().map(one -> one.light().colour()).collect(Collectors.toSet());
        return Map.of("", MEANINGS.getOrDefault(colours, Meaning.OUTSIDE));
    }
}
