package slopewright.headless.internal;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day of the form 2026-01-31. */
final class DateWord implements ITypeConverter<LocalDate> {

    @Override
    public LocalDate convert(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("'" + text + "' is no date of the form 2026-01-31");
        }
    }
}
