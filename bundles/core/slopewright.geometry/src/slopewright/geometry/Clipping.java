package slopewright.geometry;

import java.util.ArrayList;
import java.util.List;

/** Cuts points, pieces and rings to the outline of a surface, in the surface's own frame (outward, offset, height). */
final class Clipping {

    /** One half plane: {@code a*outward + b*offset <= c}. */
    private record HalfPlane(double a, double b, double c) {

        double excess(FramePoint point) {
            return a * point.alongM() + b * point.rightM() - c;
        }
    }

    private Clipping() {
    }

    /**
     * Returns the points that decide how a shape stands against the surface inside the outline, the outline moved outward by a margin
     * on every side: the ends of its clipped pieces, and for a ring the corners of the outline that it covers. Rings need not be convex.
     *
     * @param shape  one point, a piece of two points, or a ring
     * @param closed whether the last point is joined to the first
     */
    static List<FramePoint> clip(List<FramePoint> shape, boolean closed, ProtectionSurface surface, double marginM) {
        double side = marginM * Math.hypot(1, surface.divergence());
        double half = surface.innerEdgeM() / 2 + side;
        List<HalfPlane> outline = List.of(new HalfPlane(-1, 0, marginM), new HalfPlane(1, 0, surface.lengthM() + marginM),
                new HalfPlane(-surface.divergence(), 1, half), new HalfPlane(-surface.divergence(), -1, half));
        if (!closed) {
            return clip(shape, outline);
        }
        List<FramePoint> deciding = new ArrayList<>();
        for (int i = 0; i < shape.size(); i++) {
            deciding.addAll(clip(List.of(shape.get(i), shape.get((i + 1) % shape.size())), outline));
        }
        double height = shape.get(0).heightM();
        for (double outward : new double[] {-marginM, surface.lengthM() + marginM}) {
            double offset = half + surface.divergence() * outward;
            for (FramePoint corner : List.of(new FramePoint(outward, -offset, height), new FramePoint(outward, offset, height))) {
                if (covers(shape, corner)) {
                    deciding.add(corner);
                }
            }
        }
        return deciding;
    }

    private static List<FramePoint> clip(List<FramePoint> pieceOrPoint, List<HalfPlane> outline) {
        List<FramePoint> rest = pieceOrPoint;
        for (HalfPlane plane : outline) {
            rest = cut(rest, plane);
        }
        return rest;
    }

    private static List<FramePoint> cut(List<FramePoint> piece, HalfPlane plane) {
        List<FramePoint> kept = new ArrayList<>();
        for (int i = 0; i < piece.size(); i++) {
            FramePoint point = piece.get(i);
            double here = plane.excess(point);
            if (i > 0) {
                double before = plane.excess(piece.get(i - 1));
                if (before < 0 && here > 0 || before > 0 && here < 0) {
                    kept.add(piece.get(i - 1).towards(point, before / (before - here)));
                }
            }
            if (here <= 0) {
                kept.add(point);
            }
        }
        return kept;
    }

    /** Counts how often a ray outward from the place crosses the ring. */
    private static boolean covers(List<FramePoint> ring, FramePoint place) {
        boolean inside = false;
        for (int i = 0; i < ring.size(); i++) {
            FramePoint from = ring.get(i);
            FramePoint to = ring.get((i + 1) % ring.size());
            if (from.rightM() > place.rightM() != to.rightM() > place.rightM()) {
                double share = (place.rightM() - from.rightM()) / (to.rightM() - from.rightM());
                inside ^= from.alongM() + share * (to.alongM() - from.alongM()) > place.alongM();
            }
        }
        return inside;
    }
}
