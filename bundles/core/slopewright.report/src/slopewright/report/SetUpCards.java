package slopewright.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.report.internal.CardDocument;
import slopewright.report.internal.PdfDocument;
import slopewright.report.internal.Pictures;
import slopewright.standards.RuleSet;

/** Writes the card that a person takes into the field to set a portable unit up: large type, readable in black and white. */
public final class SetUpCards {

    private SetUpCards() {
    }

    /**
     * Writes a card. While something stands against setting the unit up, the card says so in its first line and is not for use.
     *
     * @param project the project, not changed
     * @param aid     the aid, in a runway end or approach direction of the project
     * @param rules   the rule set, with the overrides and confirmations of the project
     * @param date    the day of the set-up, for the magnetic variation
     * @param paper   the paper
     * @param format  the form
     * @return the document; the same input gives the same bytes
     * @throws slopewright.siting.SitingException where something is missing or does not fit; the message says what
     * @throws ReportException                    where it can not be laid out
     */
    public static byte[] write(Project project, ApproachAid aid, RuleSet rules, LocalDate date, PaperSize paper, Reports.Format format)
            throws ReportException {
        PortableSetUp found = PortableSetUp.of(AidEvaluation.of(aid, rules, new EvaluationCache()), date);
        ReportOptions options = new ReportOptions(date.toString(), paper);
        Pictures pictures = new Pictures(format == Reports.Format.HTML);
        String xhtml = CardDocument.write(project, aid, rules, found, options, pictures);
        if (format == Reports.Format.HTML) {
            return xhtml.getBytes(StandardCharsets.UTF_8);
        }
        try {
            return PdfDocument.write(xhtml, pictures, "Set-up card: " + found.label(), options.date());
        } catch (IOException e) {
            throw new ReportException("the set-up card can not be laid out: " + e.getMessage(), e);
        }
    }
}
