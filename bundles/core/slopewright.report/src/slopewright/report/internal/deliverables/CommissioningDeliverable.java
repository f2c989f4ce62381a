package slopewright.report.internal.deliverables;

import java.util.List;

import slopewright.model.ApproachAid;
import slopewright.report.CommissioningSheets;
import slopewright.report.Reports;
import slopewright.report.handover.Deliverable;

/** The commissioning sheet of an aid. */
public final class CommissioningDeliverable implements Deliverable {

    @Override
    public int order() {
        return 70;
    }

    @Override
    public List<Offer> about(ApproachAid aid) {
        return List.of(new Offer("commissioning", "pdf", true, (source, options) -> CommissioningSheets.write(source
                .evaluation(), source.aid(aid.getId()).aid(), options.report(), Reports.Format.PDF)));
    }
}
