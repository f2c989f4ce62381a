package slopewright.report;

import java.util.Objects;

/**
 * What a document needs beside the project.
 *
 * @param date  the date to print, as text; the same date gives the same bytes
 * @param paper the paper
 */
public record ReportOptions(String date, PaperSize paper) {

    /** Refuses missing parts. */
    public ReportOptions {
        Objects.requireNonNull(date);
        Objects.requireNonNull(paper);
    }

    /** Prints on A4. */
    public ReportOptions(String date) {
        this(date, PaperSize.A4);
    }
}
