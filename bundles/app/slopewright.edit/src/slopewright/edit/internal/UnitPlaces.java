package slopewright.edit.internal;

import java.util.Optional;

import slopewright.model.ApproachHost;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;
import slopewright.siting.Side;

/** Sets light units down elsewhere, to the millimetre; where the ground was surveyed their lenses keep their height above it. */
public final class UnitPlaces {

    private static final double STEPS_PER_M = 1000;

    private UnitPlaces() {
    }

    /** Rounds to what a field party can set out: millimetres. */
    public static double rounded(double valueM) {
        return Math.round(valueM * STEPS_PER_M) / STEPS_PER_M;
    }

    /** Moves a unit along the runway; does nothing where its place there is not known. */
    public static void moveAlong(LightUnit unit, double byM) {
        if (unit.getAlongM() != null && byM != 0) {
            setAlong(unit, unit.getAlongM() + byM);
        }
    }

    /** Sets a unit down at a distance along the runway; does nothing where its place there was not known. */
    public static void setAlong(LightUnit unit, double newAlongM) {
        Double from = unit.getAlongM();
        double to = rounded(newAlongM);
        if (from == null || from == to) {
            return;
        }
        unit.setAlongM(to);
        Optional<ApproachHost> host = Projects.host(unit);
        if (unit.getLensElevationM() != null && host.isPresent()) {
            Side side = unit.getRightM() != null && unit.getRightM() > 0 ? Side.RIGHT : Side.LEFT;
            double rise = LensHeights.of(host.get(), side).riseM(from, to);
            if (rise != 0) {
                unit.setLensElevationM(rounded(unit.getLensElevationM() + rise));
            }
        }
    }

    /** Sets a unit down at a distance to the right of the landing direction; does nothing where its place there was not known. */
    public static void setRight(LightUnit unit, double newRightM) {
        if (unit.getRightM() != null && unit.getRightM() != rounded(newRightM)) {
            unit.setRightM(rounded(newRightM));
        }
    }
}
