package slopewright.evaluation.portable;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.Angles;
import slopewright.geometry.Curvature;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Obstacle;
import slopewright.model.util.Projects;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.Citation;

/**
 * A line from the lens outward over which nothing may stand.
 *
 * @param name      what it is
 * @param angleDeg  its elevation, decimal degrees
 * @param curved    whether the curvature of the Earth and refraction are taken into account, as for a line of sight; a published
 *                  margin is a rule and is not
 * @param marginM   height of the line over the worst obstacle, metres, negative where it stands through; empty where none is in the sector
 * @param marginDeg the same as an angle at the lens, decimal degrees
 * @param obstacle  name of that obstacle; empty where there is none
 * @param citations where the angle comes from
 */
public record SightLine(String name, double angleDeg, boolean curved, OptionalDouble marginM, OptionalDouble marginDeg, String obstacle,
        List<Citation> citations) {

    /** Copies the citations. */
    public SightLine {
        Objects.requireNonNull(name);
        Objects.requireNonNull(obstacle);
        citations = List.copyOf(citations);
    }

    /**
     * The sector that a line sweeps.
     *
     * @param lens        the lens
     * @param axisTurnDeg turn of the axis, decimal degrees, clockwise seen from above
     * @param halfDeg     half the width of the sector, decimal degrees
     * @param rangeM      how far it reaches, metres
     */
    public record Sector(FramePoint lens, double axisTurnDeg, double halfDeg, double rangeM) {
    }

    /** Returns whether no obstacle of the sector stands through the line. */
    public boolean isClear() {
        return marginM.isEmpty() || marginM.getAsDouble() >= 0;
    }

    /** Returns what the line says of curvature and refraction, for people. */
    public String curvatureStatement() {
        return curved ? String.format(Locale.ROOT, "curvature of the Earth and refraction (coefficient %.2f) taken into account",
                Curvature.USUAL_REFRACTION) : "elevations compared without curvature, as for every rule";
    }

    /**
     * Compares a line with obstacles, their survey accuracy on the safe side. For an obstacle that is no point the curvature at its
     * nearest place counts, which is on the safe side too.
     *
     * @param name      what the line is
     * @param angleDeg  its elevation, decimal degrees
     * @param curved    whether it is a line of sight
     * @param sector    the sector
     * @param obstacles the obstacles
     * @param frame     the frame of the sector
     * @param citations where the angle comes from
     * @return the line with its worst obstacle
     * @throws slopewright.siting.SitingException where an obstacle lacks a number
     */
    public static SightLine of(String name, double angleDeg, boolean curved, Sector sector, List<Obstacle> obstacles, SiteFrame frame,
            List<Citation> citations) {
        ProtectionSurface plane = new ProtectionSurface(sector.lens().alongM(), sector.lens().heightM(), 0, Angles.tanDeg(sector.halfDeg()),
                sector.rangeM(), angleDeg, sector.axisTurnDeg());
        double worstM = Double.POSITIVE_INFINITY;
        double worstDeg = 0;
        String named = "";
        for (Obstacle obstacle : obstacles) {
            List<FramePoint> points = SurveyedShape.of(obstacle, frame).points().stream()
                    .map(point -> new FramePoint(point.alongM(), point.rightM() - sector.lens().rightM(), point.heightM())).toList();
            Optional<Penetration> found = compare(obstacle, points, plane);
            if (found.isEmpty()) {
                continue;
            }
            double nearest = points.stream().mapToDouble(point -> plane.outwardM(point.alongM(), point.rightM())).min().orElseThrow();
            double drop = curved ? Curvature.dropM(Math.max(0, nearest), Curvature.USUAL_REFRACTION) : 0;
            double margin = drop - found.get().excessM();
            if (margin < worstM) {
                double distance = Math.max(0, plane.outwardM(found.get().point().alongM(), found.get().point().rightM()));
                worstM = margin;
                worstDeg = angleDeg - Angles.elevationDeg(distance * Angles.tanDeg(angleDeg) - margin, distance);
                named = Projects.label(obstacle);
            }
        }
        boolean none = named.isEmpty();
        return new SightLine(name, angleDeg, curved, none ? OptionalDouble.empty() : OptionalDouble.of(worstM),
                none ? OptionalDouble.empty() : OptionalDouble.of(worstDeg), named, citations);
    }

    private static Optional<Penetration> compare(Obstacle obstacle, List<FramePoint> points, ProtectionSurface plane) {
        double horizontal = obstacle.getHorizontalAccuracyM() == null ? 0 : obstacle.getHorizontalAccuracyM();
        double vertical = obstacle.getVerticalAccuracyM() == null ? 0 : obstacle.getVerticalAccuracyM();
        return switch (obstacle.getKind()) {
            case POINT -> plane.compare(points.get(0), horizontal, vertical);
            case LINE -> plane.compareLine(points, horizontal, vertical);
            case AREA -> plane.compareArea(points, horizontal, vertical);
        };
    }
}
