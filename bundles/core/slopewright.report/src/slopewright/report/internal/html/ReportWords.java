package slopewright.report.internal.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

import slopewright.checks.MeasureText;
import slopewright.checks.Outcome;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Notation;
import slopewright.messages.Rounding;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.siting.ElementNames;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.standards.Citation;
import slopewright.standards.RuleSet;

/**
 * The words and numbers of one document in its language. Sentences of documents stand in the catalogues under the prefix
 * {@code report.}, words under {@code term.report.}.
 */
public final class ReportWords {

    private static final String PREFIX = "report.";
    private static final String LABEL = "label.";
    private static final int USUAL_DECIMALS = 3;

    private final MessageRenderer renderer;

    /** Makes the words of a language; English stands in for one that has no catalogue. */
    public ReportWords(Locale language) {
        this(MessageRenderer.of(language));
    }

    /** Makes the words of a renderer, in its language and units. */
    public ReportWords(MessageRenderer renderer) {
        this.renderer = renderer;
    }

    /** Returns what renders the words, for drawings. */
    public MessageRenderer renderer() {
        return renderer;
    }

    /** Returns the two letters of the language. */
    public String language() {
        return renderer.language().getLanguage();
    }

    /** Returns a sentence of the documents, by its key without the prefix. */
    public String say(String key, Argument... arguments) {
        return renderer.render(Message.of(PREFIX + key, arguments));
    }

    /** Returns the words of an argument. */
    public String write(Argument argument) {
        return renderer.write(argument);
    }

    /** Returns the words of a message. */
    public String render(Message message) {
        return renderer.render(message);
    }

    /** Returns the words of messages. */
    public List<String> render(List<Message> messages) {
        return messages.stream().map(renderer::render).toList();
    }

    /** Returns a word of the documents, by its key without the prefix. */
    public String term(String key) {
        return renderer.write(Words.term(PREFIX + key));
    }

    /** Returns a choice of the model as a word. */
    public String term(String kind, Enum<?> choice) {
        return term(kind + "." + choice.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** Returns the labels that a template may use, by name of their placeholder: {@code label.client}. */
    public Map<String, String> labels() {
        Map<String, String> labels = new TreeMap<>();
        renderer.keys().stream().filter(key -> key.startsWith(PREFIX + LABEL))
                .forEach(key -> labels.put(key.substring(PREFIX.length()), renderer.render(Message.of(key))));
        return labels;
    }

    /** Returns words in a row: {@code a, b and c}. */
    public String list(List<String> names) {
        return renderer.write(Words.names(names));
    }

    /** Returns a number with two decimals. */
    public String two(double value) {
        return renderer.fixed(value, 2);
    }

    /** Returns a number with two decimals; empty where there is none. */
    public String two(OptionalDouble value) {
        return value.isPresent() ? two(value.getAsDouble()) : "";
    }

    /** Returns a number with so many decimals. */
    public String fixed(double value, int decimals) {
        return renderer.fixed(value, decimals);
    }

    /**
     * Returns a margin to the centimetre, and never as nothing where it decides.
     *
     * @param metres the margin
     * @param same   how near to its limit a value counts as at it, metres
     */
    public String margin(double metres, double same) {
        return fixed(metres, Rounding.telling(metres, 0, 2, same));
    }

    /** Returns a number with its sign and so many decimals. */
    public String signed(double value, int decimals) {
        String text = renderer.fixed(value, decimals);
        return text.startsWith("-") ? text : "+" + text;
    }

    /** Returns a length in metres. */
    public String metres(double value) {
        return renderer.quantity(value, Notation.METRES);
    }

    /** Returns a length in metres and feet. */
    public String metresAndFeet(double value) {
        return renderer.quantity(value, Notation.METRES_AND_FEET);
    }

    /** Returns an angle in degrees and minutes. */
    public String minutes(double degrees) {
        return renderer.quantity(degrees, Notation.DEGREES_MINUTES);
    }

    /** Returns an angle in degrees and minutes, and in decimal degrees. */
    public String angle(double degrees) {
        return minutes(degrees) + " (" + fixed(degrees, USUAL_DECIMALS) + "\u00b0)";
    }

    /** Returns a number with up to three decimals, without those that say nothing. */
    public String plain(double value) {
        String text = renderer.fixed(value, USUAL_DECIMALS);
        return text.matches("-?\\d+[.,]\\d+") ? text.replaceAll("[.,]?0+$", "") : text;
    }

    /** Returns a length without decimals that say nothing: to the millimetre, to the decimetre from a kilometre on, whole from ten. */
    public String length(double metres) {
        String text = renderer.fixed(metres, Rounding.ofLength(metres, USUAL_DECIMALS));
        return (text.matches("-?\\d+[.,]\\d+") ? text.replaceAll("[.,]?0+$", "") : text) + " m";
    }

    /** Returns something that was entered; where it was not, says so. */
    public String orUnknown(Object value) {
        return value == null ? term("not-known") : value instanceof Double number ? plain(number) : value.toString();
    }

    /** Returns a number that was entered with its unit; where it was not, says so. */
    public String orUnknown(Double value, String unit) {
        return value == null ? term("not-known") : plain(value) + ("\u00b0".equals(unit) ? "" : " ") + unit;
    }

    /** Returns yes or no; where nobody said, says so. */
    public String yesNo(Boolean value) {
        return term(value == null ? "not-known" : value ? "yes" : "no");
    }

    /** Returns the trade name of a family; where it is not known, says so with its key. */
    public String family(Optional<IndicatorFamily> family, String key) {
        return family.map(found -> renderer.write(Families.name(found))).orElseGet(() -> say("unknown-family", Words.name(key)));
    }

    /** Returns what an element is called. */
    public String name(Identified element) {
        return renderer.write(ElementNames.of(element));
    }

    /** Returns where an element stands, from the runway end or helipad downward. */
    public String path(Identified element) {
        return String.join(" > ", ElementNames.path(element).stream().map(renderer::write).toList());
    }

    /** Returns a rule set by its honest name. */
    public String ruleSet(RuleSet rules) {
        String title = renderer.write(rules.descriptor().title());
        return title.contains(rules.edition()) ? title : say("rule-set-edition", Words.name(title), Words.name(rules.edition()));
    }

    /** Returns document, clause, provenance and confirmation of a citation. */
    public String source(Citation citation) {
        String known = briefSource(citation);
        return citation.confirmation().isEmpty() ? known : known + ", " + say("confirmed-by", Words.name(citation.confirmation()));
    }

    /** Returns document, clause and provenance of a citation. */
    public String briefSource(Citation citation) {
        return renderer.write(citation.text()) + " [" + provenance(citation) + "]";
    }

    /** Returns document, clause, provenance and confirmation of a citation, and whether it is still to be confirmed. */
    public String sourceAndState(Citation citation) {
        return source(citation) + (citation.toConfirm() ? ", " + term("to-be-confirmed") : "");
    }

    /** Returns how well a value is known. */
    public String provenance(Citation citation) {
        return term("provenance." + citation.provenance().key());
    }

    /** Returns the verdict of an outcome, with the severity of what is not met. */
    public String verdict(Outcome outcome) {
        String word = renderer.write(outcome.verdict().term());
        return switch (outcome.verdict()) {
            case NOT_MET -> word.toUpperCase(renderer.language()) + " (" + term("severity", outcome.severity()) + ")";
            case TO_CLEAR_UP -> outcome.toConfirm() ? word + ", " + term("to-be-confirmed") : word;
            default -> word;
        };
    }

    /** Returns what an outcome compared, what is missing and what to do. */
    public String explanation(Outcome outcome) {
        List<String> parts = new ArrayList<>(List.of(render(outcome.explanation())));
        List<Message> unsaid = outcome.missing().stream().filter(missing -> !isPart(missing, outcome.message())).toList();
        if (!unsaid.isEmpty()) {
            parts.add(say("missing", Words.list(unsaid)));
        }
        return String.join(" ", parts);
    }

    /** Returns whether an argument is one of a message, or of what the message is made of. */
    private static boolean isPart(Argument part, Argument whole) {
        return part.equals(whole) || whole instanceof Message message && message.arguments().stream().anyMatch(argument -> isPart(part,
                argument)) || whole instanceof Argument.Series series && series.items().stream().anyMatch(item -> isPart(part, item));
    }

    /** Returns value, limit and margin of an outcome in print. */
    public Optional<MeasureText> measured(Outcome outcome) {
        return outcome.measure().map(measure -> MeasureText.of(measure, renderer));
    }

    /** Returns how a unit of values and outcomes is written behind its number. */
    public static String unit(String unit) {
        return switch (unit) {
            case "" -> "";
            case "deg" -> "\u00b0";
            case "min" -> "'";
            default -> " " + unit;
        };
    }
}
