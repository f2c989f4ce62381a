package slopewright.siting.descent;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.siting.SitingException;

/**
 * The approach slope that follows from speed and rate of descent.
 *
 * @param slopeDeg      the path angle over the ground, decimal degrees
 * @param groundSpeedKt ground speed that was entered or follows, knots
 * @param airSpeedKt    air speed along the path, knots; empty where the ground speed was entered
 * @param windKt        wind along the approach, headwind positive, knots; empty where none was given
 * @param descentFtMin  rate of descent, feet a minute
 * @param form          the form of the solution
 * @param stillAir      whether an air speed was given without wind
 * @param table         what the published table prints for the slope and the speed in its own form; empty where it does not reach
 * @param notes         what a reader must know
 */
public record DescentSlope(double slopeDeg, double groundSpeedKt, OptionalDouble airSpeedKt, OptionalDouble windKt, double descentFtMin,
        DescentForm form, boolean stillAir, Optional<DescentTable.Entry> table, List<Message> notes) {

    /** Copies the notes. */
    public DescentSlope {
        notes = List.copyOf(notes);
    }

    /**
     * Solves the slope from the ground speed, in the tangent form.
     *
     * @param groundSpeedKt ground speed, knots
     * @param descentFtMin  rate of descent, feet a minute
     * @return the slope
     * @throws SitingException where a number is not more than zero
     */
    public static DescentSlope ofGroundSpeed(double groundSpeedKt, double descentFtMin) {
        double slope = DescentForm.TANGENT.angleDeg(groundSpeedKt, descentFtMin);
        return made(slope, groundSpeedKt, OptionalDouble.empty(), OptionalDouble.empty(), descentFtMin, DescentForm.TANGENT, List.of());
    }

    /**
     * Solves the slope from the air speed. The air speed runs along the inclined path: in still air the sine form holds. With wind its
     * part over the ground, less the headwind, is the ground speed, and the tangent form holds.
     *
     * @param airSpeedKt   true air speed along the path, knots
     * @param windKt       wind along the approach, headwind positive, knots; empty for still air
     * @param descentFtMin rate of descent, feet a minute
     * @return the slope
     * @throws SitingException where a number is not more than zero, or nothing is left of the speed over the ground
     */
    public static DescentSlope ofAirSpeed(double airSpeedKt, OptionalDouble windKt, double descentFtMin) {
        double inAir = DescentForm.SINE.angleDeg(airSpeedKt, descentFtMin);
        double overGround = airSpeedKt * Math.cos(Math.toRadians(inAir)) - windKt.orElse(0);
        if (!(overGround > 0)) {
            throw new SitingException(Message.of("descent.no-ground-speed", Words.quantity(airSpeedKt, Notation.KNOTS),
                    Words.quantity(windKt.orElse(0), Notation.KNOTS)));
        }
        List<Message> notes = new ArrayList<>(List.of(Message.of("descent.true-air-speed")));
        if (windKt.isEmpty()) {
            notes.add(Message.of("descent.still-air"));
            return made(inAir, overGround, OptionalDouble.of(airSpeedKt), windKt, descentFtMin, DescentForm.SINE, notes);
        }
        return made(DescentForm.TANGENT.angleDeg(overGround, descentFtMin), overGround, OptionalDouble.of(airSpeedKt), windKt, descentFtMin,
                DescentForm.TANGENT, notes);
    }

    private static DescentSlope made(double slopeDeg, double groundKt, OptionalDouble airKt, OptionalDouble windKt, double descentFtMin,
            DescentForm form, List<Message> notes) {
        double alongPath = groundKt / Math.cos(Math.toRadians(slopeDeg));
        DescentTable table = DescentTable.bundled();
        Optional<DescentTable.Entry> entry = table.descent(slopeDeg, table.form() == DescentForm.SINE ? alongPath : groundKt);
        return new DescentSlope(slopeDeg, groundKt, airKt, windKt, descentFtMin, form, airKt.isPresent() && windKt.isEmpty(), entry, notes);
    }

    /**
     * Solves the slope from what an aid says of speed and descent.
     *
     * @param aid the aid
     * @return the slope, empty where the aid has no rate of descent or no speed
     * @throws SitingException where the numbers make no path
     */
    public static Optional<DescentSlope> of(ApproachAid aid) {
        if (aid.getDescentFtmin() == null || aid.getGroundSpeedKt() == null && aid.getAirSpeedKt() == null) {
            return Optional.empty();
        }
        if (aid.getGroundSpeedKt() != null) {
            return Optional.of(ofGroundSpeed(aid.getGroundSpeedKt(), aid.getDescentFtmin()));
        }
        OptionalDouble wind = aid.getWindKt() == null ? OptionalDouble.empty() : OptionalDouble.of(aid.getWindKt());
        return Optional.of(ofAirSpeed(aid.getAirSpeedKt(), wind, aid.getDescentFtmin()));
    }

    /** Returns the solution in one line, as cards print it. */
    public Message message() {
        Argument speed = airSpeedKt.isEmpty() ? Message.of("descent.over-ground", Words.quantity(groundSpeedKt, Notation.KNOTS))
                : Message.of(stillAir ? "descent.in-still-air" : "descent.against-wind",
                        Words.quantity(airSpeedKt.getAsDouble(), Notation.KNOTS), Words.quantity(windKt.orElse(0), Notation.KNOTS));
        return Message.of("descent.slope", Words.degrees(slopeDeg), speed, Words.quantity(descentFtMin, Notation.FEET_PER_MINUTE),
                Words.term("descent-form." + form.key()));
    }
}
