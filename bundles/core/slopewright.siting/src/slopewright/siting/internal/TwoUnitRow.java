package slopewright.siting.internal;

/** Two units in a row, trade name APAPI. */
public final class TwoUnitRow extends RowFamily {

    /** Made by the service loader. */
    public TwoUnitRow() {
        super("two-unit-row", "APAPI", 2);
    }
}
