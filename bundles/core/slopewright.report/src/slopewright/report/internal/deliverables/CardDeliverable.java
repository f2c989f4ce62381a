package slopewright.report.internal.deliverables;

import java.util.List;

import slopewright.model.ApproachAid;
import slopewright.report.Reports;
import slopewright.report.SetUpCards;
import slopewright.report.handover.Deliverable;

/** The set-up card of a portable aid; it says on itself where it is not for use. */
public final class CardDeliverable implements Deliverable {

    @Override
    public int order() {
        return 80;
    }

    @Override
    public List<Offer> about(ApproachAid aid) {
        return !Boolean.TRUE.equals(aid.getPortable()) ? List.of() : List.of(new Offer("card", "pdf", true, (source, options) -> SetUpCards
                .write(source.evaluation(), source.aid(aid.getId()).aid(), options.date(), options.report(), Reports.Format.PDF).bytes()));
    }
}
