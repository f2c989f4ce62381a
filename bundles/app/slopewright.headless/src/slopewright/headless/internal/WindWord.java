package slopewright.headless.internal;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

import slopewright.evaluation.landing.LandingWind;

/** Reads a wind of the form {@code 240/15}: degrees true from which it blows, and knots. */
final class WindWord implements ITypeConverter<LandingWind> {
    private static final Pattern FORM = Pattern.compile("(\\d{1,3})/(\\d{1,3}(?:\\.\\d+)?)");

    @Override
    public LandingWind convert(String text) {
        Matcher found = FORM.matcher(text);
        if (!found.matches() || Integer.parseInt(found.group(1)) > 360) {
            throw new TypeConversionException("'" + text + "' is no wind of the form 240/15: degrees true from which it blows, and knots");
        }
        return new LandingWind(Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2)));
    }
}
