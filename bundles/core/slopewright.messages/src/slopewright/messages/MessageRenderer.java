package slopewright.messages;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import slopewright.geometry.Angles;
import slopewright.geometry.Lengths;

/** Makes words of messages in one language, with its decimal sign, and in metres or feet. Immutable. */
public final class MessageRenderer {
    /**
     * No language but a way to look for texts that stand in no catalogue: English, with every text of the catalogues in marks
     * ({@code \u27e6 \u27e7}) and what is put into its places outside of them. What is written in it and has letters outside the marks is
     * data of a project, a name, or a text that nobody can translate.
     */
    public static final Locale MARKED = Locale.forLanguageTag("qps");
    /** A place of a sentence: {@code {0}} for an argument, {@code {0|word|words}} for the word that goes with its number. */
    static final Pattern PLACE = Pattern.compile("\\{(\\d+)(?:\\|([^|{}]*)\\|([^|{}]*))?}");
    private static final String TERM = "term.";
    /** Numbers from here on are written with an exponent. */
    private static final double OUT_OF_SIGHT = 1e15;

    /** Reads English where it is asked for: a window that starts asks for the marked language, and for words once it shows a project. */
    private static final class English {
        static final MessageRenderer RENDERER = new MessageRenderer(Locale.ENGLISH, Catalogue.of("en"), false, false);
    }

    /** Reads the second language where it is asked for, since most calls of a script ask for one alone. */
    private static final class German {
        static final MessageRenderer RENDERER = new MessageRenderer(Locale.GERMAN, Catalogue.of("de"), false, false);
    }

    /** Reads the marked language where it is asked for. */
    private static final class Marked {
        static final MessageRenderer RENDERER = new MessageRenderer(MARKED, Catalogue.of("en").marked(), false, false);
    }

    private final Locale language;
    private final Catalogue catalogue;
    private final boolean feet;
    private final boolean decimalDegrees;

    private MessageRenderer(Locale language, Catalogue catalogue, boolean feet, boolean decimalDegrees) {
        this.language = language;
        this.catalogue = catalogue;
        this.feet = feet;
        this.decimalDegrees = decimalDegrees;
    }

    /**
     * Returns the renderer of a language.
     *
     * @param language a language; English stands in for one that has no catalogue
     * @return the renderer, in metres
     */
    public static MessageRenderer of(Locale language) {
        return language.getLanguage().equals(Locale.GERMAN.getLanguage()) ? German.RENDERER
                : language.getLanguage().equals(MARKED.getLanguage()) ? Marked.RENDERER : English.RENDERER;
    }

    /** Returns the same renderer for lengths in feet, or in metres. */
    public MessageRenderer inFeet(boolean wanted) {
        return wanted == feet ? this : new MessageRenderer(language, catalogue, wanted, decimalDegrees);
    }

    /** Returns the same renderer for angles in decimal degrees, or in degrees and minutes. */
    public MessageRenderer inDecimalDegrees(boolean wanted) {
        return wanted == decimalDegrees ? this : new MessageRenderer(language, catalogue, feet, wanted);
    }

    /** Returns whether lengths are written in feet. */
    public boolean usesFeet() {
        return feet;
    }

    /** Returns the language. */
    public Locale language() {
        return language;
    }

    /** Returns the keys of all sentences and words of the catalogue. */
    public Set<String> keys() {
        return catalogue.patterns().keySet();
    }

    /** Returns the sentences of the catalogue with their places, by key. */
    public Map<String, String> patterns() {
        return catalogue.patterns();
    }

    /** Returns the words of a message; a key without a sentence is written with its arguments, so that nothing is lost. */
    public String render(Message message) {
        return catalogue.find(message.key()).map(pattern -> filled(pattern, message.arguments()))
                .orElseGet(() -> message.key() + " [" + String.join(", ", message.arguments().stream().map(
                        argument -> written(argument, message.arguments())).toList()) + "]");
    }

    private String filled(String pattern, List<Argument> arguments) {
        Matcher places = PLACE.matcher(pattern);
        StringBuilder text = new StringBuilder();
        while (places.find()) {
            int at = Integer.parseInt(places.group(1));
            String filled = at >= arguments.size() ? places.group() : places.group(2) == null ? written(arguments.get(at), arguments)
                    : places.group(isOne(arguments.get(at)) ? 2 : 3);
            places.appendReplacement(text, Matcher.quoteReplacement(filled));
        }
        return places.appendTail(text).toString();
    }

    /** Writes an argument of a sentence: a number so exactly that it differs in print from each of its kind there that it differs from. */
    private String written(Argument argument, List<Argument> sentence) {
        if (!(argument instanceof Argument.Quantity quantity)) {
            return write(argument);
        }
        int most = 0;
        for (Argument other : sentence) {
            if (other instanceof Argument.Quantity beside && beside.notation() == quantity.notation()) {
                most = Math.max(most, more(quantity.value(), beside.value(), quantity.notation(), quantity.notation().same()));
            }
        }
        return quantity(quantity.value(), quantity.notation(), most);
    }

    /** Returns how many more decimals tell two numbers of a kind apart; none where they count as equal. */
    private int more(double value, double other, Notation notation, double same) {
        for (int more = 0; more <= Rounding.MOST_DECIMALS && Rounding.isApart(value, other, same); more++) {
            if (!quantity(value, notation, more).equals(quantity(other, notation, more))) {
                return more;
            }
        }
        return 0;
    }

    private static boolean isOne(Argument argument) {
        return argument instanceof Argument.Quantity quantity && quantity.value() == 1
                || argument instanceof Argument.Name name && "1".equals(name.text());
    }

    /** Returns the words of an argument. */
    public String write(Argument argument) {
        if (argument instanceof Argument.Quantity quantity) {
            return quantity(quantity.value(), quantity.notation());
        }
        if (argument instanceof Argument.Name name) {
            return name.text();
        }
        if (argument instanceof Argument.Term term) {
            return catalogue.find(TERM + term.key()).orElse(term.key());
        }
        if (argument instanceof Argument.Series series) {
            return series(series.items().stream().map(this::write).toList());
        }
        return render((Message) argument);
    }

    private String series(List<String> words) {
        String and = catalogue.find("list.and").orElse(" and ");
        return words.size() < 2 ? String.join("", words)
                : String.join(", ", words.subList(0, words.size() - 1)) + and + words.get(words.size() - 1);
    }

    /**
     * Writes a number with its unit.
     *
     * @param value    the number in the unit of the notation
     * @param notation how it is written
     * @return the text, with the decimal sign of the language
     */
    public String quantity(double value, Notation notation) {
        return quantity(value, notation, 0);
    }

    /** Writes a number with its unit and so many decimals more than it has otherwise. */
    private String quantity(double value, Notation notation, int more) {
        return switch (notation) {
            case METRES -> length(value, 2, more);
            case MARGIN -> length(value, 2, Math.max(more, more(value, 0, Notation.METRES, 0)));
            case DECIMETRES -> length(value, 1, more);
            case MILLIMETRES -> length(value, 3, more);
            case WHOLE_METRES -> length(value, 0, more);
            case METRES_AND_FEET -> feet ? length(value, 2, more) : length(value, 2, more) + " (" + inFeet(value, 2, more) + ")";
            case KILOMETRES -> !feet ? fixed(value / 1000, 2 + more) + " km"
                    : more == 0 ? grouped(Math.round(Lengths.metresToFeet(value))) + " ft" : inFeet(value, 0, more);
            case DEGREES_MINUTES -> decimalDegrees ? rounded(value, 4 + more) + "°" : more == 0 ? local(Angles.format(value))
                    : degreesMinutes(value, 1 + more);
            case DEGREES -> fixed(value, 2 + more) + "°";
            case WHOLE_DEGREES -> rounded(value, 2 + more) + "°";
            case BEARING -> String.format(Locale.ROOT, "%03d°", Math.floorMod(Math.round(value), 360));
            case MINUTES -> fixed(value, 1 + more) + "'";
            case PERCENT -> fixed(value, 2 + more) + " %";
            case YEAR -> fixed(value, 1);
            case COUNT -> grouped(Math.round(value));
            case NUMBER -> rounded(value, 2 + more);
            case EXACT -> exact(value);
            case THOUSANDTHS -> fixed(value, 3 + more);
            default -> rounded(value, 2 + more) + " " + notation.unit();
        };
    }

    /**
     * Writes a length so exactly that it differs in print from another one.
     *
     * @param metres the length
     * @param other  the other one, such as its limit, metres
     * @param same   how near the two count as equal, metres
     * @param among  the greatest of those that stand beside it, which all have as many decimals, metres
     * @return the text with its unit, to the centimetre where that is enough and not too much
     */
    public String told(double metres, double other, double same, double among) {
        double factor = feet ? Lengths.metresToFeet(1) : 1;
        int usual = Math.max(feet ? Rounding.ofLength(among, 1) : 0, Rounding.ofLength(among, 2) - (feet ? 1 : 0));
        return fixed(metres * factor, Rounding.telling(metres * factor, other * factor, usual, same * factor)) + (feet ? " ft" : " m");
    }

    private String length(double metres, int decimals, int more) {
        return feet ? inFeet(metres, decimals, more) : fixed(metres, Rounding.ofLength(metres, decimals) + more) + " m";
    }

    private String inFeet(double metres, int decimals, int more) {
        return fixed(Lengths.metresToFeet(metres), Math.max(Rounding.ofLength(metres, 1), Rounding.ofLength(metres, decimals) - 1) + more)
                + " ft";
    }

    private String degreesMinutes(double degrees, int decimals) {
        BigDecimal minutes = BigDecimal.valueOf(Math.abs(degrees)).multiply(BigDecimal.valueOf(60)).setScale(decimals,
                RoundingMode.HALF_UP);
        BigDecimal[] parts = minutes.divideAndRemainder(BigDecimal.valueOf(60));
        String rest = parts[1].toPlainString();
        return local((degrees < 0 && minutes.signum() > 0 ? "-" : "") + parts[0].toBigInteger() + "°" + (rest.indexOf('.') < 2 ? "0" : "")
                + rest + "'");
    }

    /** Writes a number with so many decimals and the decimal sign of the language; never a zero with a minus. */
    public String fixed(double value, int decimals) {
        if (!(Math.abs(value) < OUT_OF_SIGHT)) {
            return local(String.valueOf(value));
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return local((rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString());
    }

    /** Writes a number with every digit that it has, however small it is: one that is held against a document. */
    public String exact(double value) {
        return Double.isFinite(value) ? fixed(value, Math.max(0, BigDecimal.valueOf(value).stripTrailingZeros().scale()))
                : local(String.valueOf(value));
    }

    /** Writes a number to the hundredth, without decimals that say nothing. */
    public String plain(double value) {
        return rounded(value, 2);
    }

    private String rounded(double value, int decimals) {
        if (!(Math.abs(value) < OUT_OF_SIGHT)) {
            return local(String.valueOf(value));
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return local(rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString());
    }

    private String grouped(long value) {
        return String.format(language, Math.abs(value) < 10_000 ? "%d" : "%,d", value);
    }

    private String local(String number) {
        return language.getLanguage().equals(Locale.GERMAN.getLanguage()) ? number.replace('.', ',') : number;
    }
}
