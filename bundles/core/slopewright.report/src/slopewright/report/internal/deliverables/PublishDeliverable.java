package slopewright.report.internal.deliverables;

import java.util.List;

import slopewright.exchange.publish.PublishedData;
import slopewright.model.Project;
import slopewright.report.handover.Deliverable;

/** The data that are published for the aerodrome. */
public final class PublishDeliverable implements Deliverable {

    @Override
    public int order() {
        return 40;
    }

    @Override
    public List<Offer> about(Project project) {
        return SheetOffers.of("publish", false, (source, options) -> PublishedData.of(source.evaluation()).sheet());
    }
}
