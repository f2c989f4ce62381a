package slopewright.evaluation.tolerance;

import java.util.Objects;

/**
 * One group of the aeroplane mix.
 *
 * @param name         its name
 * @param eyeToWheelM  eye-path-to-wheel-path height, metres
 * @param sharePercent its share of the movements, per cent, zero or more
 */
public record Aeroplane(String name, double eyeToWheelM, double sharePercent) {

    /** Refuses missing parts. */
    public Aeroplane {
        Objects.requireNonNull(name);
    }
}
