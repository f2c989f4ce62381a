package slopewright.checks.internal.obstacle;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.GlidePathAid;

/** Units keep out of the area of the glide path antenna. */
public final class AntennaAreaRule extends AidRule {

    /** Made by the service loader. */
    public AntennaAreaRule() {
        super("OBS-05", Severity.NOTE);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        GlidePathAid path = facts.end().getGlidePath();
        if (path == null) {
            throw Stop.notApplicable(Message.of("outcome.no-glide-path"));
        }
        double antenna = AidFacts.need(path.getAntennaRightM(), Message.of("missing.antenna-right"));
        List<UnitAt> sameSide = facts.units().stream().filter(unit -> unit.rightM() < 0 == antenna < 0).toList();
        outcomes.about(facts.aid()).met(sameSide.isEmpty())
                .saying(sameSide.isEmpty() ? "other-side" : "same-side", Words.list(sameSide.stream().map(UnitAt::name).toList()))
                .advising("confirm").add();
    }
}
