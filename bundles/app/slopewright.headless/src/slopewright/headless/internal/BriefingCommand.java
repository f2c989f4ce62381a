package slopewright.headless.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import slopewright.report.FieldPapers;
import slopewright.report.PaperSize;
import slopewright.report.ReportException;
import slopewright.report.SetUpCard;
import slopewright.siting.SitingException;

/** Writes what a pilot is told. */
@CommandLine.Command(name = "briefing", sortOptions = false,
        description = "Write the briefing for the pilot: PDF, HTML for a telephone, or plain text by the ending of the file. It says "
                + "NOT FOR USE, and the command exits 1, where something stands against the use of the indicator.")
final class BriefingCommand extends Command {

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

    @Option(names = "--paper", defaultValue = "a4", paramLabel = "SIZE", description = "a4 (default) or letter")
    private PaperSize paper;

    @Override
    public Integer call() {
        String ending = output.ending(List.of("pdf", "html", "txt"));
        output.check();
        AidWords.Named named = words.load();
        try {
            LocalDate day = date == null ? LocalDate.now() : date;
            SetUpCard written = FieldPapers.briefing(words.projectEvaluation(named), named.aid(), day,
                    language.options(day.toString(), paper).in(units.units()), FieldPapers.Form.valueOf(ending.toUpperCase(Locale.ROOT)));
            output.write(written.bytes());
            return written.isReady() ? ExitCodes.OK : ExitCodes.FINDINGS;
        } catch (SitingException e) {
            throw new UsageException("approach aid " + named.aid().getId() + ": " + e.getMessage());
        } catch (ReportException e) {
            throw new InputException(e.getMessage());
        }
    }
}
