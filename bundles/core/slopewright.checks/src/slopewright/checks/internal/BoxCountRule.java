package slopewright.checks.internal;

/** Indicators with sectors have one unit, or two at a helipad. */
public final class BoxCountRule extends UnitCount {

    /** Made by the service loader. */
    public BoxCountRule() {
        super("BOX-01", BOXES);
    }
}
