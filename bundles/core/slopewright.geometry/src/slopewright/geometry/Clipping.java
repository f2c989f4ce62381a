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
     * Returns the corners of what remains of a shape inside the outline, the outline moved outward by a margin on every side.
     *
     * @param shape  one point, a piece of two points, or a ring
     * @param closed whether the last point is joined to the first
     */
    static List<FramePoint> clip(List<FramePoint> shape, boolean closed, ProtectionSurface surface, double marginM) {
        double side = marginM * Math.hypot(1, surface.divergence());
        double half = surface.innerEdgeM() / 2 + side;
        List<HalfPlane> outline = List.of(new HalfPlane(-1, 0, marginM), new HalfPlane(1, 0, surface.lengthM() + marginM),
                new HalfPlane(-surface.divergence(), 1, half), new HalfPlane(-surface.divergence(), -1, half));
        List<FramePoint> rest = shape;
        for (HalfPlane plane : outline) {
            rest = cut(rest, closed, plane);
        }
        return rest;
    }

    private static List<FramePoint> cut(List<FramePoint> shape, boolean closed, HalfPlane plane) {
        List<FramePoint> kept = new ArrayList<>();
        int count = shape.size();
        for (int i = 0; i < count; i++) {
            FramePoint point = shape.get(i);
            double here = plane.excess(point);
            if (i > 0 || closed && count > 1) {
                FramePoint previous = shape.get((i + count - 1) % count);
                double before = plane.excess(previous);
                if (before < 0 && here > 0 || before > 0 && here < 0) {
                    kept.add(previous.towards(point, before / (before - here)));
                }
            }
            if (here <= 0) {
                kept.add(point);
            }
        }
        return kept;
    }
}
