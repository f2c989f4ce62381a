package slopewright.ui.profile.internal.pilot;

import java.util.List;
import java.util.OptionalDouble;

import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.pilot.PilotPicture;
import slopewright.drawing.signal.SignalStrip;
import slopewright.geometry.FramePoint;
import slopewright.siting.LightRhythm;
import slopewright.siting.Observation;
import slopewright.siting.SeenUnit;
import slopewright.siting.range.Allard;
import slopewright.siting.range.EyeThreshold;
import slopewright.siting.range.LightCondition;

/**
 * What an eye sees of an indicator at one moment.
 *
 * @param indicator   the indicator
 * @param picture     the perspective
 * @param observation what the lights show and tell
 * @param strip       what they show into each height there
 * @param daylight    how light it is
 */
public record Sight(Indicator indicator, PilotPicture picture, Observation observation, SignalStrip strip, Daylight daylight) {

    /** Looks. */
    static Sight of(Indicator indicator, FramePoint eye, Daylight daylight) {
        PilotPicture picture = PilotPicture.toward(eye, indicator.siting().reference());
        return new Sight(indicator, picture, picture.observe(indicator.siting()), SignalStrip.of(indicator.siting(), eye), daylight);
    }

    /** Returns the eye. */
    public FramePoint eye() {
        return picture.eye();
    }

    /** Returns what is seen of each unit. */
    public List<SeenUnit> seen() {
        return observation.seen();
    }

    /** Returns the rhythm of what a unit shows. */
    public LightRhythm rhythm(SeenUnit seen) {
        return LightRhythm.of(indicator.siting().family(), indicator.rules(), seen);
    }

    /** Tells whether anything flashes or pulsates. */
    boolean isTimed() {
        return seen().stream().anyMatch(seenUnit -> rhythm(seenUnit).isTimed());
    }

    LightCondition condition() {
        return switch (daylight) {
            case DAY -> LightCondition.DAY;
            case DUSK -> LightCondition.TWILIGHT;
            case NIGHT -> LightCondition.NIGHT;
        };
    }

    /**
     * Returns how strong a unit is at the eye: the decimal logarithm of its illuminance over the least that the eye sees.
     *
     * @param seen the unit
     * @return less than zero where it is too weak to be seen; empty where no intensity toward the eye is known
     */
    public OptionalDouble strength(SeenUnit seen) {
        if (indicator.range().isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble intensity = indicator.output().toward(seen.unit(), eye(), condition()).intensityCd();
        if (intensity.isEmpty()) {
            return intensity;
        }
        double distance = Math.max(1, eye().planDistanceM(seen.unit().place()));
        double lux = Allard.illuminanceLx(intensity.getAsDouble(), indicator.range().get().extinctionPerM(), distance);
        return OptionalDouble.of(Math.log10(lux / EyeThreshold.of(indicator.rules(), condition()).strictest().value()));
    }

    /** Tells whether the eye is to the side of the beam of a unit. */
    public boolean isBeside(SeenUnit seen) {
        return indicator.isBeside(seen.unit(), eye());
    }

    /** Tells whether the indicator is abeam of the eye or behind it. */
    public boolean isPast() {
        return Double.isNaN(observation.elevationDeg());
    }
}
