package slopewright.headless.internal;

import picocli.CommandLine.Option;
import slopewright.report.ReportOptions;

/** In which units a document writes lengths and angles. */
final class UnitsOption {

    @Option(names = "--units", defaultValue = "metres", paramLabel = "UNIT", description = "lengths in metres (default) or feet; a table "
            + "says its own unit")
    private String lengths;

    @Option(names = "--angles", defaultValue = "minutes", paramLabel = "FORM", description = "angles in degrees and minutes (default) or "
            + "in decimal degrees: minutes or decimal")
    private String angles;

    /** Returns the units; refuses words that are none. */
    ReportOptions.Units units() {
        return new ReportOptions.Units(isSecond("--units", lengths, "metres", "feet"), isSecond("--angles", angles, "minutes", "decimal"));
    }

    private static boolean isSecond(String option, String given, String first, String second) {
        if (!given.equals(first) && !given.equals(second)) {
            throw new UsageException(option + " takes " + first + " or " + second + ", not '" + given + "'");
        }
        return given.equals(second);
    }
}
