package slopewright.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.report.internal.commissioning.CommissioningDocument;
import slopewright.report.internal.pdf.PdfDocument;
import slopewright.report.internal.pdf.Pictures;

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
     * @param evaluation the evaluation of the project
     * @param aid        an aid of the project
     * @param options    date, paper, template and language
     * @param format     the form
     * @return the document; the same input gives the same bytes
     * @throws slopewright.siting.SitingException where the layout cannot be worked out; the message says why
     * @throws ReportException                    where the document cannot be laid out
     */
    public static byte[] write(ProjectEvaluation evaluation, ApproachAid aid, ReportOptions options, Reports.Format format)
            throws ReportException {
        CommissioningDocument document = new CommissioningDocument(evaluation, evaluation.aid(aid), options);
        String xhtml = document.write();
        if (format == Reports.Format.HTML) {
            return xhtml.getBytes(StandardCharsets.UTF_8);
        }
        try {
            return PdfDocument.write(xhtml, new Pictures(false), document.title(), options.date());
        } catch (IOException e) {
            throw new ReportException(Message.said("document.commissioning", e), e);
        }
    }
}
