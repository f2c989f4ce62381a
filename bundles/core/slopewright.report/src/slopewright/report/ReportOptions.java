package slopewright.report;

import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import slopewright.checks.compare.Criterion;
import slopewright.messages.MessageRenderer;
import slopewright.model.Project;

/**
 * What a document needs beside the project.
 *
 * @param date     the date to print, as text; the same date gives the same bytes
 * @param paper    the paper
 * @param template what it looks like around its content
 * @param language its language; English stands in for one that has no catalogue
 * @param annexes  whether a report lists what is met and confirmed; where not, it counts that and says so. Nothing that is not met, to
 *                 clear up or to confirm ever stands in an annex alone
 * @param earlier  the version handed over before, from which the report says what changed in its results; empty where there is none
 * @param units    in which units lengths and angles of sentences and figures are written; a table says its own
 * @param weights  how much each criterion counts by which the families are compared
 */
public record ReportOptions(String date, PaperSize paper, ReportTemplate template, Locale language, boolean annexes,
        Optional<Project> earlier, Units units, Map<Criterion, Integer> weights) {

    /**
     * In which units lengths and angles are written.
     *
     * @param feet           lengths in feet, else in metres
     * @param decimalDegrees angles in decimal degrees, else in degrees and minutes
     */
    public record Units(boolean feet, boolean decimalDegrees) {

        /** Metres, degrees and minutes. */
        public static final Units USUAL = new Units(false, false);

        /** Returns what writes a language in these units. */
        public MessageRenderer renderer(Locale language) {
            return MessageRenderer.of(language).inFeet(feet).inDecimalDegrees(decimalDegrees);
        }
    }


    /** Refuses missing parts. */
    public ReportOptions {
        Objects.requireNonNull(date);
        Objects.requireNonNull(paper);
        Objects.requireNonNull(template);
        Objects.requireNonNull(language);
        Objects.requireNonNull(earlier);
        Objects.requireNonNull(units);
        weights = Map.copyOf(weights);
    }

    /** Prints with annexes and without an earlier version. */
    public ReportOptions(String date, PaperSize paper, ReportTemplate template, Locale language) {
        this(date, paper, template, language, true, Optional.empty(), Units.USUAL, Criterion.alike());
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
        return new ReportOptions(date, paper, template, other, annexes, earlier, units, weights);
    }

    /** Returns the same options with or without annexes. */
    public ReportOptions withAnnexes(boolean wanted) {
        return new ReportOptions(date, paper, template, language, wanted, earlier, units, weights);
    }

    /** Returns the same options with the version handed over before. */
    public ReportOptions since(Project before) {
        return new ReportOptions(date, paper, template, language, annexes, Optional.of(before), units, weights);
    }

    /** Returns the same options in other units. */
    public ReportOptions in(Units wanted) {
        return new ReportOptions(date, paper, template, language, annexes, earlier, wanted, weights);
    }

    /** Returns the same options with other weights of what families are compared by. */
    public ReportOptions weighing(Map<Criterion, Integer> wanted) {
        return new ReportOptions(date, paper, template, language, annexes, earlier, units, wanted);
    }

    /** Returns what writes the language in the units. */
    public MessageRenderer renderer() {
        return units.renderer(language);
    }
}
