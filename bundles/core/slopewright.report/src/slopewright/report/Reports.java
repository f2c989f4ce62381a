package slopewright.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.model.Project;
import slopewright.report.internal.chapters.ReportDocument;
import slopewright.report.internal.pdf.PdfDocument;
import slopewright.report.internal.pdf.Pictures;
import slopewright.report.internal.pdf.PrintedText;

/** Writes the report of a project: inputs, layouts, every outcome with its source, drawings. */
public final class Reports {

    private Reports() {
    }

    /** The form of a document. */
    public enum Format {
        /** One XHTML file with its drawings inside. */
        HTML,
        /** Tagged Portable Document Format for archives. */
        PDF
    }

    /**
     * Writes a report.
     *
     * @param project the project, not changed
     * @param ruleSet name of the rule set; empty for those that project and aids name
     * @param options what else is printed
     * @param format  the form
     * @return the document; the same input gives the same bytes
     * @throws ReportException          where it cannot be laid out
     * @throws IllegalArgumentException where the rule set or an override is unknown
     */
    public static byte[] write(Project project, Optional<String> ruleSet, ReportOptions options, Format format) throws ReportException {
        return write(ProjectEvaluation.of(project, ruleSet), options, format);
    }

    /**
     * Writes the report of a project that was evaluated. The check runs over that evaluation, and every chapter reads it.
     *
     * @param evaluation the evaluation
     * @param options    what else is printed
     * @param format     the form
     * @return the document; the same input gives the same bytes
     * @throws ReportException where it cannot be laid out
     */
    public static byte[] write(ProjectEvaluation evaluation, ReportOptions options, Format format) throws ReportException {
        return write(evaluation, Checks.run(evaluation, rule -> true), options, format);
    }

    /**
     * Writes the report of a project that was evaluated and checked.
     *
     * @param evaluation the evaluation
     * @param check      what the rules say of that evaluation
     * @param options    what else is printed
     * @param format     the form
     * @return the document; the same input gives the same bytes
     * @throws ReportException where it cannot be laid out
     */
    public static byte[] write(ProjectEvaluation evaluation, CheckResult check, ReportOptions options, Format format)
            throws ReportException {
        CompletableFuture<Void> ready = format == Format.PDF ? CompletableFuture.runAsync(PdfDocument::prepare)
                : CompletableFuture.completedFuture(null);
        Pictures pictures = new Pictures(format == Format.HTML);
        ReportDocument.Written written = ReportDocument.write(evaluation, check, options, pictures);
        if (format == Format.HTML) {
            return written.xhtml().getBytes(StandardCharsets.UTF_8);
        }
        ready.join();
        try {
            byte[] pdf = PdfDocument.write(written.xhtml(), pictures, written.title(), options.date());
            if (options.template().files().isOwn()) {
                requireReadable(pdf, written);
            }
            return pdf;
        } catch (IOException | RuntimeException e) {
            throw new ReportException(Message.said("document.report", e), e);
        }
    }

    /** Refuses a document in which the template leaves verdict, cautions or provenance where nobody can read them. */
    private static void requireReadable(byte[] pdf, ReportDocument.Written written) throws IOException, ReportException {
        Optional<String> missing = PrintedText.missing(pdf, written.essential());
        if (missing.isPresent()) {
            throw new ReportException(Message.said("document.no-room", missing.get()));
        }
    }
}
