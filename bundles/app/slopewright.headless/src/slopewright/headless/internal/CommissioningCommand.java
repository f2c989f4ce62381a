package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slopewright.report.CommissioningSheets;
import slopewright.report.PaperSize;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.report.Reports;
import slopewright.siting.SitingException;

/** Writes the commissioning sheet of an indicator. */
@CommandLine.Command(name = "commission", sortOptions = false,
        description = "Write the commissioning sheet and certificate of an indicator, PDF or HTML by the ending of the file: settings, "
                + "tolerances, measured angles with advice how to set again, results as built, flight inspection.")
final class CommissioningCommand extends Command {

    @Mixin
    private AidWords words;

    @Mixin
    private OutputOptions output;

    @Mixin
    private LanguageOption language;

    @Mixin
    private UnitsOption units;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "date to print; today where it is not given")
    private String date;

    @Option(names = "--paper", defaultValue = "a4", paramLabel = "SIZE", description = "a4 (default) or letter")
    private PaperSize paper;

    @Option(names = "--template", paramLabel = "DIR", description = "folder with style.css and running.html of your own; see report")
    private Path template;

    @Override
    public Integer call() {
        String ending = output.ending(List.of("pdf", "html"));
        output.check();
        ReportOptions options = new ReportOptions(ReportCommand.checkedDate(date), paper, ReportCommand.template(template),
                language.language()).in(units.units());
        AidWords.Named named = words.load();
        try {
            output.write(CommissioningSheets.write(words.projectEvaluation(named), named.aid(), options,
                    Reports.Format.valueOf(ending.toUpperCase(Locale.ROOT))));
        } catch (SitingException e) {
            throw new UsageException("approach aid " + named.aid().getId() + ": " + e.getMessage());
        } catch (ReportException e) {
            throw new InputException(e.getMessage());
        }
        return ExitCodes.OK;
    }
}
