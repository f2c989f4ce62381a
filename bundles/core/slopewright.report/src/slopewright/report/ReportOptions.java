package slopewright.report;

import java.util.Objects;

/**
 * What a document needs beside the project.
 *
 * @param date     the date to print, as text; the same date gives the same bytes
 * @param paper    the paper
 * @param template what it looks like around its content
 */
public record ReportOptions(String date, PaperSize paper, ReportTemplate template) {

    /** Refuses missing parts. */
    public ReportOptions {
        Objects.requireNonNull(date);
        Objects.requireNonNull(paper);
        Objects.requireNonNull(template);
    }

    /** Prints with the built-in template. */
    public ReportOptions(String date, PaperSize paper) {
        this(date, paper, ReportTemplate.builtIn());
    }

    /** Prints on A4. */
    public ReportOptions(String date) {
        this(date, PaperSize.A4);
    }
}
