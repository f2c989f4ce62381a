package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.testkit.DemoProjects;

/**
 * The steps that rules record while they compute, recomputed: the arithmetic that a sentence of the catalogue names, with the numbers that
 * stand in it, gives the number behind its last sign of equality. A step that came out otherwise would explain a verdict with a wrong sum.
 */
class StepsTest {
    private static final Properties SENTENCES = new Properties();
    private static final double MINUTE_DEG = 1 / 60.0;

    @BeforeAll
    static void readTheCatalogue() throws IOException {
        try (Stream<Path> files = Files.list(DemoProjects.root()
                .resolve("bundles/core/slopewright.messages/catalogue/en"))) {
            for (var file : files.toList()) {
                try (Reader reader = Files.newBufferedReader(file)) {
                    SENTENCES.load(reader);
                }
            }
        }
    }

    static List<String> demos() {
        return DemoProjects.names();
    }

    private static List<Message> steps(CheckResult result) {
        return result.outcomes().stream().flatMap(outcome -> outcome.steps().stream()).toList();
    }

    /** Returns the sum of a sentence and its result; empty where it has none. */
    private static String[] parts(Message step) {
        String sentence = SENTENCES.getProperty(step.key(), "");
        String[] parts = sentence.split(" = ");
        return parts.length < 3 || !parts[parts.length - 1].startsWith("{") ? new String[0]
                : new String[] {parts[parts.length - 2], parts[parts.length - 1].substring(0, parts[parts.length - 1].indexOf('}') + 1)};
    }

    private static void recompute(Message step, Set<String> seen) {
        String[] parts = parts(step);
        if (parts.length == 0) {
            return;
        }
        double expected = new Sum(parts[0], step.arguments()).value();
        double said = number(step.arguments(), Integer.parseInt(parts[1].substring(1, parts[1].length() - 1)));
        assertEquals(expected, said, 1e-6 * Math.max(1, Math.abs(expected)), step.english());
        seen.add(step.key());
    }

    /** Returns a number of a sentence: lengths in metres, angles in degrees, shares as such. */
    private static double number(List<Argument> arguments, int index) {
        Argument.Quantity quantity = (Argument.Quantity) arguments.get(index);
        return switch (quantity.notation()) {
            case MINUTES -> quantity.value() * MINUTE_DEG;
            case PERCENT -> quantity.value() / 100;
            default -> quantity.value();
        };
    }

    @ParameterizedTest
    @MethodSource("demos")
    void theStepsOfTheDemosHold(String demo) {
        Set<String> seen = new HashSet<>();
        steps(Checks.run(DemoProjects.load(demo), Optional.empty())).forEach(step -> recompute(step, seen));
        assertTrue(seen.size() >= 5, seen.toString());
    }

    /** Every case of every rule: pass, fail and the boundary. */
    @Test
    void theStepsOfTheCasesHold() {
        Set<String> seen = new TreeSet<>();
        RuleContractTest.cases().forEach(each -> steps(each.sample().get().check()).forEach(step -> recompute(step, seen)));
        assertTrue(seen.size() >= 20, seen.toString());
    }

    /** A sum of numbers in a sentence: plus, minus, times, divided by, tangent, sine, brackets. */
    private static final class Sum {
        private final String[] tokens;
        private final List<Argument> arguments;
        private int at;

        Sum(String text, List<Argument> arguments) {
            this.arguments = arguments;
            tokens = text.replace("(", " ( ").replace(")", " ) ").replaceAll("[{](\\d)[}] [A-Z]\\b", "{$1}").strip().split("\\s+");
        }

        double value() {
            double value = product();
            while (at < tokens.length && (tokens[at].equals("+") || tokens[at].equals("\u2212"))) {
                value += tokens[at++].equals("+") ? product() : -product();
            }
            return value;
        }

        private double product() {
            double value = factor();
            while (at < tokens.length && List.of("\u00d7", "\u00f7", "/").contains(tokens[at])) {
                value = tokens[at++].equals("\u00d7") ? value * factor() : value / factor();
            }
            return value;
        }

        private double factor() {
            String token = tokens[at++];
            if (token.equals("tan") || token.equals("sin")) {
                double angle = Math.toRadians(factor());
                return token.equals("tan") ? Math.tan(angle) : Math.sin(angle);
            }
            if (token.equals("(")) {
                double value = value();
                at++;
                return value;
            }
            return number(arguments, Integer.parseInt(token.replaceAll("[{}']", "")));
        }
    }
}
