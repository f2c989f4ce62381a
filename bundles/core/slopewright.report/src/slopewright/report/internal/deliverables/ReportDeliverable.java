package slopewright.report.internal.deliverables;

import java.util.List;

import slopewright.model.Project;
import slopewright.report.Reports;
import slopewright.report.handover.Deliverable;

/** The report. */
public final class ReportDeliverable implements Deliverable {

    @Override
    public int order() {
        return 10;
    }

    @Override
    public List<Offer> about(Project project) {
        return List.of(
                new Offer("report", "pdf", true, (source, options) -> Reports.write(source.evaluation(), options.report(),
                        Reports.Format.PDF)),
                new Offer("report", "html", false, (source, options) -> Reports.write(source.evaluation(), options.report(),
                        Reports.Format.HTML)));
    }
}
