package slopewright.checks.internal;

import slopewright.evaluation.AidLayouts;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.model.LightUnit;
import slopewright.siting.ElementNames;

/**
 * A light unit whose numbers must be there when they are asked for.
 *
 * @param unit the unit of the model
 */
public record UnitAt(LightUnit unit) {

    /** Returns what it is called. */
    public Argument name() {
        return ElementNames.of(unit);
    }

    /** Returns its bar, which must be there where the family has several. */
    public int bar() {
        return AidLayouts.bar(unit).orElseThrow(() -> Stop.missing(Message.of("missing.unit-bar", name())));
    }

    public double alongM() {
        return need(unit.getAlongM(), Message.of("missing.unit-along", name()));
    }

    public double rightM() {
        return need(unit.getRightM(), Message.of("missing.unit-right", name()));
    }

    public double lensElevationM() {
        return need(unit.getLensElevationM(), Message.of("missing.unit-lens-elevation", name()));
    }

    public double settingDeg() {
        return need(unit.getSettingDeg(), Message.of("missing.unit-setting", name()));
    }

    /** Returns a number that must be there; its name is one of the catalogue. */
    public static double need(Double number, Message what) {
        return AidFacts.need(number, what);
    }
}
