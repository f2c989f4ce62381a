package slopewright.report.internal.deliverables;

import java.util.List;
import java.util.Optional;

import slopewright.model.ApproachAid;
import slopewright.report.FieldPapers;
import slopewright.report.Reports;
import slopewright.report.handover.Deliverable;

/** The pocket sheet of a portable aid. */
public final class PocketDeliverable implements Deliverable {

    @Override
    public int order() {
        return 84;
    }

    @Override
    public List<Offer> about(ApproachAid aid) {
        return !Boolean.TRUE.equals(aid.getPortable()) ? List.of() : List.of(new Offer("pocket", "pdf", true,
                (source, options) -> FieldPapers.pocket(source.evaluation(), source.aid(aid.getId()).aid(), options.date(),
                        Optional.empty(), options.report(), Reports.Format.PDF).bytes()));
    }
}
