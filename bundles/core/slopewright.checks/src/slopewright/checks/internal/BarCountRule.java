package slopewright.checks.internal;

/** Bars come in fixed numbers of units. */
public final class BarCountRule extends UnitCount {

    /** Made by the service loader. */
    public BarCountRule() {
        super("BAR-01", BARS);
    }
}
