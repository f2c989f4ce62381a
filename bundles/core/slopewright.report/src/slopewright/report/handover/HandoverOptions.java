package slopewright.report.handover;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

import slopewright.checks.compare.Criterion;
import slopewright.drawing.sheet.SheetFormat;
import slopewright.messages.MessageRenderer;
import slopewright.report.PaperSize;
import slopewright.report.ReportOptions;
import slopewright.report.ReportTemplate;

/**
 * What every file of a hand-over has in common.
 *
 * @param date     the date to print
 * @param paper    the paper of documents; drawings use the size of the same name
 * @param language the language of documents
 * @param units    in which units documents and drawings write lengths and angles; schedules and maps state their own
 * @param weights  how much each criterion counts by which the report compares the families
 */
public record HandoverOptions(LocalDate date, PaperSize paper, Locale language, ReportOptions.Units units,
        Map<Criterion, Integer> weights) {

    /** Refuses missing parts. */
    public HandoverOptions {
        Objects.requireNonNull(date);
        Objects.requireNonNull(paper);
        Objects.requireNonNull(language);
        Objects.requireNonNull(units);
        weights = Map.copyOf(weights);
    }

    /** Hands over in metres, degrees and minutes. */
    public HandoverOptions(LocalDate date, PaperSize paper, Locale language) {
        this(date, paper, language, ReportOptions.Units.USUAL, Criterion.alike());
    }

    /** Hands over in English. */
    public HandoverOptions(LocalDate date, PaperSize paper) {
        this(date, paper, Locale.ENGLISH);
    }

    /** Returns what makes words of tables and maps, whose columns name metres and degrees. */
    public MessageRenderer inMetres() {
        return MessageRenderer.of(language);
    }

    /** Returns them for a document. */
    public ReportOptions report() {
        return new ReportOptions(date.toString(), paper, ReportTemplate.builtIn(), language).in(units).weighing(weights);
    }

    /** Returns what writes the language in the units. */
    public MessageRenderer renderer() {
        return units.renderer(language);
    }

    /** Returns the paper of drawings. */
    public SheetFormat sheet() {
        return paper == PaperSize.LETTER ? SheetFormat.LETTER : SheetFormat.A4;
    }
}
