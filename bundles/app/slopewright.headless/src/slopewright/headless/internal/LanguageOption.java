package slopewright.headless.internal;

import java.util.Locale;

import picocli.CommandLine.Option;
import slopewright.report.PaperSize;
import slopewright.report.ReportOptions;

/** The language of a document. */
final class LanguageOption {

    @Option(names = "--language", defaultValue = "en", paramLabel = "KEY", description = "language of the document: en (default) or de")
    private String key;

    /** Returns the language; refuses one that documents cannot be written in. */
    Locale language() {
        return switch (key) {
            case "en" -> Locale.ENGLISH;
            case "de" -> Locale.GERMAN;
            default -> throw new UsageException("--language takes en or de, not '" + key + "'");
        };
    }

    /** Returns the options of a document with the built-in template. */
    ReportOptions options(String date, PaperSize paper) {
        return new ReportOptions(date, paper).in(language());
    }
}
