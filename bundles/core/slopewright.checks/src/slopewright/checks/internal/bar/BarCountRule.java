package slopewright.checks.internal.bar;

import slopewright.checks.internal.UnitCount;
import slopewright.siting.Trait;

/** Bars come in fixed numbers of units. Severity fail: a bar that lacks a unit, or has one too many, is another signal. */
public final class BarCountRule extends UnitCount {

    /** Made by the service loader. */
    public BarCountRule() {
        super("BAR-01", Trait.BARS);
    }
}
