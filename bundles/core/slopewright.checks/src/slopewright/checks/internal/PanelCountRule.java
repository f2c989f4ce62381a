package slopewright.checks.internal;

import java.util.Set;

/** Alignment of elements takes three panels. */
public final class PanelCountRule extends UnitCount {

    /** Made by the service loader. */
    public PanelCountRule() {
        super("PANEL-01", Set.of("alignment-panels"));
    }
}
