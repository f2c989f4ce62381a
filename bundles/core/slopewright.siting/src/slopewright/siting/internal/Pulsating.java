package slopewright.siting.internal;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SectorEdge;
import slopewright.siting.SeenUnit;
import slopewright.siting.SitingException;
import slopewright.siting.Trait;

/** One unit with pulsating white above, steady white on, steady red slightly below and pulsating red further below the slope. */
public final class Pulsating extends SingleUnitFamily {

    private static final Map<Light, Meaning> MEANINGS = Map.of(Light.PULSATING_WHITE, Meaning.ABOVE, Light.WHITE, Meaning.ON_SLOPE,
            Light.RED,
            Meaning.BELOW, Light.PULSATING_RED, Meaning.WELL_BELOW);

    /** Made by the service loader. */
    public Pulsating() {
        super("pulsating", "pulsating VASI", Set.of(Trait.SECTORS, Trait.SECTORS_BY_MAKE, Trait.DARK_BELOW));
    }

    @Override
    List<SectorEdge> edges(RuleReader reader, double slopeDeg, double halfDeg) {
        double width = reader.minutes("pulsating.transition-width");
        double below = reader.sectorDegrees("pulsating.slightly-below-sector");
        return List.of(new SectorEdge(slopeDeg - halfDeg - below, width, Light.PULSATING_RED, Light.RED),
                new SectorEdge(slopeDeg - halfDeg, width, Light.RED, Light.WHITE),
                new SectorEdge(slopeDeg + halfDeg, width, Light.WHITE, Light.PULSATING_WHITE));
    }

    /** Two published descriptions of the pulses exclude each other; the one that is chosen is named with its source. */
    @Override
    void describe(LayoutBuilder draft) {
        RuleReader reader = draft.reader();
        String form = draft.request().option("pulse-form").orElse(reader.choice("pulsating.pulse-form") == 2 ? "length" : "rate");
        switch (form) {
            case "rate" -> reader.note("Pulses as in the AIM: their rate rises with the distance from the path; no number is published.");
            case "length" -> reader.note(String.format(Locale.ROOT, "Pulses as in a pulse-light specification: %.2f a second throughout; "
                    + "their length shrinks from continuous at the edge of the path to nothing at the limit of visibility.",
                    reader.hertz("pulsating.pulse-rate")));
            default -> throw new SitingException("there is no form of pulses '" + form + "'; known are rate and length");
        }
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        return Map.of("", MEANINGS.getOrDefault(seen.get(0).light(), Meaning.OUTSIDE));
    }
}
