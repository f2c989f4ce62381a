package slopewright.edit;

import slopewright.messages.Message;
import slopewright.model.LightUnit;
import slopewright.model.SlopewrightPackage;

/** Sets the angle of a light unit; its sectors turn with it, because they count from the setting. */
public final class SetUnitSetting {

    private SetUnitSetting() {
    }

    /**
     * Sets the angle.
     *
     * @param unit       the unit
     * @param settingDeg the new setting, decimal degrees, between -90 and 90
     * @throws EditException where the angle is none
     */
    public static RecordedEdit to(LightUnit unit, double settingDeg) {
        if (!(Math.abs(settingDeg) < 90)) {
            throw new EditException(Message.said("edit.setting", settingDeg));
        }
        return SetAttribute.named("Set unit", unit, SlopewrightPackage.Literals.LIGHT_UNIT__SETTING_DEG, settingDeg);
    }
}
