package slopewright.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.model.Project;
import slopewright.report.internal.PdfDocument;
import slopewright.report.internal.Pictures;
import slopewright.report.internal.ReportDocument;

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
     * @throws ReportException          where it can not be laid out
     * @throws IllegalArgumentException where the rule set or an override is unknown
     */
    public static byte[] write(Project project, Optional<String> ruleSet, ReportOptions options, Format format) throws ReportException {
        CompletableFuture<Void> ready = format == Format.PDF ? CompletableFuture.runAsync(PdfDocument::prepare)
                : CompletableFuture.completedFuture(null);
        CheckResult result = Checks.run(project, ruleSet);
        Pictures pictures = new Pictures(format == Format.HTML);
        String xhtml = ReportDocument.write(project, result, ruleSet, options, pictures);
        if (format == Format.HTML) {
            return xhtml.getBytes(StandardCharsets.UTF_8);
        }
        ready.join();
        try {
            return PdfDocument.write(xhtml, pictures, name(project), options.date());
        } catch (IOException | RuntimeException e) {
            throw new ReportException("the report can not be laid out: " + e.getMessage(), e);
        }
    }

    private static String name(Project project) {
        return (project.getName() == null ? "Unnamed project" : project.getName()) + ": visual approach slope indicators";
    }
}
