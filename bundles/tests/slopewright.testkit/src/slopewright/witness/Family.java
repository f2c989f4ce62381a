package slopewright.witness;

/** The kinds of visual approach slope indicator. */
public enum Family {
    /** Two bars, near and far. */
    TWO_BAR("two-bar"),
    /** Three bars, two paths. */
    THREE_BAR("three-bar"),
    /** Wing bars and legs on both sides, 20 units. */
    T_FORM("t-form"),
    /** Wing bar and legs on one side, 10 units. */
    T_FORM_ABBREVIATED("t-form-abbreviated"),
    /** Row of four units. */
    FOUR_UNIT_ROW("four-unit-row"),
    /** Row of two units. */
    TWO_UNIT_ROW("two-unit-row"),
    /** One unit, red, green and amber. */
    TRI_COLOUR("tri-colour"),
    /** One unit, steady and pulsating red and white. */
    PULSATING("pulsating"),
    /** One unit, steady and flashing red and green. */
    HELIPORT_SECTOR("heliport-sector"),
    /** Two units, each white, green and red. */
    HELIPORT_PAIR("heliport-pair"),
    /** Three unlit panels. */
    ALIGNMENT_PANELS("alignment-panels");

    private final String key;

    Family(String key) {
        this.key = key;
    }

    /** The written key, for example {@code four-unit-row}. */
    public String key() {
        return key;
    }

    /** Whether this is a row across the runway with one colour change a unit. */
    public boolean row() {
        return this == FOUR_UNIT_ROW || this == TWO_UNIT_ROW;
    }

    /** Whether this is one of the two T forms. */
    public boolean tForm() {
        return this == T_FORM || this == T_FORM_ABBREVIATED;
    }

    /** Whether this is a set of bars behind one another. */
    public boolean bars() {
        return this == TWO_BAR || this == THREE_BAR;
    }
}
