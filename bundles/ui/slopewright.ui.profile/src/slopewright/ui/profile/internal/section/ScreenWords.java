package slopewright.ui.profile.internal.section;

import org.eclipse.draw2d.FigureUtilities;

import slopewright.drawing.section.SectionWords;
import slopewright.geometry.Lengths;
import slopewright.ui.diagram.figures.Fonts;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** The words of a section in the language of the window and the units that the user prefers. */
public final class ScreenWords implements SectionWords {

    private static final double TENTHS = 10;
    private static final double HUNDREDTHS = 100;
    private static final double ANGLE_STEPS = 6000;
    private static final int AROUND_TEXT_PX = 4;

    private final Fonts fonts;

    /** Makes the words of a diagram with its fonts. */
    public ScreenWords(Fonts fonts) {
        this.fonts = fonts;
    }

    @Override
    public String say(Word word, Object... values) {
        return Messages.get("section.draw." + word.key(), values);
    }

    @Override
    public String length(double valueM) {
        return rounded(valueM, TENTHS);
    }

    /** Writes a length to the centimetre. */
    static String exact(double valueM) {
        return rounded(valueM, HUNDREDTHS);
    }

    /** Writes a length to the tenth of a metre. */
    static String coarse(double valueM) {
        return rounded(valueM, TENTHS);
    }

    private static String rounded(double valueM, double steps) {
        return QuantityFormat.preferred().showWithUnit(Math.round(valueM * steps) / steps, Quantity.LENGTH);
    }

    @Override
    public String angle(double valueDeg) {
        return degrees(valueDeg);
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

    @Override
    public double axisUnitM() {
        return Preferences.isFeet() ? Lengths.METRES_PER_FOOT : 1;
    }

    @Override
    public String axisUnit() {
        return Preferences.isFeet() ? "ft" : "m";
    }

    @Override
    public double widthMm(String text, double sizeMm) {
        return (FigureUtilities.getTextWidth(text, fonts.of(sizeMm)) + AROUND_TEXT_PX) / Fonts.PX_PER_MM;
    }
}
