package slopewright.siting.internal;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.siting.Colour;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SectorEdge;
import slopewright.siting.SeenUnit;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.siting.UnshiftedDistance;
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
        LayoutBuilder layout = new LayoutBuilder(this, request, rules);
        layout.unitCount();
        RuleReader reader = layout.reader();
        double slope = layout.slopeDeg();
        double half = reader.sectorDegrees("heliport-pair.on-slope-half");
        double green = reader.sectorDegrees("heliport-pair.green-sector");
        double width = reader.minutes("heliport-pair.transition-width");
        double spacing = reader.metres("heliport-pair.unit-spacing");
        LayoutBuilder.Place place = layout.helipadPlace();
        List<UnitPlan> units = List.of(unit("low", -spacing / 2, slope + half - green, slope + half, width, place),
                unit("high", spacing / 2, slope - half, slope - half + green, width, place));
        return layout.finish(layout.lay(place, units), OptionalDouble.of(layout.nominalHeightM(place.lens(), slope)),
                new Surfaces.Anchor(slope - half, place.distanceM(), UnshiftedDistance.of(place.distanceM()), place.lensM()));
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, UnshiftedDistance unshifted) {
        LayoutBuilder layout = new LayoutBuilder(this, request, rules);
        if (units.stream().anyMatch(unit -> unit.edges().isEmpty())) {
            throw new SitingException(Message.of("siting.refused.no-sectors"));
        }
        double lowest = units.stream().mapToDouble(unit -> unit.edges().get(0).angleDeg()).max().orElseThrow();
        double highest = units.stream().mapToDouble(unit -> unit.edges().get(unit.edges().size() - 1).angleDeg()).min().orElseThrow();
        FramePoint centre = LayoutBuilder.centre(units);
        return layout.laid(units, centre, lowest, OptionalDouble.of(layout.nominalHeightM(centre, (lowest + highest) / 2)), unshifted);
    }

    private static UnitPlan unit(String id, double rightM, double redToGreenDeg, double greenToWhiteDeg, double widthMin,
            LayoutBuilder.Place place) {
        return new UnitPlan(id, 1, new FramePoint(place.distanceM(), rightM, place.lensM()), (redToGreenDeg + greenToWhiteDeg) / 2, 0,
                List.of(new SectorEdge(redToGreenDeg, widthMin, Light.RED, Light.GREEN),
                        new SectorEdge(greenToWhiteDeg, widthMin, Light.GREEN, Light.WHITE)));
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        Set<Colour> colours = seen.stream().map(lamp -> lamp.light().colour()).collect(Collectors.toSet());
        return Map.of("", MEANINGS.getOrDefault(colours, Meaning.OUTSIDE));
    }
}
