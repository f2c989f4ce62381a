package slopewright.evaluation.remedy;

import java.util.Objects;
import java.util.OptionalDouble;

import slopewright.messages.Message;
import slopewright.standards.RemedyKind;

/**
 * One way to cure a penetration of the obstacle surface. What is offered was tried out: carried out with its step, nothing that nothing
 * named shields stands above the surface any more. A narrower beam leaves the surface as it is, and what penetrates outside the beam.
 *
 * @param kind    what is changed
 * @param amount  the smallest change that cures it; empty where this remedy does not. A raised slope, or a narrowed beam, to the amount in
 *                decimal degrees; a turned axis by the amount in decimal degrees, clockwise seen from above; what is moved by the amount in
 *                metres in the landing direction
 * @param step    the change that is carried out: the amount, rounded to what is set out; empty where the amount is
 * @param onLeft  for a beam, whether it is narrowed on the left of the axis, seen in the landing direction
 * @param message what it comes to, in a sentence
 */
public record Remedy(RemedyKind kind, OptionalDouble amount, OptionalDouble step, boolean onLeft, Message message) {

    /** Refuses missing parts. */
    public Remedy {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(message);
        if (amount.isPresent() != step.isPresent()) {
            throw new IllegalArgumentException("a remedy that helps has an amount and a step");
        }
    }

    static Remedy none(RemedyKind kind, Message message) {
        return new Remedy(kind, OptionalDouble.empty(), OptionalDouble.empty(), false, message);
    }

    static Remedy of(RemedyKind kind, double amount, double step, Message message) {
        return new Remedy(kind, OptionalDouble.of(amount), OptionalDouble.of(step), false, message);
    }

    /** Returns whether it cures the penetration. */
    public boolean helps() {
        return amount.isPresent();
    }
}
