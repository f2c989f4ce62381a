package slopewright.siting.internal;

/** Four units in a row, trade name PAPI. */
public final class FourUnitRow extends RowFamily {

    /** Made by the service loader. */
    public FourUnitRow() {
        super("four-unit-row", "PAPI", 4);
    }
}
