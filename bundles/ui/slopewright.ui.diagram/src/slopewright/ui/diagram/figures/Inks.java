package slopewright.ui.diagram.figures;

import java.util.EnumMap;
import java.util.Map;

import org.eclipse.swt.graphics.Color;

import slopewright.drawing.scene.Ink;
import slopewright.ui.theme.ScreenTheme;

/**
 * Colours of inks on the screen: in a light window those of paper, in a dark one bright on a dark ground. Text has a contrast of at
 * least 4.5 to 1 against the ground in both. What a pilot sees keeps its colours.
 */
public final class Inks {

    private static final Map<Ink, Color> LIGHT = new EnumMap<>(Ink.class);
    private static final Map<Ink, Color> DARK = new EnumMap<>(Ink.class);

    static {
        for (Ink ink : Ink.values()) {
            LIGHT.put(ink, of(onLight(ink)));
            DARK.put(ink, of(onDark(ink)));
        }
    }

    private Inks() {
    }

    /** What is read or followed on paper in these inks is too pale for small letters and thin lines on a screen. */
    private static String onLight(Ink ink) {
        return switch (ink) {
            case TAXIWAY -> "7f8b95";
            case GREEN -> "257a41";
            case GLIDE_PATH -> "915e1e";
            default -> ink.rgb();
        };
    }

    private static String onDark(Ink ink) {
        return switch (ink) {
            case PAPER -> "1e2126";
            case TEXT -> "e4e8ec";
            case DIMENSION -> "a3b1be";
            case PAVEMENT -> "4a5057";
            case MARKING -> "f4f6f7";
            case TAXIWAY -> "98a4ae";
            case AXIS -> "8fa0ae";
            case UNIT -> "6cc3d6";
            case RED -> "ff6b61";
            case GREEN -> "4fc777";
            case AMBER -> "ffb43a";
            case CORRIDOR -> "2c4630";
            case SURFACE -> "c09be8";
            case OBSTACLE -> "cdb48d";
            case PENETRATION -> "ff6b61";
            case GROUND -> "c9a66b";
            case WHEELS -> "6fb1f5";
            case GLIDE_PATH -> "e8ad62";
            default -> ink.rgb();
        };
    }

    private static Color of(String rgb) {
        int number = (int) Long.parseLong(rgb, 16) & 0xffffff;
        return new Color(number >> 16, number >> 8 & 0xff, number & 0xff);
    }

    /** Returns the colour of an ink in the window as it looks now; it needs no disposal. */
    public static Color colour(Ink ink) {
        return colour(ink, ScreenTheme.isDark());
    }

    /**
     * Returns the colour of an ink.
     *
     * @param ink  the ink
     * @param dark whether the window is dark
     */
    public static Color colour(Ink ink, boolean dark) {
        return (dark ? DARK : LIGHT).get(ink);
    }
}
