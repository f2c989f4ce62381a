package slopewright.siting;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.messages.Message;

/**
 * Where an indicator would stand before any shift that cures a penetration of its obstacle surface (D1 of Annex 14 Vol I Table 5-3), or
 * why nobody knows.
 *
 * @param distanceM metres from the threshold or hover point; empty where it is not known
 * @param reason    why it is not known; empty where it is
 */
public record UnshiftedDistance(OptionalDouble distanceM, Optional<Message> reason) {

    /** Refuses one that says both or neither. */
    public UnshiftedDistance {
        Objects.requireNonNull(distanceM);
        Objects.requireNonNull(reason);
        if (distanceM.isPresent() == reason.isPresent()) {
            throw new IllegalArgumentException("an unshifted distance is known, or there is a reason why it is not");
        }
    }

    /** Makes a known one, metres. */
    public static UnshiftedDistance of(double distanceM) {
        return new UnshiftedDistance(OptionalDouble.of(distanceM), Optional.empty());
    }

    /** Makes an unknown one. */
    public static UnshiftedDistance unknown(Message reason) {
        return new UnshiftedDistance(OptionalDouble.empty(), Optional.of(reason));
    }

    /** Returns the one of a place farther on, metres; unknown stays unknown. */
    public UnshiftedDistance plus(double byM) {
        return distanceM.isPresent() ? of(distanceM.getAsDouble() + byM) : this;
    }
}
