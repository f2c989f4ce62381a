package slopewright.headless.internal;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import slopewright.geometry.Decimals;
import slopewright.geometry.Lengths;

/** Reads decimal numbers and lengths as every command does. */
final class NumberWord implements ITypeConverter<Double> {

    @Override
    public Double convert(String text) {
        try {
            return Decimals.parse(text);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }

    /** Reads metres, or feet with the suffix {@code ft}. */
    static final class Length implements ITypeConverter<Double> {

        @Override
        public Double convert(String text) {
            try {
                return Lengths.parse(text);
            } catch (IllegalArgumentException e) {
                throw new TypeConversionException(e.getMessage());
            }
        }
    }

    /** Reads an accuracy in metres, or feet with the suffix {@code ft}; no survey is exact. */
    static final class Accuracy implements ITypeConverter<Double> {
        private static final ITypeConverter<Double> LENGTH = new Length();

        @Override
        public Double convert(String text) throws Exception {
            double metres = LENGTH.convert(text);
            if (metres <= 0) {
                throw new TypeConversionException("an accuracy is more than 0, for no survey is exact; this is " + text);
            }
            return metres;
        }
    }
}
