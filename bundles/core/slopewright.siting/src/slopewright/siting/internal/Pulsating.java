package slopewright.siting.internal;

import java.util.List;
import java.util.Map;
import java.util.Set;

import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SectorEdge;
import slopewright.siting.SeenUnit;
import slopewright.siting.SitingException;
import slopewright.siting.Trait;
import slopewright.standards.RuleChoice;

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
    void describe(LayoutBuilder layout) {
        RuleReader reader = layout.reader();
        String form = layout.request().option("pulse-form")
                .orElse(reader.chooses("pulsating.pulse-form", RuleChoice.LENGTH) ? "length" : "rate");
        switch (form) {
            case "rate" -> reader.note(Message.of("siting.note.pulses-rate"));
            case "length" -> reader.note(Message.of("siting.note.pulses-length",
                    Words.quantity(reader.hertz("pulsating.pulse-rate"), Notation.HERTZ)));
            default -> throw new SitingException(Message.of("siting.refused.pulse-form", Words.name(form)));
        }
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        return Map.of("", MEANINGS.getOrDefault(seen.get(0).light(), Meaning.OUTSIDE));
    }
}
