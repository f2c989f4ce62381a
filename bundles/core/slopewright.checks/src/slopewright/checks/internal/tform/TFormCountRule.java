package slopewright.checks.internal.tform;

import slopewright.checks.internal.UnitCount;
import slopewright.siting.Trait;

/** A T form has twenty units, an abbreviated one ten. Severity fail: the number that is seen is the signal. */
public final class TFormCountRule extends UnitCount {

    /** Made by the service loader. */
    public TFormCountRule() {
        super("TF-01", Trait.LEGS);
    }
}
