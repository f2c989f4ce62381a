package slopewright.ui.profile.internal.section;

import slopewright.ui.MessageTexts;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** How the readout of a section writes numbers, in the units that the user prefers. */
final class ScreenWords {

    private static final double TENTHS = 10;
    private static final double ANGLE_STEPS = 6000;

    private ScreenWords() {
    }

    /** Writes a length, rounded as what the rules say of it. */
    static String exact(double valueM) {
        return MessageTexts.length(valueM);
    }

    /** Writes a length to the tenth of a metre. */
    static String coarse(double valueM) {
        return QuantityFormat.preferred().showWithUnit(Math.round(valueM * TENTHS) / TENTHS, Quantity.LENGTH);
    }

    /** Writes an angle as the user prefers it. */
    static String degrees(double valueDeg) {
        if (Preferences.isMinutes()) {
            return QuantityFormat.preferred().degreesMinutes(Math.round(valueDeg * ANGLE_STEPS / TENTHS) * TENTHS / ANGLE_STEPS);
        }
        return QuantityFormat.preferred().show(Math.round(valueDeg * 1e4) / 1e4, Quantity.ANGLE) + "°";
    }

    /** Writes a number with its sign in front. */
    static String signed(double value, String shownWithoutSign) {
        return (value < 0 ? "−" : "+") + shownWithoutSign;
    }
}
