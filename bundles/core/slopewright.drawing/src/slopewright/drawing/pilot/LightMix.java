package slopewright.drawing.pilot;

import slopewright.geometry.Angles;
import slopewright.siting.Light;
import slopewright.siting.SectorEdge;
import slopewright.siting.SeenUnit;

/**
 * How two lights mix in the change from one to the other: in even steps across its width, a straight line for want of a published curve.
 *
 * @param below      the light below
 * @param above      the light above
 * @param aboveShare share of the light above, from 0 to 1
 */
public record LightMix(Light below, Light above, double aboveShare) {

    /**
     * Returns what a unit shows.
     *
     * @param seen what an eye sees of the unit
     * @return the mix; one light alone outside changes
     */
    public static LightMix of(SeenUnit seen) {
        for (SectorEdge edge : seen.unit().edges()) {
            double half = Angles.minutesToDeg(edge.widthMinutes()) / 2;
            double past = seen.elevationDeg() - edge.angleDeg();
            if (half > 0 && Math.abs(past) < half) {
                return new LightMix(edge.below(), edge.above(), (past + half) / (2 * half));
            }
        }
        return new LightMix(seen.light(), seen.light(), 1);
    }

    /** Tells whether two lights are seen at once. */
    public boolean isMixed() {
        return aboveShare > 0 && aboveShare < 1 && !below.equals(above);
    }
}
