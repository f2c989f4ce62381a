package slopewright.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;

import slopewright.checks.SetUpGate;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.report.internal.card.CardDocument;
import slopewright.report.internal.pdf.PdfDocument;
import slopewright.report.internal.pdf.Pictures;

/** Writes the card that a person takes into the field to set a portable unit up: large type, readable in black and white. */
public final class SetUpCards {

    private SetUpCards() {
    }

    /**
     * Writes a card. While something stands against setting the unit up, the card says so first and is not for use.
     *
     * @param evaluation the evaluation of the project
     * @param aid        an aid of the project
     * @param date       the day of the set-up, for the magnetic variation
     * @param options    date, paper, template and language
     * @param format     the form
     * @return the card, and whether it may be used
     * @throws ReportException where it cannot be laid out
     */
    public static SetUpCard write(ProjectEvaluation evaluation, ApproachAid aid, LocalDate date, ReportOptions options,
            Reports.Format format) throws ReportException {
        return write(evaluation, aid, date, options, CardPaper.of(options.paper()), format);
    }

    /**
     * Writes a card on a paper of its own.
     *
     * @param evaluation the evaluation of the project
     * @param aid        an aid of the project
     * @param date       the day of the set-up, for the magnetic variation
     * @param options    date, template and language
     * @param paper      the paper
     * @param format     the form
     * @return the card, and whether it may be used
     * @throws ReportException where it cannot be laid out
     */
    public static SetUpCard write(ProjectEvaluation evaluation, ApproachAid aid, LocalDate date, ReportOptions options, CardPaper paper,
            Reports.Format format) throws ReportException {
        AidEvaluation own = evaluation.aid(aid);
        Pictures pictures = new Pictures(format == Reports.Format.HTML);
        Attempt<PortableSetUp> found = Attempt.of(() -> PortableSetUp.of(own, date));
        List<Message> reasons = found.value().map(setUp -> SetUpGate.reasons(evaluation, own, setUp))
                .orElseGet(() -> SetUpGate.reasons(evaluation, own, found.reason().orElseThrow()));
        CardDocument document = new CardDocument(own, found.value(), date, reasons, options, paper);
        String xhtml = document.write(pictures);
        if (format == Reports.Format.HTML) {
            return new SetUpCard(xhtml.getBytes(StandardCharsets.UTF_8), reasons);
        }
        try {
            return new SetUpCard(PdfDocument.write(xhtml, pictures, document.title(), options.date()), reasons);
        } catch (IOException e) {
            throw new ReportException(Message.said("document.card", e), e);
        }
    }
}
