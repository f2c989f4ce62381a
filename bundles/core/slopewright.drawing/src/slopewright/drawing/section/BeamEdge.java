package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.List;

import slopewright.geometry.FramePoint;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;

/**
 * One edge of a beam as it is seen in a section: edges of units that stand in line across the runway lie on each other.
 *
 * @param unit     the first unit that has it
 * @param angleDeg its elevation, decimal degrees
 */
public record BeamEdge(UnitPlan unit, double angleDeg) {

    private static final double SAME_ANGLE_DEG = 1e-6;
    private static final double SAME_PLACE_M = 0.02;
    private static final double HIGHEST_ABOVE_SLOPE_DEG = 2.5;

    /** Returns the edges of a layout, each once; those that lie far above the slope are left out. */
    static List<BeamEdge> of(Siting siting) {
        List<BeamEdge> edges = new ArrayList<>();
        for (UnitPlan unit : siting.units()) {
            for (SectorEdge edge : unit.edges()) {
                BeamEdge fresh = new BeamEdge(unit, edge.angleDeg());
                if (edge.angleDeg() < siting.slopeDeg() + HIGHEST_ABOVE_SLOPE_DEG && edges.stream().noneMatch(fresh::lieson)) {
                    edges.add(fresh);
                }
            }
        }
        return edges;
    }

    private boolean lieson(BeamEdge other) {
        return Math.abs(angleDeg - other.angleDeg) < SAME_ANGLE_DEG && isAt(other.unit.place());
    }

    private boolean isAt(FramePoint place) {
        return Math.abs(place.alongM() - unit.place().alongM()) < SAME_PLACE_M && Math.abs(place.heightM() - unit.place()
                .heightM()) < SAME_PLACE_M;
    }

    /** Returns whether it is an edge of a unit too. */
    public boolean belongsTo(UnitPlan other) {
        return isAt(other.place()) && other.edges().stream().anyMatch(edge -> Math.abs(edge.angleDeg() - angleDeg) < SAME_ANGLE_DEG);
    }

    /** Returns its height at a place on the approach side of the lens, metres. */
    public double heightM(double alongM) {
        return SectionLines.heightM(unit.place(), angleDeg, alongM);
    }
}
