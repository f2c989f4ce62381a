package slopewright.drawing.section;

import java.util.Locale;

import slopewright.drawing.scene.TextWidth;
import slopewright.geometry.Angles;

/** How a live section names things and writes numbers; a window says it in the language and units of its user. */
public interface SectionWords {

    /** What is said. */
    enum Word {
        /** Origin at a runway. */
        THRESHOLD("threshold"),
        /** Origin at a helipad. */
        HOVER_POINT("hover point"),
        /** Takes the angle. */
        SURFACE("obstacle surface %s"),
        /** Takes the angle. */
        SLOPE("slope %s"),
        /** Takes the angle. */
        GLIDE_PATH("glide path %s"),
        /** Takes the name of the aeroplanes and the height of their wheels over the threshold. */
        WHEELS("%s: wheels %s"),
        /** Takes the height. */
        EYE_HEIGHT("eye %s"),
        /** Takes the name and the height above the threshold. */
        OBSTACLE("%s, %s"),
        /** Takes a length. */
        LEFT("%s left"),
        /** Takes a length. */
        RIGHT("%s right"),
        /** Added to an obstacle that stands beside the surface. */
        BESIDE("beside the surface"),
        /** Takes the length by which an obstacle stands through the surface. */
        THROUGH("through by %s"),
        /** Takes two numbers: how many obstacles there are, and how many are drawn singly. */
        SIMPLIFIED("%s obstacles, %s drawn singly"),
        /** What a pilot is told. */
        WELL_ABOVE("well above"),
        /** What a pilot is told. */
        ABOVE("above"),
        /** What a pilot is told. */
        ON_SLOPE("on slope"),
        /** What a pilot is told. */
        BELOW("below"),
        /** What a pilot is told. */
        WELL_BELOW("well below"),
        /** What a pilot is told. */
        OUTSIDE("no signal");

        private final String english;

        Word(String english) {
            this.english = english;
        }

        /** Returns its name in a catalogue. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * Says something.
     *
     * @param word   what
     * @param values what it takes
     */
    String say(Word word, Object... values);

    /** Writes a length in metres with its unit. */
    String length(double valueM);

    /** Writes an angle in decimal degrees. */
    String angle(double valueDeg);

    /** Returns the unit of the scales along the edges, metres. */
    double axisUnitM();

    /** Returns what the unit of the scales is called. */
    String axisUnit();

    /** Returns how wide a text is, millimetres, whose capitals have a height in millimetres. */
    double widthMm(String text, double sizeMm);

    /** Returns English words with metres. */
    static SectionWords english() {
        return new SectionWords() {

            @Override
            public String say(Word word, Object... values) {
                return String.format(Locale.ROOT, word.english, values);
            }

            @Override
            public String length(double valueM) {
                return String.format(Locale.ROOT, "%.1f m", valueM);
            }

            @Override
            public String angle(double valueDeg) {
                return Angles.format(valueDeg);
            }

            @Override
            public double axisUnitM() {
                return 1;
            }

            @Override
            public String axisUnit() {
                return "m";
            }

            @Override
            public double widthMm(String text, double sizeMm) {
                return TextWidth.mm(text, sizeMm);
            }
        };
    }
}
