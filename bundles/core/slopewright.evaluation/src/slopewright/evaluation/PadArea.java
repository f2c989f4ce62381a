package slopewright.evaluation;

import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.geometry.FramePoint;
import slopewright.model.Helipad;

/**
 * The FATO of a helipad and the safety area around it, which is as much longer than the FATO as it is wider. How the FATO lies may not be
 * known; then only what holds however it is turned is certain.
 *
 * @param lengthM    length of the FATO, metres
 * @param widthM     width of the FATO, metres
 * @param aroundM    how far the safety area reaches around it, metres, zero or more
 * @param bearingDeg true bearing along its length, decimal degrees; empty where it is not known
 */
public record PadArea(double lengthM, double widthM, double aroundM, OptionalDouble bearingDeg) {

    /** Where something stands. */
    public enum Where {
        /** On the FATO. */
        ON_FATO,
        /** In the safety area around it. */
        IN_SAFETY_AREA,
        /** Clear of both as the approach leads, and in a corner of them if the FATO is turned. */
        UNKNOWN,
        /** Clear of both. */
        CLEAR
    }

    /**
     * What stands beside a pad.
     *
     * @param where    where it stands
     * @param outsideM how far outside the FATO, metres, negative on it
     * @param clearM   how far outside the safety area, metres, negative in it; however the FATO is turned where that is not known and it is
     *                 not in it as the approach leads
     */
    public record Standing(Where where, double outsideM, double clearM) {
    }

    /** Reads the sizes of a helipad; empty where one of them is not entered. */
    public static Optional<PadArea> of(Helipad pad) {
        if (pad.getFatoLengthM() == null || pad.getFatoWidthM() == null || pad.getSafetyAreaWidthM() == null) {
            return Optional.empty();
        }
        return Optional.of(new PadArea(pad.getFatoLengthM(), pad.getFatoWidthM(),
                Math.max(0, (pad.getSafetyAreaWidthM() - pad.getFatoWidthM()) / 2), bearing(pad)));
    }

    /** Returns how a FATO lies; empty where it is not entered. */
    public static OptionalDouble bearing(Helipad pad) {
        return pad.getFatoBearingDeg() == null ? OptionalDouble.empty() : OptionalDouble.of(pad.getFatoBearingDeg());
    }

    /**
     * Says how a place lies to the pad.
     *
     * @param place          a place in the frame of a landing direction, from the middle of the FATO
     * @param landingTrueDeg the landing direction, decimal degrees from true north
     * @return how it stands there
     */
    public Standing standing(FramePoint place, double landingTrueDeg) {
        double turn = bearingDeg.isPresent() ? Math.toRadians(landingTrueDeg - bearingDeg.getAsDouble()) : 0;
        double along = place.alongM() * Math.cos(turn) - place.rightM() * Math.sin(turn);
        double right = place.alongM() * Math.sin(turn) + place.rightM() * Math.cos(turn);
        double outside = Math.max(Math.abs(along) - lengthM / 2, Math.abs(right) - widthM / 2);
        if (outside < aroundM) {
            return new Standing(outside <= 0 ? Where.ON_FATO : Where.IN_SAFETY_AREA, outside, outside - aroundM);
        }
        double turned = Math.hypot(along, right) - Math.hypot(lengthM / 2 + aroundM, widthM / 2 + aroundM);
        if (bearingDeg.isPresent()) {
            return new Standing(Where.CLEAR, outside, outside - aroundM);
        }
        return new Standing(turned >= 0 ? Where.CLEAR : Where.UNKNOWN, outside, turned);
    }

    /**
     * Returns how far the FATO reaches along a landing direction, from its first to its last corner, metres; its length where nobody knows
     * how it lies.
     */
    static Double alongM(Helipad pad, Double landingTrueDeg) {
        if (landingTrueDeg == null || pad.getFatoBearingDeg() == null || pad.getFatoLengthM() == null || pad.getFatoWidthM() == null) {
            return pad.getFatoLengthM();
        }
        double turn = Math.toRadians(landingTrueDeg - pad.getFatoBearingDeg());
        return pad.getFatoLengthM() * Math.abs(Math.cos(turn)) + pad.getFatoWidthM() * Math.abs(Math.sin(turn));
    }
}
