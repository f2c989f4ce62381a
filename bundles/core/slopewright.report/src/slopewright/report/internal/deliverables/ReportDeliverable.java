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
        return List.of(offer("pdf", true, Reports.Format.PDF), offer("html", false, Reports.Format.HTML));
    }

    private static Offer offer(String ending, boolean usual, Reports.Format format) {
        return new Offer("report", ending, usual, (source, options) -> Reports.write(source.evaluation(), source.checked().result(),
                options.report(), format));
    }
}
