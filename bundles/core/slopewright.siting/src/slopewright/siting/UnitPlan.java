package slopewright.siting;

import java.util.List;
import java.util.Objects;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;

/**
 * One light unit or panel: where it stands and what it shows into which vertical sector. Immutable.
 *
 * @param id         name of the unit in the layout, unique there
 * @param bar        1 for the near or only bar, then upward
 * @param place      its lens, in the frame of the runway end or helipad
 * @param settingDeg the angle that it is set to, decimal degrees
 * @param azimuthDeg turn of its axis from the approach direction, decimal degrees, clockwise seen from above
 * @param edges      boundaries of its sectors, lowest first; empty for a panel
 */
public record UnitPlan(String id, int bar, FramePoint place, double settingDeg, double azimuthDeg, List<SectorEdge> edges) {

    /** Copies the edges and refuses those that do not rise or whose lights do not join. */
    public UnitPlan {
        Objects.requireNonNull(id);
        Objects.requireNonNull(place);
        edges = List.copyOf(edges);
        for (int i = 1; i < edges.size(); i++) {
            if (edges.get(i).angleDeg() <= edges.get(i - 1).angleDeg()) {
                throw new IllegalArgumentException("the sectors of unit " + id + " do not rise from edge " + i + " to edge " + (i + 1));
            }
            if (!edges.get(i).below().equals(edges.get(i - 1).above())) {
                throw new IllegalArgumentException("unit " + id + " shows two lights between edge " + i + " and edge " + (i + 1));
            }
        }
    }

    /** Makes a unit with one edge, its axis along the approach. */
    public static UnitPlan twoColour(String id, int bar, FramePoint place, double settingDeg, double widthMinutes, Light below,
            Light above) {
        return new UnitPlan(id, bar, place, settingDeg, 0, List.of(new SectorEdge(settingDeg, widthMinutes, below, above)));
    }

    /**
     * Returns the distance to an eye along the unit's axis, which is what counts for its sectors: they are planes through the lens,
     * square to the azimuth.
     *
     * @param eye the eye
     * @return metres; zero or less where the eye is abeam or behind
     */
    public double axisDistanceM(FramePoint eye) {
        if (azimuthDeg == 0) {
            return place.alongM() - eye.alongM();
        }
        double turn = Math.toRadians(azimuthDeg);
        return (place.alongM() - eye.alongM()) * Math.cos(turn) - (eye.rightM() - place.rightM()) * Math.sin(turn);
    }

    /**
     * Returns the elevation of an eye in the plane of the unit's axis.
     *
     * @param eye the eye
     * @return decimal degrees; NaN where the eye is abeam or behind
     */
    public double elevationDeg(FramePoint eye) {
        double distance = axisDistanceM(eye);
        return distance > 0 ? Angles.elevationDeg(eye.heightM() - place.heightM(), distance) : Double.NaN;
    }

    /**
     * Returns by how much an eye is to the side of the unit's axis.
     *
     * @param eye the eye
     * @return decimal degrees, to the right as the pilot sees it; over 90 either way where the eye is behind
     */
    public double offAxisDeg(FramePoint eye) {
        double turn = Math.toRadians(azimuthDeg);
        double side = (eye.rightM() - place.rightM()) * Math.cos(turn) - (eye.alongM() - place.alongM()) * Math.sin(turn);
        return Math.toDegrees(Math.atan2(side, axisDistanceM(eye)));
    }

    /** Returns what the unit shows at an elevation in decimal degrees: at an edge what is below it, but nothing at a cut-off. */
    public Light lightAt(double elevationDeg) {
        if (edges.isEmpty() || Double.isNaN(elevationDeg)) {
            return Light.DARK;
        }
        Light seen = edges.get(0).below();
        for (SectorEdge edge : edges) {
            boolean cutOff = edge.above().equals(Light.DARK) && elevationDeg == edge.angleDeg();
            if (cutOff || elevationDeg > edge.angleDeg()) {
                seen = edge.above();
            }
        }
        return seen;
    }

    /** Returns whether an elevation lies in the change from one light to another. */
    public boolean isInTransition(double elevationDeg) {
        for (SectorEdge edge : edges) {
            if (Math.abs(elevationDeg - edge.angleDeg()) <= Angles.minutesToDeg(edge.widthMinutes()) / 2) {
                return true;
            }
        }
        return false;
    }

    /** Returns the unit at another place. */
    public UnitPlan at(FramePoint newPlace) {
        return new UnitPlan(id, bar, newPlace, settingDeg, azimuthDeg, edges);
    }

    /** Returns the unit with another name. */
    public UnitPlan named(String newId) {
        return new UnitPlan(newId, bar, place, settingDeg, azimuthDeg, edges);
    }

    /** Returns the unit turned up as a whole, decimal degrees. */
    public UnitPlan raised(double byDeg) {
        return new UnitPlan(id, bar, place, settingDeg + byDeg, azimuthDeg, edges.stream().map(edge -> edge.raised(byDeg)).toList());
    }

    /** Returns the unit with its axis turned by an angle, decimal degrees clockwise. */
    public UnitPlan turned(double byDeg) {
        return new UnitPlan(id, bar, place, settingDeg, azimuthDeg + byDeg, edges);
    }

    /** Returns the unit on the other side of the centre line. */
    public UnitPlan mirrored() {
        return new UnitPlan(id, bar, new FramePoint(place.alongM(), -place.rightM(), place.heightM()), settingDeg, -azimuthDeg, edges);
    }
}
