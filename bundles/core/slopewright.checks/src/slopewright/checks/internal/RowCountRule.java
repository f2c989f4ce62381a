package slopewright.checks.internal;

/** Four units, or two, on each side. */
public final class RowCountRule extends UnitCount {

    /** Made by the service loader. */
    public RowCountRule() {
        super("ROW-01", ROWS);
    }
}
