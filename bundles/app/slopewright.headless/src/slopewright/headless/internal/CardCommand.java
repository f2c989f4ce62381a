package slopewright.headless.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slopewright.model.util.Projects;
import slopewright.report.CardPaper;
import slopewright.report.PaperSize;
import slopewright.report.ReportException;
import slopewright.report.Reports;
import slopewright.report.SetUpCard;
import slopewright.report.SetUpCards;

/** Writes the set-up card of a portable unit. */
@CommandLine.Command(name = "card", sortOptions = false,
        description = "Write the field set-up card of a portable unit, PDF or HTML by the ending of the file. The card says so first, "
                + "and the command exits 1, where something stands against setting the unit up.")
final class CardCommand extends Command {

    @Mixin
    private AidWords words;

    @Mixin
    private OutputOptions output;

    @Mixin
    private LanguageOption language;

    @Mixin
    private UnitsOption units;

    @Option(names = "--date", paramLabel = "DAY", converter = DateWord.class,
            description = "day of the set-up, of the form 2026-01-31, for the magnetic variation (default today)")
    private LocalDate date;

    @Option(names = "--paper", defaultValue = "a4", paramLabel = "SIZE",
            description = "a4 (default), letter, or a5 for the pocket, without the details")
    private CardPaper paper;

    @Override
    public Integer call() {
        String ending = output.ending(List.of("pdf", "html"));
        output.check();
        AidWords.Named named = words.load();
        if (Boolean.FALSE.equals(named.aid().getPortable())) {
            throw new UsageException("--aid: " + Projects.label(named.aid()) + " is not portable, so there is no card to set it up; "
                    + "'slopewright commission' writes its sheet");
        }
        try {
            LocalDate day = date == null ? LocalDate.now() : date;
            SetUpCard card = SetUpCards.write(words.projectEvaluation(named), named.aid(), day,
                    language.options(day.toString(), PaperSize.A4).in(units.units()), paper,
                    Reports.Format.valueOf(ending.toUpperCase(Locale.ROOT)));
            output.write(card.bytes());
            return card.isReady() ? ExitCodes.OK : ExitCodes.FINDINGS;
        } catch (ReportException e) {
            throw new InputException(e.getMessage());
        }
    }
}
