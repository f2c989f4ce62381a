package slopewright.messages;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Makes arguments of messages. */
public final class Words {
    private Words() {
    }

    /** Writes a length in metres to the centimetre. */
    public static Argument m(double metres) {
        return new Argument.Quantity(metres, Notation.METRES);
    }

    /** Writes a length in metres that decides by its sign, such as a margin: it is never rounded to nothing. */
    public static Argument margin(double metres) {
        return new Argument.Quantity(metres, Notation.MARGIN);
    }

    /** Writes a length in metres to the decimetre. */
    public static Argument dm(double metres) {
        return new Argument.Quantity(metres, Notation.DECIMETRES);
    }

    /** Writes a length in metres to the millimetre. */
    public static Argument mm(double metres) {
        return new Argument.Quantity(metres, Notation.MILLIMETRES);
    }

    /** Writes a length in whole metres. */
    public static Argument wholeM(double metres) {
        return new Argument.Quantity(metres, Notation.WHOLE_METRES);
    }

    /** Writes a length in metres with feet beside it. */
    public static Argument mFt(double metres) {
        return new Argument.Quantity(metres, Notation.METRES_AND_FEET);
    }

    /** Writes a length in metres as kilometres. */
    public static Argument km(double metres) {
        return new Argument.Quantity(metres, Notation.KILOMETRES);
    }

    /** Writes an angle in decimal degrees as degrees and minutes. */
    public static Argument deg(double degrees) {
        return new Argument.Quantity(degrees, Notation.DEGREES_MINUTES);
    }

    /** Writes an angle in decimal degrees to the hundredth. */
    public static Argument degrees(double degrees) {
        return new Argument.Quantity(degrees, Notation.DEGREES);
    }

    /** Writes an angle in decimal degrees without decimals that say nothing. */
    public static Argument wholeDegrees(double degrees) {
        return new Argument.Quantity(degrees, Notation.WHOLE_DEGREES);
    }

    /** Writes minutes of arc. */
    public static Argument min(double minutes) {
        return new Argument.Quantity(minutes, Notation.MINUTES);
    }

    /** Writes per cent. */
    public static Argument percent(double percent) {
        return new Argument.Quantity(percent, Notation.PERCENT);
    }

    /** Writes a whole number. */
    public static Argument count(long number) {
        return new Argument.Quantity(number, Notation.COUNT);
    }

    /** Writes a plain number. */
    public static Argument number(double number) {
        return new Argument.Quantity(number, Notation.NUMBER);
    }

    /** Writes a quantity in another notation. */
    public static Argument quantity(double value, Notation notation) {
        return new Argument.Quantity(value, notation);
    }

    /** Writes a name as it is in every language. */
    public static Argument name(String text) {
        return new Argument.Name(String.valueOf(text));
    }

    /** Writes names as a list. */
    public static Argument names(Collection<String> texts) {
        return new Argument.Series(texts.stream().map(Words::name).toList());
    }

    /** Writes a word of the catalogue. */
    public static Argument term(String key) {
        return new Argument.Term(key);
    }

    /** Writes several arguments as a list. */
    public static Argument list(List<? extends Argument> items) {
        return new Argument.Series(List.copyOf(items));
    }

    /** Writes the first of several arguments as a list, and how many others there are. */
    public static Argument listed(List<? extends Argument> items, int most) {
        if (items.size() <= most) {
            return list(items);
        }
        List<Argument> first = new ArrayList<>(items.subList(0, most));
        first.add(Message.of("list.others", count(items.size() - most)));
        return list(first);
    }
}
