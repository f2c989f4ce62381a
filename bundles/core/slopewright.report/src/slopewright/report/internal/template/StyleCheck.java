package slopewright.report.internal.template;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import slopewright.messages.Message;
import slopewright.report.ReportException;

/**
 * Lets rules of style through that only say how the document looks: they fetch nothing, and they take nothing out of its place or out of
 * sight. What is not known is refused.
 */
final class StyleCheck {

    private static final Pattern FUNCTION = Pattern.compile("([-\\w]+)\\s*\\(");
    private static final Pattern RULE = Pattern.compile("@\\s*([-\\w]*)");
    private static final Set<String> FUNCTIONS = Set.of("rgb", "rgba", "hsl", "hsla", "counter", "counters", "element", "leader",
            "target-counter", "attr", "linear-gradient", "not", "nth-child", "nth-of-type", "and", "or");
    private static final Set<String> RULES = Set.of("page", "media", "top-left-corner", "top-left", "top-center", "top-right",
            "top-right-corner", "bottom-left-corner", "bottom-left", "bottom-center", "bottom-right", "bottom-right-corner", "left-top",
            "left-middle", "left-bottom", "right-top", "right-middle", "right-bottom");
    /** Classes of what a person has to see; no part of a template may look like it. */
    private static final Set<String> RESERVED = Set.of("locked", "verdict", "caution", "stop", "alert");

    private StyleCheck() {
    }

    /** Returns whether one of some classes is that of a part that no template makes. */
    static boolean isReserved(String classes) {
        return List.of(classes.toLowerCase(Locale.ROOT).split("\\s+")).stream().anyMatch(RESERVED::contains);
    }

    /** Refuses a style sheet that may not stand in a template; the message names file and line. */
    static void check(String file, String text) throws ReportException {
        String plain = withoutComments(text);
        String[] lines = plain.split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            Optional<Message> problem = spelling(lines[i]);
            if (problem.isPresent()) {
                throw TemplateFault.in(file, i + 1, problem.get(), null);
            }
        }
        Matcher split = Pattern.compile("([-\\w]+)\\s*\\n\\s*\\(").matcher(plain);
        if (split.find()) {
            throw TemplateFault.in(file, plain.substring(0, split.start()).split("\n", -1).length,
                    Message.of("template.style.bracket"), null);
        }
        Optional<StyleDeclarations.Fault> fault = StyleDeclarations.ofSheet(plain).fault();
        if (fault.isPresent()) {
            throw TemplateFault.in(file, fault.get().line(), fault.get().message(), null);
        }
    }

    /** Blanks comments out and keeps the ends of lines. */
    private static String withoutComments(String text) {
        return Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL).matcher(text).replaceAll(found -> found.group().replaceAll("[^\n]", " "));
    }

    /** Returns what is wrong with the style of one element; empty where nothing is. */
    static Optional<Message> problem(String style) {
        return spelling(style).or(() -> StyleDeclarations.ofElement(style).fault().map(StyleDeclarations.Fault::message));
    }

    private static Optional<Message> spelling(String style) {
        for (char letter : new char[] {'<', '&', '\\', '`', '!'}) {
            if (style.indexOf(letter) >= 0) {
                return Optional.of(Message.said("template.style.unwanted", letter));
            }
        }
        if (style.contains("]]>") || style.contains("/*") || style.chars().anyMatch(letter -> letter < ' ' && letter != '\t'
                && letter != '\r')) {
            return Optional.of(Message.of("template.style.comment"));
        }
        Matcher function = FUNCTION.matcher(style);
        while (function.find()) {
            if (!FUNCTIONS.contains(function.group(1).toLowerCase(Locale.ROOT))) {
                return Optional.of(Message.said("template.style.unwanted", function.group(1) + "("));
            }
        }
        Matcher rule = RULE.matcher(style);
        while (rule.find()) {
            if (!RULES.contains(rule.group(1).toLowerCase(Locale.ROOT))) {
                return Optional.of(Message.said("template.style.unwanted", "@" + rule.group(1)));
            }
        }
        return Optional.empty();
    }
}
