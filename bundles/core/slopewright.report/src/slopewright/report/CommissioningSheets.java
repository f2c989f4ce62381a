package slopewright.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.report.internal.CommissioningDocument;
import slopewright.report.internal.PdfDocument;
import slopewright.report.internal.Pictures;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;

/**
 * Writes the sheet on which an installed indicator is measured: what every unit should be, what it was measured to be, how to set it
 * again, and what the measured indicator gives.
 */
public final class CommissioningSheets {

    private CommissioningSheets() {
    }

    /**
     * Writes a sheet. Measured values that the project holds are printed; the rest is left free for handwriting.
     *
     * @param project the project, not changed
     * @param aid     the aid, in a runway end or approach direction of the project
     * @param rules   the rule set, with the overrides and confirmations of the project
     * @param options date and paper
     * @param format  the form
     * @return the document; the same input gives the same bytes
     * @throws SitingException where the layout can not be worked out; the message says why
     * @throws ReportException where the document can not be laid out
     */
    public static byte[] write(Project project, ApproachAid aid, RuleSet rules, ReportOptions options, Reports.Format format)
            throws ReportException {
        ApproachHost host = Projects.host(aid)
                .orElseThrow(() -> new SitingException("the approach aid belongs to no runway end and no helipad"));
        AidEvaluation subject = AidEvaluation.of(aid, rules, new EvaluationCache());
        if (subject.siting().value().isEmpty()) {
            throw new SitingException(subject.siting().reason().map(Message::english).orElse(""));
        }
        String xhtml = CommissioningDocument.write(project, subject, options);
        if (format == Reports.Format.HTML) {
            return xhtml.getBytes(StandardCharsets.UTF_8);
        }
        try {
            return PdfDocument.write(xhtml, new Pictures(false), "Commissioning: " + Projects.path(aid), options.date());
        } catch (IOException e) {
            throw new ReportException("the commissioning sheet can not be laid out: " + e.getMessage(), e);
        }
    }
}
