package slopewright.checks.internal.sector;

import slopewright.checks.internal.UnitCount;
import slopewright.siting.Trait;

/** Indicators with sectors have one unit, or two at a helipad. Severity fail: another number is another signal. */
public final class BoxCountRule extends UnitCount {

    /** Made by the service loader. */
    public BoxCountRule() {
        super("BOX-01", Trait.SECTORS);
    }
}
