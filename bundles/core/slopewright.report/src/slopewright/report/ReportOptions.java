package slopewright.report;

import java.util.Objects;

/**
 * What a document needs beside the project.
 *
 * @param date the date to print, as text; the same date gives the same bytes
 */
public record ReportOptions(String date) {

    /** Refuses a missing date. */
    public ReportOptions {
        Objects.requireNonNull(date);
    }
}
