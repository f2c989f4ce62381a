package slopewright.checks.internal;

import slopewright.model.LightUnit;
import slopewright.model.util.Projects;

/**
 * A light unit whose numbers must be there when they are asked for.
 *
 * @param unit the unit of the model
 */
public record UnitAt(LightUnit unit) {

    /** Returns what it is called. */
    public String label() {
        return Projects.label(unit);
    }

    /** Returns its bar, 1 where none was entered. */
    public int bar() {
        return unit.getBar() == null ? 1 : unit.getBar();
    }

    public double alongM() {
        return need(unit.getAlongM(), "place along the runway");
    }

    public double rightM() {
        return need(unit.getRightM(), "place to the side");
    }

    public double lensElevationM() {
        return need(unit.getLensElevationM(), "lens elevation");
    }

    public double settingDeg() {
        return need(unit.getSettingDeg(), "setting");
    }

    /** Returns a number that must be there. */
    public double need(Double number, String what) {
        if (number == null) {
            throw Stop.missing(what + " of " + label());
        }
        return number;
    }
}
