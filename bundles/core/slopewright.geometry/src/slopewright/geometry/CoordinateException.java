package slopewright.geometry;

import java.util.Locale;

import slopewright.geometry.CoordinateText.Axis;

/** A text is no coordinate; says why as data, so that it can be said in any language. Its message is in English. */
public final class CoordinateException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final Kind kind;
    private final String text;
    private final Axis axis;
    private final String detail;

    /** Why a text is no coordinate. */
    public enum Kind {
        /** It has none of the forms. */
        NOT_UNDERSTOOD("'%s' is not understood; type a %s such as %s."),
        /** It ends in a letter of the other axis. */
        OTHER_AXIS("'%s' is no %s: it ends in %s."),
        /** It has a sign and a letter. */
        SIGN_AND_LETTER("'%s' has a sign and a letter; give one of them."),
        /** Its minutes or seconds are sixty or more, or both are broken. */
        NO_SIXTIETHS("'%s': minutes and seconds are whole parts of sixty."),
        /** It is beyond the greatest one. */
        BEYOND("'%1$s' is beyond %3$s degrees.");

        private final String english;

        Kind(String english) {
            this.english = english;
        }

        /** Returns its name in the catalogues. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    CoordinateException(Kind kind, String text, Axis axis, String detail) {
        super(String.format(Locale.ROOT, kind.english, text, axis.word(), detail));
        this.kind = kind;
        this.text = text;
        this.axis = axis;
        this.detail = detail;
    }

    /** Returns why. */
    public Kind kind() {
        return kind;
    }

    /** Returns what was typed. */
    public String text() {
        return text;
    }

    /** Returns which coordinate it should have been. */
    public Axis axis() {
        return axis;
    }

    /** Returns the letter, the greatest number of degrees, or an example; empty where there is nothing to add. */
    public String detail() {
        return detail;
    }
}
