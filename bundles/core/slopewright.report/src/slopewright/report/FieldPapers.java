package slopewright.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.checks.SetUpGate;
import slopewright.checks.Stages;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.landing.LandingWind;
import slopewright.evaluation.landing.PilotBriefing;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.Stage;
import slopewright.report.internal.briefing.BriefingDocument;
import slopewright.report.internal.briefing.PocketDocument;
import slopewright.report.internal.pdf.PdfDocument;
import slopewright.report.internal.pdf.Pictures;

/**
 * Writes what is carried beside the set-up card: the briefing for the pilot, and a sheet for the pocket. While something stands against
 * setting a portable unit up, or against landing on a fixed one, each says so first, as the card does.
 */
public final class FieldPapers {

    /** The form of a briefing. */
    public enum Form {
        /** Pages to print. */
        PDF,
        /** One page for a small screen, which needs nothing from elsewhere and runs nothing. */
        HTML,
        /** Plain text to be copied into a message. */
        TXT
    }

    private FieldPapers() {
    }

    /**
     * Writes the briefing for the pilot.
     *
     * @param evaluation the evaluation of the project
     * @param aid        an aid of the project
     * @param date       the day, for the magnetic variation
     * @param options    date, paper, template and language
     * @param form       the form
     * @return the briefing, and what stands against its use
     * @throws slopewright.siting.SitingException where something is missing or does not fit; the message says what
     * @throws ReportException                    where it cannot be laid out
     */
    public static SetUpCard briefing(ProjectEvaluation evaluation, ApproachAid aid, LocalDate date, ReportOptions options, Form form)
            throws ReportException {
        AidEvaluation own = evaluation.aid(aid);
        PilotBriefing found = PilotBriefing.of(own, date);
        List<Message> reasons = Boolean.TRUE.equals(aid.getPortable()) ? SetUpGate.reasons(evaluation, own, PortableSetUp.of(own, date))
                : againstUse(evaluation, own);
        BriefingDocument document = new BriefingDocument(own, found, reasons, options);
        return new SetUpCard(switch (form) {
            case PDF -> pdf(document.page(), new Pictures(false), document.title(), options);
            case HTML -> document.phone().getBytes(StandardCharsets.UTF_8);
            case TXT -> document.text().getBytes(StandardCharsets.UTF_8);
        }, reasons);
    }

    /** A fixed indicator is used from the stage of operation on, at which the rules ask for measured angles and an inspection in flight. */
    private static List<Message> againstUse(ProjectEvaluation evaluation, AidEvaluation own) {
        List<Message> reasons = new ArrayList<>(SetUpGate.reasons(evaluation, own));
        if (evaluation.project().getStage() != Stage.OPERATION) {
            reasons.add(Message.of("set-up.not-in-use", Stages.term(evaluation.project().getStage()), Stages.term(Stage.OPERATION)));
        }
        return reasons;
    }

    /**
     * Writes the sheet for the pocket: slopes by speed and descent, clear landing directions, what a tilt does, how long the battery lasts.
     *
     * @param evaluation the evaluation of the project
     * @param aid        an aid of the project
     * @param date       the day, for the magnetic variation
     * @param wind       the wind at the site; empty where none is given
     * @param options    date, paper, template and language
     * @param format     the form
     * @return the sheet, and what stands against its use
     * @throws slopewright.siting.SitingException where something is missing or does not fit; the message says what
     * @throws ReportException                    where it cannot be laid out
     */
    public static SetUpCard pocket(ProjectEvaluation evaluation, ApproachAid aid, LocalDate date, Optional<LandingWind> wind,
            ReportOptions options, Reports.Format format) throws ReportException {
        AidEvaluation own = evaluation.aid(aid);
        PortableSetUp found = PortableSetUp.of(own, date);
        List<Message> reasons = SetUpGate.reasons(evaluation, own, found);
        PocketDocument document = new PocketDocument(own, found, wind, reasons, options);
        Pictures pictures = new Pictures(format == Reports.Format.HTML);
        String xhtml = document.page(pictures);
        return new SetUpCard(format == Reports.Format.HTML ? xhtml.getBytes(StandardCharsets.UTF_8)
                : pdf(xhtml, pictures, document.title(), options), reasons);
    }

    private static byte[] pdf(String xhtml, Pictures pictures, String title, ReportOptions options) throws ReportException {
        try {
            return PdfDocument.write(xhtml, pictures, title, options.date());
        } catch (IOException e) {
            throw new ReportException(Message.said("document.paper", e), e);
        }
    }
}
