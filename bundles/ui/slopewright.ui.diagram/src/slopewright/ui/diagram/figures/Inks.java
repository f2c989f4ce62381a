package slopewright.ui.diagram.figures;

import java.util.EnumMap;
import java.util.Map;

import org.eclipse.swt.graphics.Color;

import slopewright.drawing.Ink;

/** Colours of inks on the screen: the same as on paper. */
public final class Inks {

    private static final Map<Ink, Color> COLOURS = colours();

    private Inks() {
    }

    private static Map<Ink, Color> colours() {
        Map<Ink, Color> colours = new EnumMap<>(Ink.class);
        for (Ink ink : Ink.values()) {
            int rgb = (int) Long.parseLong(ink.rgb(), 16) & 0xffffff;
            colours.put(ink, new Color(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff));
        }
        return colours;
    }

    /** Returns the colour of an ink; it needs no disposal. */
    public static Color colour(Ink ink) {
        return COLOURS.get(ink);
    }
}
