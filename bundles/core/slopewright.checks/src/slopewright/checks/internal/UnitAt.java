package slopewright.checks.internal;

import slopewright.model.LightUnit;
import slopewright.model.util.Projects;

/**
 * A light unit whose numbers must be there when they are asked for.
 *
 * @param unit the unit of the model
 */
record UnitAt(LightUnit unit) {

    /** Returns what it is called. */
    String label() {
        return Projects.label(unit);
    }

    /** Returns its bar, 1 where none was entered. */
    int bar() {
        return unit.getBar() == null ? 1 : unit.getBar();
    }

    double alongM() {
        return need(unit.getAlongM(), "place along the runway");
    }

    double rightM() {
        return need(unit.getRightM(), "place to the side");
    }

    double lensElevationM() {
        return need(unit.getLensElevationM(), "lens elevation");
    }

    double settingDeg() {
        return need(unit.getSettingDeg(), "setting");
    }

    /** Returns a number that must be there. */
    double need(Double number, String what) {
        if (number == null) {
            throw Stop.missing(what + " of " + label());
        }
        return number;
    }
}
