package slopewright.headless.internal;

import java.util.Locale;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the language of sentences: {@code en} or {@code de}. */
final class LanguageWord implements ITypeConverter<Locale> {

    @Override
    public Locale convert(String text) {
        return switch (text) {
            case "en" -> Locale.ENGLISH;
            case "de" -> Locale.GERMAN;
            default -> throw new TypeConversionException("'" + text + "' is neither en nor de");
        };
    }
}
