package slopewright.report;

import java.util.Locale;
import java.util.Objects;

/**
 * What a document needs beside the project.
 *
 * @param date     the date to print, as text; the same date gives the same bytes
 * @param paper    the paper
 * @param template what it looks like around its content
 * @param language its language; English stands in for one that has no catalogue
 */
public record ReportOptions(String date, PaperSize paper, ReportTemplate template, Locale language) {

    /** Refuses missing parts. */
    public ReportOptions {
        Objects.requireNonNull(date);
        Objects.requireNonNull(paper);
        Objects.requireNonNull(template);
        Objects.requireNonNull(language);
    }

    /** Prints in English. */
    public ReportOptions(String date, PaperSize paper, ReportTemplate template) {
        this(date, paper, template, Locale.ENGLISH);
    }

    /** Prints in English with the built-in template. */
    public ReportOptions(String date, PaperSize paper) {
        this(date, paper, ReportTemplate.builtIn());
    }

    /** Prints in English on A4. */
    public ReportOptions(String date) {
        this(date, PaperSize.A4);
    }

    /** Returns the same options in another language. */
    public ReportOptions in(Locale other) {
        return new ReportOptions(date, paper, template, other);
    }
}
