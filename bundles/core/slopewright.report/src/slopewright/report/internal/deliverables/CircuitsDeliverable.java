package slopewright.report.internal.deliverables;

import java.util.List;

import slopewright.exchange.circuit.LoadSchedule;
import slopewright.model.Project;
import slopewright.report.handover.Deliverable;

/** Circuits with their loads. */
public final class CircuitsDeliverable implements Deliverable {

    @Override
    public int order() {
        return 30;
    }

    @Override
    public List<Offer> about(Project project) {
        return SheetOffers.of("circuits", false, (source, options) -> LoadSchedule.of(source.project()).sheet(options.inMetres()));
    }
}
