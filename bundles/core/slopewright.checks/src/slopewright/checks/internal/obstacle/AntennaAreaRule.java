package slopewright.checks.internal.obstacle;

import java.util.List;
import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.model.GlidePathAid;

/** Units keep out of the area of the glide path antenna. */
public final class AntennaAreaRule extends AidRule {

    /** Made by the service loader. */
    public AntennaAreaRule() {
        super("OBS-05", Severity.NOTE);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        GlidePathAid path = facts.host().getGlidePath();
        if (path == null || !facts.atRunway()) {
            return;
        }
        double antenna = AidFacts.need(path.getAntennaRightM(), "place of the glide path antenna");
        List<String> near = facts.units().stream().filter(unit -> unit.rightM() < 0 == antenna < 0).map(UnitAt::label).toList();
        findings.decide(facts.aid(), near.isEmpty(), Optional.empty(), near.isEmpty()
                ? "The antenna stands on the other side of the runway."
                : Words.list(near) + (near.size() == 1 ? " stands" : " stand")
                + " on the side of the antenna. No dimension of its area was read:"
                        + " let the operator of the glide path confirm that its signal is not disturbed, or use the other side.",
                        severity());
    }
}
