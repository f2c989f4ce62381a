package slopewright.siting;

import java.util.List;
import java.util.OptionalDouble;

import slopewright.geometry.Angles;
import slopewright.geometry.ProtectionSurface;
import slopewright.standards.Citation;

/**
 * The obstacle surface that belongs to a layout.
 *
 * @param slopeDeg          rise outward, decimal degrees
 * @param startAlongM       place of the inner edge, metres in the frame
 * @param startHeightM      height of the inner edge, metres above the threshold or the TLOF, the clearance taken off
 * @param innerEdgeM        length of the inner edge, metres
 * @param divergencePercent widening on each side, per cent of the distance outward
 * @param divergenceDeg     the splay where the source gives an angle, decimal degrees
 * @param lengthM           length, metres
 * @param axisTurnDeg       turn of the axis, decimal degrees, clockwise seen from above
 * @param clearanceM        how far below the slope that the source prints an object must stay, metres; zero where it may reach it
 * @param citations         where the dimensions come from
 */
public record SurfacePlan(double slopeDeg, double startAlongM, double startHeightM, double innerEdgeM, double divergencePercent,
        OptionalDouble divergenceDeg, double lengthM, double axisTurnDeg, double clearanceM, List<Citation> citations) {

    /** Copies the citations. */
    public SurfacePlan {
        citations = List.copyOf(citations);
    }

    /** Returns the surface as geometry. */
    public ProtectionSurface geometry() {
        double divergence = divergenceDeg.isPresent() ? Angles.tanDeg(divergenceDeg.getAsDouble()) : divergencePercent / 100;
        return new ProtectionSurface(startAlongM, startHeightM, innerEdgeM, divergence, lengthM, slopeDeg, axisTurnDeg);
    }

    /** Returns the same surface with its axis turned. */
    public SurfacePlan turned(double newAxisTurnDeg) {
        return new SurfacePlan(slopeDeg, startAlongM, startHeightM, innerEdgeM, divergencePercent, divergenceDeg, lengthM, newAxisTurnDeg,
                clearanceM, citations);
    }
}
