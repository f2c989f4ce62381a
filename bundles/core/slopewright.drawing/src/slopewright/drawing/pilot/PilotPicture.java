package slopewright.drawing.pilot;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import slopewright.drawing.scene.ScenePoint;
import slopewright.geometry.Angles;
import slopewright.geometry.Curvature;
import slopewright.geometry.FramePoint;
import slopewright.siting.Families;
import slopewright.siting.Observation;
import slopewright.siting.Signals;
import slopewright.siting.Siting;

/**
 * The perspective of a pilot's view: where the points of a runway or helipad frame appear to an eye, in true perspective on a plane
 * square to the line of sight. The eye looks level toward a target. What is far away is lowered by the curvature of the Earth less the
 * refraction of light, {@link Curvature#USUAL_REFRACTION}.
 *
 * @param eye     the eye in the frame, metres
 * @param lookDeg direction in which it looks, decimal degrees, clockwise seen from above from the landing direction
 */
public record PilotPicture(FramePoint eye, double lookDeg) {

    /** What is nearer than this before the eye is not drawn, metres. */
    public static final double CLOSEST_M = 5;

    private static final double LEAST_SPREAD_DEG = 0.6;

    /** Refuses a missing eye. */
    public PilotPicture {
        Objects.requireNonNull(eye);
    }

    /**
     * Makes the picture of an eye that looks toward a target; in the landing direction where the target is abeam or behind.
     *
     * @param eye    the eye
     * @param target what it looks at
     * @return the picture
     */
    public static PilotPicture toward(FramePoint eye, FramePoint target) {
        double ahead = target.alongM() - eye.alongM();
        return new PilotPicture(eye, ahead > 0 ? Math.toDegrees(Math.atan2(target.rightM() - eye.rightM(), ahead)) : 0);
    }

    /** Returns by how much a place is lowered to the eye by curvature less refraction, metres. */
    public double dropM(FramePoint place) {
        return Curvature.dropM(eye.planDistanceM(place), Curvature.USUAL_REFRACTION);
    }

    /**
     * Returns the direction in which a place appears.
     *
     * @param place a place in the frame
     * @return x: azimuth to the right of the landing direction; y: elevation above the level; decimal degrees
     */
    public ScenePoint direction(FramePoint place) {
        double azimuth = Math.toDegrees(Math.atan2(place.rightM() - eye.rightM(), place.alongM() - eye.alongM()));
        return new ScenePoint(azimuth, Angles.elevationDeg(riseM(place), eye.planDistanceM(place)));
    }

    private double riseM(FramePoint place) {
        return place.heightM() - dropM(place) - eye.heightM();
    }

    /** Returns the distance of a place along the line of sight, metres; zero or less where it is abeam or behind. */
    public double depthM(FramePoint place) {
        double turn = Math.toRadians(lookDeg);
        return (place.alongM() - eye.alongM()) * Math.cos(turn) + (place.rightM() - eye.rightM()) * Math.sin(turn);
    }

    private double acrossM(FramePoint place) {
        double turn = Math.toRadians(lookDeg);
        return (place.rightM() - eye.rightM()) * Math.cos(turn) - (place.alongM() - eye.alongM()) * Math.sin(turn);
    }

    /**
     * Returns where a place appears in the picture.
     *
     * @param place a place in the frame
     * @return its place right of and above the middle, in degrees of the size that they have in the middle of the picture; empty where
     *         it is behind the eye or closer than {@link #CLOSEST_M}
     */
    public Optional<ScenePoint> place(FramePoint place) {
        double depth = depthM(place);
        return depth < CLOSEST_M ? Optional.empty()
                : Optional.of(new ScenePoint(Math.toDegrees(acrossM(place) / depth), Math.toDegrees(riseM(place) / depth)));
    }

    /**
     * Returns the outline of an area in the picture; what is behind the eye or too close is cut off.
     *
     * @param corners corners of a convex area, in order
     * @return its corners in the picture, empty where nothing of it is seen
     */
    public List<ScenePoint> area(List<FramePoint> corners) {
        List<ScenePoint> seen = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            FramePoint from = corners.get(i);
            FramePoint to = corners.get((i + 1) % corners.size());
            double near = depthM(from);
            double far = depthM(to);
            place(from).ifPresent(seen::add);
            if (near < CLOSEST_M != far < CLOSEST_M) {
                double share = (CLOSEST_M * (1 + 1e-9) - near) / (far - near);
                place(from.towards(to, share)).ifPresent(seen::add);
            }
        }
        return seen;
    }

    /** Returns where the horizon of level land at the height of the origin lies, degrees above the middle (so less than zero). */
    public double horizonDeg() {
        double radius = Curvature.MEAN_RADIUS_M / (1 - Curvature.USUAL_REFRACTION);
        return -Math.toDegrees(Math.sqrt(2 * Math.max(eye.heightM(), 1) / radius));
    }

    /**
     * Returns how much of the picture is needed to see an indicator with its surroundings.
     *
     * @param siting the indicator
     * @return degrees to each side, and about as much from the origin to the horizon
     */
    public double spreadDeg(Siting siting) {
        double threshold = place(new FramePoint(0, 0, 0)).map(ScenePoint::y).orElse(horizonDeg());
        double widest = siting.units().stream().map(unit -> place(unit.place())).flatMap(Optional::stream)
                .mapToDouble(at -> Math.abs(at.x())).max().orElse(0);
        return Math.max(LEAST_SPREAD_DEG, Math.max(horizonDeg() - threshold, widest));
    }

    /** Returns what the eye sees of an indicator, with curvature and refraction. */
    public Observation observe(Siting siting) {
        return Signals.observe(Families.get(siting.family()), siting.units(), siting.reference(),
                eye.atHeight(eye.heightM() - dropM(siting.reference())));
    }

    /**
     * Returns the eye that sees the reference point of a siting at an angle from the centre line.
     *
     * @param siting   the siting
     * @param beforeM  distance before the threshold or hover point, metres; more than the negative distance of the reference point
     * @param angleDeg elevation of the eye at the reference point, decimal degrees
     * @return the eye
     */
    public static FramePoint eyeAt(Siting siting, double beforeM, double angleDeg) {
        double distance = siting.reference().alongM() + beforeM;
        double height = siting.reference().heightM() + distance * Angles.tanDeg(angleDeg)
                + Curvature.dropM(distance, Curvature.USUAL_REFRACTION);
        return new FramePoint(0 - beforeM, siting.reference().rightM(), height);
    }
}
