package slopewright.siting.internal;

import java.util.List;
import java.util.Map;
import java.util.Set;

import slopewright.messages.Message;
import slopewright.siting.Colour;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SectorEdge;
import slopewright.siting.SeenUnit;
import slopewright.siting.Trait;

/**
 * One unit with amber above, green on and red below the slope. Between green and red a dark amber may appear (AIM 2-1-2), so amber
 * alone does not tell high from low.
 */
public final class TriColour extends SingleUnitFamily {

    private static final Map<Colour, Meaning> MEANINGS = Map.of(Colour.AMBER, Meaning.ABOVE, Colour.GREEN, Meaning.ON_SLOPE, Colour.RED,
            Meaning.BELOW);

    /** Made by the service loader. */
    public TriColour() {
        super("tri-colour", "tri-colour VASI", Set.of(Trait.SECTORS, Trait.SECTORS_BY_MAKE, Trait.DARK_BELOW));
    }

    @Override
    List<SectorEdge> edges(RuleReader reader, double slopeDeg, double halfDeg) {
        double width = reader.minutes("tri-colour.transition-width");
        double darkAmber = reader.sectorMinutes("tri-colour.dark-amber");
        return List.of(new SectorEdge(slopeDeg - halfDeg, darkAmber, Light.RED, Light.GREEN),
                new SectorEdge(slopeDeg + halfDeg, width, Light.GREEN, Light.AMBER));
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        return Map.of("", MEANINGS.getOrDefault(seen.get(0).light().colour(), Meaning.OUTSIDE));
    }

    @Override
    public List<Message> remarks(List<SeenUnit> seen) {
        SeenUnit box = seen.get(0);
        boolean lower = box.inTransition() && box.elevationDeg() < box.unit().settingDeg();
        return lower ? List.of(Message.of("siting.remark.dark-amber")) : List.of();
    }
}
