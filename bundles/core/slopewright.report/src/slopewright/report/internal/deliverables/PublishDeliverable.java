package slopewright.report.internal.deliverables;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.exchange.publish.AixmFile;
import slopewright.exchange.publish.PublishedData;
import slopewright.messages.Message;
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
        return Stream.concat(SheetOffers.of("publish", false, (source, options) -> PublishedData.of(source.evaluation()).sheet(
                options.inMetres())).stream(),
                Stream.of(new Offer("publish-aixm", Message.of("deliverable.publish-aixm"), "publish", "aixm", false, (source, options) ->
                        AixmFile.bytes(PublishedData.of(source.evaluation()), source.project(), source.madeFrom(), options.date(),
                        options.inMetres()), Optional.empty())))
                .toList();
    }
}
