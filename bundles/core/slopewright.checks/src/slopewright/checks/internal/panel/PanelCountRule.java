package slopewright.checks.internal.panel;

import slopewright.checks.internal.UnitCount;
import slopewright.siting.Trait;

/** Alignment of elements takes three panels. Severity fail: with fewer nothing can be brought into line. */
public final class PanelCountRule extends UnitCount {

    /** Made by the service loader. */
    public PanelCountRule() {
        super("PANEL-01", Trait.PANELS);
    }
}
