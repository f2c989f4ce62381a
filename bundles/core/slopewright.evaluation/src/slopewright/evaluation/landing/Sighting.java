package slopewright.evaluation.landing;

import java.util.Objects;
import java.util.OptionalDouble;

import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.siting.SitingException;

/**
 * The top of something as it is measured from the hover point.
 *
 * @param trueDeg   bearing, decimal degrees from true north
 * @param distanceM distance over the ground, metres
 * @param heightM   height above the TLOF, metres; empty where an angle was measured
 * @param angleDeg  angle above the horizon by clinometer, decimal degrees; empty where a height was measured
 */
public record Sighting(double trueDeg, double distanceM, OptionalDouble heightM, OptionalDouble angleDeg) {
    private static final double STEEPEST_DEG = 80;

    /**
     * How exactly it was measured.
     *
     * @param bearingDeg      each bearing may be wrong by so much to both sides, decimal degrees
     * @param distanceM       each distance may be wrong by so much, metres
     * @param distancePercent and by so much of itself, per cent
     * @param angleDeg        each angle may be wrong by so much, decimal degrees
     * @param heightM         each height may be wrong by so much, metres
     * @param eyeM            height of the clinometer above the TLOF, metres
     */
    public record Instrument(double bearingDeg, double distanceM, double distancePercent, double angleDeg, double heightM, double eyeM) {

        /**
         * Checks the numbers.
         *
         * @throws SitingException where one is negative or no number
         */
        public Instrument {
            boolean negative = bearingDeg < 0 || distanceM < 0 || distancePercent < 0 || angleDeg < 0 || heightM < 0 || eyeM < 0;
            if (negative || !Double.isFinite(bearingDeg + distanceM + distancePercent + angleDeg + heightM + eyeM)) {
                throw new SitingException(Message.of("landing.sighted.negative"));
            }
        }

        /** Returns it in words. */
        Message message() {
            return Message.of("landing.sighted.instrument", Words.degrees(bearingDeg), Words.m(distanceM), Words.percent(distancePercent),
                    Words.degrees(angleDeg), Words.m(heightM), Words.m(eyeM));
        }
    }

    /**
     * Checks the numbers.
     *
     * @throws SitingException where the distance is not more than zero, or there is not one of height and angle
     */
    public Sighting {
        Objects.requireNonNull(heightM);
        Objects.requireNonNull(angleDeg);
        boolean numbers = Double.isFinite(trueDeg + distanceM + heightM.orElse(0) + angleDeg.orElse(0));
        if (!numbers || !(distanceM > 0) || heightM.isPresent() == angleDeg.isPresent() || Math.abs(angleDeg.orElse(0)) > STEEPEST_DEG) {
            throw new SitingException(Message.of("landing.sighted.needs"));
        }
    }

    /** Returns the height above the TLOF, metres. */
    public double topM(Instrument instrument) {
        return heightM.orElseGet(() -> instrument.eyeM() + distanceM * tan(angleDeg.getAsDouble()));
    }

    /** Returns the radius in which its true place may lie, metres: distance and bearing each off by all they may be. */
    public double horizontalAccuracyM(Instrument instrument) {
        double along = alongM(instrument);
        return Math.hypot(along, (distanceM + along) * Math.sin(Math.toRadians(Math.min(90, instrument.bearingDeg()))));
    }

    /** Returns by how much it may stand higher, metres: of an angle, with angle and distance each off by all they may be. */
    public double verticalAccuracyM(Instrument instrument) {
        if (angleDeg.isEmpty()) {
            return instrument.heightM();
        }
        double steepest = tan(Math.min(STEEPEST_DEG + 5, angleDeg.getAsDouble() + instrument.angleDeg()));
        double distance = Math.max(0, distanceM + (steepest >= 0 ? 1 : -1) * alongM(instrument));
        return Math.max(0, distance * steepest - distanceM * tan(angleDeg.getAsDouble()));
    }

    private double alongM(Instrument instrument) {
        return instrument.distanceM() + distanceM * instrument.distancePercent() / 100;
    }

    private static double tan(double deg) {
        return Math.tan(Math.toRadians(deg));
    }

    /** Returns what was measured in words. */
    Message message() {
        return heightM.isPresent() ? Message.of("landing.sighted.height", Words.degrees(trueDeg), Words.m(distanceM),
                Words.m(heightM.getAsDouble()))
                : Message.of("landing.sighted.angle", Words.degrees(trueDeg), Words.m(distanceM),
                        Words.quantity(angleDeg.getAsDouble(), Notation.DEGREES));
    }
}
