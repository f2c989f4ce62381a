package slopewright.edit.internal;

import slopewright.evaluation.UnitGround;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;

/** Sets light units down elsewhere, to the millimetre; where the ground was surveyed their lenses keep their height above it. */
public final class UnitPlaces {

    private UnitPlaces() {
    }

    /** Rounds to what a field party can set out: millimetres. */
    public static double rounded(double valueM) {
        return UnitGround.rounded(valueM);
    }

    /** Moves a unit along the runway; does nothing where its place there is not known. */
    public static void moveAlong(LightUnit unit, double byM) {
        if (unit.getAlongM() != null && byM != 0) {
            setAlong(unit, unit.getAlongM() + byM);
        }
    }

    /** Sets a unit down at a distance along the runway; does nothing where its place there was not known. */
    public static void setAlong(LightUnit unit, double newAlongM) {
        Projects.aid(unit).map(UnitGround::of).ifPresentOrElse(ground -> ground.setAlong(unit, newAlongM), () -> {
            if (unit.getAlongM() != null) {
                unit.setAlongM(rounded(newAlongM));
            }
        });
    }

    /** Sets a unit down at a distance to the right of the landing direction; does nothing where its place there was not known. */
    public static void setRight(LightUnit unit, double newRightM) {
        if (unit.getRightM() != null && unit.getRightM() != rounded(newRightM)) {
            unit.setRightM(rounded(newRightM));
        }
    }
}
