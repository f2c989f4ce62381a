package slopewright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A sloping trapezoid over the approach: it starts at an inner edge square to its axis, widens by the same amount on each side and
 * rises along the axis. The axis runs outward from the inner edge against the landing direction, turned about the middle of the
 * inner edge by {@code axisTurnDeg} (clockwise seen from above).
 *
 * @param startAlongM  place of the middle of the inner edge along the centre line, metres in the frame
 * @param startRightM  place of the middle of the inner edge to the right of the centre line, metres in the frame
 * @param startHeightM height of the surface at the inner edge, metres in the frame
 * @param innerEdgeM   length of the inner edge, metres, zero or more
 * @param divergence   widening on each side for each metre outward, a ratio, zero or more
 * @param lengthM      length along the axis, metres
 * @param slopeDeg     rise outward, decimal degrees, between -45 and 45
 * @param axisTurnDeg  turn of the axis, decimal degrees
 */
public record ProtectionSurface(double startAlongM, double startRightM, double startHeightM, double innerEdgeM, double divergence,
        double lengthM,
        double slopeDeg, double axisTurnDeg) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException where one is not finite or out of its range
     */
    public ProtectionSurface {
        if (!Double.isFinite(startAlongM + startRightM + startHeightM + innerEdgeM + divergence + lengthM + slopeDeg + axisTurnDeg)) {
            throw new IllegalArgumentException("a surface needs finite numbers");
        }
        if (innerEdgeM < 0 || divergence < 0 || lengthM <= 0 || Math.abs(slopeDeg) > 45) {
            throw new IllegalArgumentException("a surface needs an inner edge and a divergence of zero or more, a length above zero "
                    + "and a slope within 45 degrees");
        }
    }

    /**
     * Makes a surface that starts on the centre line.
     *
     * @throws IllegalArgumentException where a number is not finite or out of its range
     */
    public ProtectionSurface(double startAlongM, double startHeightM, double innerEdgeM, double divergence, double lengthM,
            double slopeDeg, double axisTurnDeg) {
        this(startAlongM, 0, startHeightM, innerEdgeM, divergence, lengthM, slopeDeg, axisTurnDeg);
    }

    /** Returns metres outward from the inner edge along the axis. */
    public double outwardM(double alongM, double rightM) {
        double turn = Math.toRadians(axisTurnDeg);
        return (startAlongM - alongM) * Math.cos(turn) - (rightM - startRightM) * Math.sin(turn);
    }

    /** Returns metres to the right of the axis, seen in the landing direction. */
    public double offsetM(double alongM, double rightM) {
        double turn = Math.toRadians(axisTurnDeg);
        return (startAlongM - alongM) * Math.sin(turn) + (rightM - startRightM) * Math.cos(turn);
    }

    /** Returns half the width at a distance outward, metres. */
    public double halfWidthM(double outwardM) {
        return innerEdgeM / 2 + outwardM * divergence;
    }

    /** Returns the height of the surface at a distance outward, metres in the frame. */
    public double heightAtOutwardM(double outwardM) {
        return startHeightM + outwardM * Angles.tanDeg(slopeDeg);
    }

    /** Returns whether a place lies under or over the surface, its outline included. */
    public boolean contains(double alongM, double rightM) {
        double outward = outwardM(alongM, rightM);
        return outward >= 0 && outward <= lengthM && Math.abs(offsetM(alongM, rightM)) <= halfWidthM(outward);
    }

    /** Returns the place that lies a distance outward and to the right of the axis, on the surface. */
    public FramePoint pointAt(double outwardM, double offsetM) {
        double turn = Math.toRadians(axisTurnDeg);
        double back = outwardM * Math.cos(turn) + offsetM * Math.sin(turn);
        double right = -outwardM * Math.sin(turn) + offsetM * Math.cos(turn);
        return new FramePoint(startAlongM - back, startRightM + right, heightAtOutwardM(outwardM));
    }

    /** Returns the four corners: inner left, inner right, outer right, outer left, seen in the landing direction. */
    public List<FramePoint> corners() {
        double inner = halfWidthM(0);
        double outer = halfWidthM(lengthM);
        return List.of(pointAt(0, -inner), pointAt(0, inner), pointAt(lengthM, outer), pointAt(lengthM, -outer));
    }

    /** Returns the same surface with another slope, decimal degrees. */
    public ProtectionSurface withSlopeDeg(double newSlopeDeg) {
        return new ProtectionSurface(startAlongM, startRightM, startHeightM, innerEdgeM, divergence, lengthM, newSlopeDeg, axisTurnDeg);
    }

    /** Returns the same surface with its axis turned to a new angle, decimal degrees. */
    public ProtectionSurface withAxisTurnDeg(double newTurnDeg) {
        return new ProtectionSurface(startAlongM, startRightM, startHeightM, innerEdgeM, divergence, lengthM, slopeDeg, newTurnDeg);
    }

    /**
     * Returns the same surface turned about the origin of the frame, as it lies for another landing direction.
     *
     * @param byDeg decimal degrees, clockwise seen from above
     */
    public ProtectionSurface turnedAboutOrigin(double byDeg) {
        if (byDeg == 0) {
            return this;
        }
        double turn = Math.toRadians(byDeg);
        return new ProtectionSurface(startAlongM * Math.cos(turn) - startRightM * Math.sin(turn),
                startAlongM * Math.sin(turn) + startRightM * Math.cos(turn), startHeightM, innerEdgeM, divergence, lengthM, slopeDeg,
                axisTurnDeg + byDeg);
    }

    /** Returns the same surface moved along the runway, metres in the landing direction. */
    public ProtectionSurface movedM(double byM) {
        return new ProtectionSurface(startAlongM + byM, startRightM, startHeightM, innerEdgeM, divergence, lengthM, slopeDeg, axisTurnDeg);
    }

    /** Returns the same surface raised, metres. */
    public ProtectionSurface raisedM(double byM) {
        return new ProtectionSurface(startAlongM, startRightM, startHeightM + byM, innerEdgeM, divergence, lengthM, slopeDeg, axisTurnDeg);
    }

    /**
     * Compares a point with the surface, on the safe side of how well it was surveyed.
     *
     * @param point               the point at its measured height
     * @param horizontalAccuracyM radius in which the true place may lie, metres, zero or more
     * @param verticalAccuracyM   by how much it may stand higher, metres, zero or more
     * @return the comparison, empty where the point lies outside even so
     */
    public Optional<Penetration> compare(FramePoint point, double horizontalAccuracyM, double verticalAccuracyM) {
        double outward = outwardM(point.alongM(), point.rightM());
        double offset = offsetM(point.alongM(), point.rightM());
        double side = horizontalAccuracyM * Math.hypot(1, divergence);
        boolean within = -outward - horizontalAccuracyM <= 0 && outward - (lengthM + horizontalAccuracyM) <= 0
                && -divergence * outward + Math.abs(offset) - (innerEdgeM / 2 + side) <= 0;
        return within ? Optional.of(penetration(new FramePoint(outward, offset, point.heightM()), horizontalAccuracyM, verticalAccuracyM))
                : Optional.empty();
    }

    /**
     * Compares a line of straight pieces with the surface. The height is linear on each piece and the surface is a plane, so the
     * worst point is an end of a piece clipped to the outline; that point is found exactly.
     *
     * @param line                at least one point
     * @param horizontalAccuracyM as for a point
     * @param verticalAccuracyM   as for a point
     * @return the worst place, empty where the whole line lies outside
     */
    public Optional<Penetration> compareLine(List<FramePoint> line, double horizontalAccuracyM, double verticalAccuracyM) {
        if (line.size() == 1) {
            return compare(line.get(0), horizontalAccuracyM, verticalAccuracyM);
        }
        Optional<Penetration> worst = Optional.empty();
        for (int i = 1; i < line.size(); i++) {
            worst = worse(worst, compareAll(line.subList(i - 1, i + 1), false, horizontalAccuracyM, verticalAccuracyM));
        }
        return worst;
    }

    /**
     * Compares an area with the surface. Where its corners differ in height, the highest corner counts for the whole area, which is
     * on the safe side. The worst point is an end of an edge clipped to the outline or a corner of the outline inside the area; that point
     * is found exactly, for areas that are not convex too.
     *
     * @param ring                corners in order, the last joined to the first; at least three
     * @param horizontalAccuracyM as for a point
     * @param verticalAccuracyM   as for a point
     * @return the worst place, empty where the whole area lies outside
     */
    public Optional<Penetration> compareArea(List<FramePoint> ring, double horizontalAccuracyM, double verticalAccuracyM) {
        double top = ring.stream().mapToDouble(FramePoint::heightM).max().orElseThrow();
        List<FramePoint> level = ring.stream().map(corner -> corner.atHeight(top)).toList();
        return compareAll(level, true, horizontalAccuracyM, verticalAccuracyM);
    }

    private Optional<Penetration> compareAll(List<FramePoint> shape, boolean closed, double horizontalM, double verticalM) {
        Optional<Penetration> worst = Optional.empty();
        for (FramePoint local : Clipping.clip(toLocal(shape), closed, this, horizontalM)) {
            worst = worse(worst, Optional.of(penetration(local, horizontalM, verticalM)));
        }
        return worst;
    }

    private Penetration penetration(FramePoint local, double horizontalM, double verticalM) {
        double outward = Math.max(0, local.alongM() - horizontalM);
        double limit = heightAtOutwardM(slopeDeg >= 0 ? outward : Math.min(lengthM, local.alongM() + horizontalM));
        double height = local.heightM() + verticalM;
        FramePoint place = pointAt(local.alongM(), local.rightM()).atHeight(height);
        return new Penetration(place, limit, height - limit);
    }

    private static Optional<Penetration> worse(Optional<Penetration> first, Optional<Penetration> second) {
        if (first.isEmpty() || second.isEmpty()) {
            return first.isEmpty() ? second : first;
        }
        return second.get().excessM() > first.get().excessM() ? second : first;
    }

    private List<FramePoint> toLocal(List<FramePoint> shape) {
        List<FramePoint> local = new ArrayList<>(shape.size());
        for (FramePoint point : shape) {
            local.add(new FramePoint(outwardM(point.alongM(), point.rightM()), offsetM(point.alongM(), point.rightM()), point.heightM()));
        }
        return local;
    }

    /** Spelled out: what a record has by itself is written anew at every start. */
    @Override
    public boolean equals(Object other) {
        return other instanceof ProtectionSurface that && Double.compare(startAlongM, that.startAlongM) == 0
                && Double.compare(startRightM, that.startRightM) == 0
                && Double.compare(startHeightM, that.startHeightM) == 0
                && Double.compare(innerEdgeM, that.innerEdgeM) == 0
                && Double.compare(divergence, that.divergence) == 0
                && Double.compare(lengthM, that.lengthM) == 0 && Double.compare(slopeDeg, that.slopeDeg) == 0
                && Double.compare(axisTurnDeg, that.axisTurnDeg) == 0;
    }

    @Override
    public int hashCode() {
        int hash = Double.hashCode(startAlongM);
        hash = 31 * hash + Double.hashCode(startRightM);
        hash = 31 * hash + Double.hashCode(startHeightM);
        hash = 31 * hash + Double.hashCode(innerEdgeM);
        hash = 31 * hash + Double.hashCode(divergence);
        hash = 31 * hash + Double.hashCode(lengthM);
        hash = 31 * hash + Double.hashCode(slopeDeg);
        return 31 * hash + Double.hashCode(axisTurnDeg);
    }
}
