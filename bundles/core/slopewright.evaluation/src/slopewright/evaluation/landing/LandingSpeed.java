package slopewright.evaluation.landing;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.siting.SitingException;
import slopewright.siting.descent.DescentForm;

/**
 * The speed at which a landing site is approached.
 *
 * @param kind whether it runs over the ground or through the air
 * @param kt   knots, more than zero
 */
public record LandingSpeed(Kind kind, double kt) {

    /** What a speed is measured against. */
    public enum Kind {
        /** Over the ground, whatever the wind. */
        GROUND,
        /** True air speed along the path. */
        AIR
    }

    /**
     * Checks the number.
     *
     * @throws SitingException where it is not more than zero
     */
    public LandingSpeed {
        Objects.requireNonNull(kind);
        if (!(kt > 0) || !Double.isFinite(kt)) {
            throw new SitingException(Message.of("descent.zero"));
        }
    }

    /** Reads the speed of an aid: over the ground where that was entered, else through the air; empty where neither was. */
    public static Optional<LandingSpeed> of(ApproachAid aid) {
        if (aid.getGroundSpeedKt() != null) {
            return Optional.of(new LandingSpeed(Kind.GROUND, aid.getGroundSpeedKt()));
        }
        return Optional.ofNullable(aid.getAirSpeedKt()).map(kt -> new LandingSpeed(Kind.AIR, kt));
    }

    /**
     * Returns the rate of descent that keeps a slope. Over the ground it is speed × tan(slope). Through the air the speed runs along the
     * path in the air, which is flatter than the slope against a headwind: its angle d follows from v sin d = (v cos d − w) tan(slope), so
     * that sin(slope − d) = (w/v) sin(slope).
     *
     * @param slopeDeg   slope over the ground, decimal degrees
     * @param headwindKt wind against the landing direction, knots; looked at for an air speed alone
     * @return feet a minute; empty where the wind leaves no speed over the ground
     */
    public OptionalDouble descentFtMin(double slopeDeg, double headwindKt) {
        if (kind == Kind.GROUND) {
            return OptionalDouble.of(DescentForm.TANGENT.descentFtMin(kt, slopeDeg));
        }
        double share = headwindKt / kt * Math.sin(Math.toRadians(slopeDeg));
        if (Math.abs(share) >= 1) {
            return OptionalDouble.empty();
        }
        double inAirDeg = slopeDeg - Math.toDegrees(Math.asin(share));
        double overGround = kt * Math.cos(Math.toRadians(inAirDeg)) - headwindKt;
        return overGround > 0 ? OptionalDouble.of(DescentForm.SINE.descentFtMin(kt, inAirDeg)) : OptionalDouble.empty();
    }
}
