package slopewright.evaluation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import slopewright.geometry.FramePoint;
import slopewright.model.Helipad;
import slopewright.siting.Input;
import slopewright.siting.SitingRequest;

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

    /** Sine of the angle up to which two stored bearings are the same. */
    private static final double ALONG = 1e-7;

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
        double turned = Math.hypot(along, right) - reachM();
        if (bearingDeg.isPresent()) {
            return new Standing(Where.CLEAR, outside, outside - aroundM);
        }
        return new Standing(turned >= 0 ? Where.CLEAR : Where.UNKNOWN, outside, turned);
    }

    /**
     * Returns the corners of a part of the pad that lies as its FATO, in the frame of a landing direction; along it where how the FATO lies
     * is not known.
     *
     * @param pad            the helipad
     * @param lengthM        length of the part, metres
     * @param widthM         width of the part, metres
     * @param landingTrueDeg the landing direction, decimal degrees from true north
     */
    public static List<FramePoint> corners(Helipad pad, double lengthM, double widthM, double landingTrueDeg) {
        double turn = Math.toRadians(landingTrueDeg - bearing(pad).orElse(landingTrueDeg));
        double back = lengthM / 2;
        double side = widthM / 2;
        return Stream.of(new FramePoint(-back, -side, 0), new FramePoint(back, -side, 0), new FramePoint(back, side, 0),
                new FramePoint(-back, side, 0)).map(corner -> new FramePoint(
                        corner.alongM() * Math.cos(turn) + corner.rightM() * Math.sin(turn),
                        corner.rightM() * Math.cos(turn) - corner.alongM() * Math.sin(turn), 0)).toList();
    }

    /** Returns how far from the middle a corner of the safety area lies, metres. */
    public double reachM() {
        return Math.hypot(lengthM / 2 + aroundM, widthM / 2 + aroundM);
    }

    /**
     * Puts into a request how far the FATO reaches along a landing direction, from its first to its last corner. Where nobody knows how it
     * lies, that is anything from its shorter side to its diagonal, and both are put. A length without the width is put where the FATO is
     * known to lie along the approach, and otherwise stays missing.
     */
    static void put(SitingRequest.Builder builder, Helipad pad, Double landingTrueDeg) {
        Double length = pad.getFatoLengthM();
        Double width = pad.getFatoWidthM();
        if (length == null || landingTrueDeg == null) {
            return;
        }
        if (pad.getFatoBearingDeg() == null) {
            if (width != null) {
                builder.set(Input.FATO_LENGTH, Math.hypot(length, width)).set(Input.FATO_LEAST_LENGTH, Math.min(length, width));
            }
            return;
        }
        double turn = Math.toRadians(landingTrueDeg - pad.getFatoBearingDeg());
        double across = Math.abs(Math.sin(turn));
        if (width != null || across < ALONG) {
            builder.set(Input.FATO_LENGTH, length * Math.abs(Math.cos(turn)) + (width == null ? 0 : width * across));
        }
    }
}
