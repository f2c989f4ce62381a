package slopewright.ui.profile.internal.pilot;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;

import slopewright.drawing.pilot.LightMix;
import slopewright.drawing.scene.Ink;
import slopewright.siting.Colour;
import slopewright.siting.LightForm;
import slopewright.siting.Meaning;

/** Colours of a pilot's view: those of a picture, the same in a light and in a dark window. */
final class Tints {

    /** The body of a unit that shows nothing. */
    static final Color DARK = new Color(70, 74, 80);
    /** Text on a picture by day. */
    static final Color INK = new Color(20, 28, 36);
    /** Text on a picture by night. */
    static final Color CHALK = new Color(232, 236, 240);

    private static final RGB WHITE_LIGHT = new RGB(255, 250, 232);
    private static final RGB RED_LIGHT = new RGB(255, 52, 40);
    private static final RGB GREEN_LIGHT = new RGB(48, 214, 110);
    private static final RGB AMBER_LIGHT = new RGB(255, 176, 32);

    private Tints() {
    }

    static Color of(Ink ink) {
        int rgb = (int) Long.parseLong(ink.rgb(), 16) & 0xffffff;
        return new Color(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff);
    }

    static Color of(Colour colour) {
        return new Color(rgb(colour));
    }

    private static RGB rgb(Colour colour) {
        return switch (colour) {
            case WHITE -> WHITE_LIGHT;
            case RED -> RED_LIGHT;
            case GREEN -> GREEN_LIGHT;
            case AMBER -> AMBER_LIGHT;
            case NONE -> DARK.getRGB();
        };
    }

    /** Returns the colour in which two lights mix. */
    static Color of(LightMix mix) {
        RGB below = rgb(mix.below().form() == LightForm.OFF ? mix.above().colour() : mix.below().colour());
        RGB above = rgb(mix.above().form() == LightForm.OFF ? mix.below().colour() : mix.above().colour());
        double share = mix.aboveShare();
        return new Color(part(below.red, above.red, share), part(below.green, above.green, share), part(below.blue, above.blue, share));
    }

    /** Returns what is seen where a colour lies over a ground and covers a share of it, from 0 to 1. */
    static Color mixed(Color over, Color ground, double share) {
        return new Color(part(ground.getRed(), over.getRed(), share), part(ground.getGreen(), over.getGreen(), share),
                part(ground.getBlue(), over.getBlue(), share));
    }

    private static int part(int from, int to, double share) {
        return (int) Math.round(from + (to - from) * share);
    }

    /** Returns what stands for a meaning in a strip: the farther from the slope, the stronger. */
    static Color of(Meaning meaning) {
        return switch (meaning) {
            case WELL_ABOVE -> new Color(106, 142, 202);
            case ABOVE -> new Color(146, 172, 214);
            case ON_SLOPE -> new Color(112, 178, 124);
            case BELOW -> new Color(226, 152, 120);
            case WELL_BELOW -> new Color(218, 106, 90);
            case OUTSIDE -> new Color(150, 154, 158);
        };
    }
}
