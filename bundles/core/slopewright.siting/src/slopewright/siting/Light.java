package slopewright.siting;

import java.util.Objects;

/**
 * What one unit shows into one vertical sector.
 *
 * @param colour its colour
 * @param form   how it shows in time
 */
public record Light(Colour colour, LightForm form) {

    /** Steady white. */
    public static final Light WHITE = new Light(Colour.WHITE, LightForm.STEADY);
    /** Steady red. */
    public static final Light RED = new Light(Colour.RED, LightForm.STEADY);
    /** Steady green. */
    public static final Light GREEN = new Light(Colour.GREEN, LightForm.STEADY);
    /** Steady amber. */
    public static final Light AMBER = new Light(Colour.AMBER, LightForm.STEADY);
    /** Pulsating white. */
    public static final Light PULSATING_WHITE = new Light(Colour.WHITE, LightForm.PULSATING);
    /** Pulsating red. */
    public static final Light PULSATING_RED = new Light(Colour.RED, LightForm.PULSATING);
    /** Flashing green. */
    public static final Light FLASHING_GREEN = new Light(Colour.GREEN, LightForm.FLASHING);
    /** Flashing red. */
    public static final Light FLASHING_RED = new Light(Colour.RED, LightForm.FLASHING);
    /** No light. */
    public static final Light DARK = new Light(Colour.NONE, LightForm.OFF);

    /** Refuses missing parts. */
    public Light {
        Objects.requireNonNull(colour);
        Objects.requireNonNull(form);
    }

    /** Spelled out: what a record has by itself is written anew at every start. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Light light && colour == light.colour && form == light.form;
    }

    @Override
    public int hashCode() {
        int hash = colour.hashCode();
        return 31 * hash + form.hashCode();
    }
}
