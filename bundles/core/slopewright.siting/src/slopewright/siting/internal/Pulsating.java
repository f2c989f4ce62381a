package slopewright.siting.internal;

import java.util.List;
import java.util.Map;

import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SectorEdge;
import slopewright.siting.SeenUnit;

/** One unit with pulsating white above, steady white on, steady red slightly below and pulsating red further below the slope. */
public final class Pulsating extends SingleBox {

    private static final Map<Light, Meaning> MEANINGS = Map.of(Light.PULSATING_WHITE, Meaning.ABOVE, Light.WHITE, Meaning.ON_SLOPE,
            Light.RED,
            Meaning.BELOW, Light.PULSATING_RED, Meaning.WELL_BELOW);

    /** Made by the service loader. */
    public Pulsating() {
        super("pulsating", "pulsating VASI");
    }

    @Override
    List<SectorEdge> edges(RuleReader reader, double slopeDeg, double halfDeg) {
        double width = reader.minutes("pulsating.transition-width");
        double below = reader.degrees("pulsating.slightly-below-sector");
        return List.of(new SectorEdge(slopeDeg - halfDeg - below, width, Light.PULSATING_RED, Light.RED),
                new SectorEdge(slopeDeg - halfDeg, width, Light.RED, Light.WHITE),
                new SectorEdge(slopeDeg + halfDeg, width, Light.WHITE, Light.PULSATING_WHITE));
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        return Map.of("", MEANINGS.getOrDefault(seen.get(0).light(), Meaning.OUTSIDE));
    }
}
