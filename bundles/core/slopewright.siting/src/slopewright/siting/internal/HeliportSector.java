package slopewright.siting.internal;

import java.util.List;
import java.util.Map;
import java.util.Set;

import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SectorEdge;
import slopewright.siting.SeenUnit;
import slopewright.siting.Trait;

/** One unit with four sectors at a helipad, trade name HAPI: flashing green, green, red, flashing red from top to bottom. */
public final class HeliportSector extends SingleUnitFamily {

    private static final Map<Light, Meaning> MEANINGS = Map.of(Light.FLASHING_GREEN, Meaning.ABOVE, Light.GREEN, Meaning.ON_SLOPE,
            Light.RED,
            Meaning.BELOW, Light.FLASHING_RED, Meaning.WELL_BELOW);

    /** Made by the service loader. */
    public HeliportSector() {
        super("heliport-sector", "HAPI", Set.of(Trait.SECTORS));
    }

    @Override
    public boolean atRunways() {
        return false;
    }

    @Override
    List<SectorEdge> edges(RuleReader reader, double slopeDeg, double halfDeg) {
        double width = reader.minutes("heliport-sector.transition-width");
        double below = reader.sectorDegrees("heliport-sector.slightly-below-sector");
        return List.of(new SectorEdge(slopeDeg - halfDeg - below, width, Light.FLASHING_RED, Light.RED),
                new SectorEdge(slopeDeg - halfDeg, width, Light.RED, Light.GREEN),
                new SectorEdge(slopeDeg + halfDeg, width, Light.GREEN, Light.FLASHING_GREEN));
    }

    /** The table's A is the upper limit of the "below slope" signal, the flashing red one. */
    @Override
    double lowestSettingDeg(List<SectorEdge> edges, double lowestOnSlopeDeg) {
        return edges.get(0).angleDeg();
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        return Map.of("", MEANINGS.getOrDefault(seen.get(0).light(), Meaning.OUTSIDE));
    }
}
