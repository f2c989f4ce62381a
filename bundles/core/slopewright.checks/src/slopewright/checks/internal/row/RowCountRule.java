package slopewright.checks.internal.row;

import slopewright.checks.internal.UnitCount;
import slopewright.siting.Trait;

/** Four units, or two, on each side. Severity fail: another number is another signal. */
public final class RowCountRule extends UnitCount {

    /** Made by the service loader. */
    public RowCountRule() {
        super("ROW-01", Trait.ROW);
    }
}
