package slopewright.exchange.survey;

import java.nio.charset.Charset;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

import slopewright.geometry.Decimals;

/**
 * How a table of somebody else is read: what separates its fields, how its numbers are written, and what each of its columns holds.
 *
 * @param separator    what stands between two fields
 * @param decimalComma whether a comma stands before the decimals
 * @param feet         whether lengths are feet (0.3048 m)
 * @param encoding     the encoding of its letters
 * @param columns      by the header of a column what it is taken as, one of {@link #MEANINGS}; empty for a column that is left out
 */
public record TableForm(char separator, boolean decimalComma, boolean feet, Charset encoding, Map<String, String> columns) {

    /** What a column can hold: places, the shape of what several rows describe, and the facts of a shape. */
    public static final List<String> MEANINGS = Stream.concat(Stream.of("latitudeDeg", "longitudeDeg", "eastM", "northM", "shape"),
            Stream.of(SurveyShape.Fact.values()).filter(fact -> fact != SurveyShape.Fact.REACH && fact != SurveyShape.Fact.UNIT)
                    .map(SurveyShape.Fact::label)).toList();

    private static final double METRES_PER_FOOT = 0.3048;
    private static final Set<SurveyShape.Fact> LENGTHS = EnumSet.of(SurveyShape.Fact.TOP_ELEVATION, SurveyShape.Fact.ELEVATION,
            SurveyShape.Fact.HEIGHT, SurveyShape.Fact.GROUND_ELEVATION, SurveyShape.Fact.HORIZONTAL_ACCURACY,
            SurveyShape.Fact.VERTICAL_ACCURACY);

    /** Copies the columns. */
    public TableForm {
        Objects.requireNonNull(encoding);
        columns = Map.copyOf(columns);
    }

    /** Returns what a column is taken as, in lower case; empty where it is left out. A column that nobody spoke of is what it is called. */
    String taken(String header) {
        return columns.getOrDefault(header, header).toLowerCase(Locale.ROOT);
    }

    /** Returns a fact as it stands in a table with a decimal point and metres; what is no number stays, for it is refused later. */
    String plain(SurveyShape.Fact fact, String text) {
        return LENGTHS.contains(fact) ? plain(text, feet) : text;
    }

    /** Returns a coordinate as it stands in a table with a decimal point and metres. */
    String plainPlace(String text, boolean isLength) {
        return plain(text, feet && isLength);
    }

    private String plain(String text, boolean isFeet) {
        if (decimalComma && text.indexOf('.') >= 0) {
            return text + " with a point"; // is no number: whether it parts thousands or decimals nobody knows
        }
        String number = decimalComma ? text.replace(',', '.') : text;
        if (!isFeet) {
            return number;
        }
        try {
            return String.valueOf(Decimals.parse(number) * METRES_PER_FOOT);
        } catch (IllegalArgumentException e) {
            return text;
        }
    }
}
