package slopewright.headless.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import slopewright.evaluation.landing.LandingWind;
import slopewright.report.FieldPapers;
import slopewright.report.PaperSize;
import slopewright.report.ReportException;
import slopewright.report.Reports;
import slopewright.report.SetUpCard;
import slopewright.siting.SitingException;

/** Writes the sheet for the pocket of whoever sets a portable unit up. */
@CommandLine.Command(name = "pocket", sortOptions = false,
        description = "Write the pocket sheet of a portable unit: slopes by speed and descent, clear landing directions, tilt and battery; "
                + "PDF or HTML by the ending of the file. It says NOT FOR USE, and the command exits 1, where something stands against it.")
final class PocketCommand extends Command {

    @Mixin
    private AidWords words;

    @Mixin
    private OutputOptions output;

    @Mixin
    private LanguageOption language;

    @Mixin
    private UnitsOption units;

    @Option(names = "--date", paramLabel = "DAY", converter = DateWord.class,
            description = "day, of the form 2026-01-31, for the magnetic variation (default today)")
    private LocalDate date;

    @Option(names = "--wind", paramLabel = "FROM/KT", converter = WindWord.class,
            description = "wind shown in the chart: degrees true from which it blows, and knots, as 240/15")
    private LandingWind wind;

    @Option(names = "--paper", defaultValue = "a4", paramLabel = "SIZE", description = "a4 (default) or letter")
    private PaperSize paper;

    @Override
    public Integer call() {
        String ending = output.ending(List.of("pdf", "html"));
        output.check();
        AidWords.Named named = words.load();
        try {
            LocalDate day = date == null ? LocalDate.now() : date;
            SetUpCard written = FieldPapers.pocket(words.projectEvaluation(named), named.aid(), day, Optional.ofNullable(wind),
                    language.options(day.toString(), paper).in(units.units()),
                    Reports.Format.valueOf(ending.toUpperCase(Locale.ROOT)));
            output.write(written.bytes());
            return written.isReady() ? ExitCodes.OK : ExitCodes.FINDINGS;
        } catch (SitingException e) {
            throw new UsageException("approach aid " + named.aid().getId() + ": " + e.getMessage());
        } catch (ReportException e) {
            throw new InputException(e.getMessage());
        }
    }
}
