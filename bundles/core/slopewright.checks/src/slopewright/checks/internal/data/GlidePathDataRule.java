package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.model.ApproachHost;
import slopewright.model.ApproachType;
import slopewright.siting.ElementNames;

/**
 * An electronic glide path makes an instrument approach, and a precision approach has one. Severity fail: a visual approach has a narrower
 * obstacle surface, and without the glide path the row is set and placed by other numbers.
 */
public final class GlidePathDataRule extends HostRule {
    /** Made by the service loader. */
    public GlidePathDataRule() {
        super("DATA-14", Severity.FAIL);
    }

    @Override
    void check(ApproachHost host, OutcomeCollector outcomes) {
        ApproachType type = host.getApproachType();
        boolean precision = type == ApproachType.PRECISION_CAT_I || type == ApproachType.PRECISION_CAT_II_III;
        if (host.getGlidePath() == null) {
            throw precision ? Stop.missing(Message.of("missing.glide-path", ElementNames.of(host)), Message.of("DATA-14.precision-without",
                    ElementNames.of(host))) : Stop.notApplicable(Message.of("glidepath.none"));
        }
        if (type == ApproachType.NOT_STATED) {
            throw Stop.missing(Message.of("missing.approach-type", ElementNames.of(host)));
        }
        outcomes.about(host).met(type != ApproachType.VISUAL)
                .saying(type == ApproachType.VISUAL ? "visual" : "instrument", ElementNames.of(host)).advising("choose").add();
    }
}
