package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;

/** Every sentence and word that an outcome of any case is made of stands in both catalogues, with a place for no more than it is given. */
class OutcomeLanguageTest {
    private static final List<MessageRenderer> LANGUAGES = List.of(MessageRenderer.of(Locale.ENGLISH), MessageRenderer.of(Locale.GERMAN));

    static Stream<RuleCase> cases() {
        return RuleContractTest.cases().stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyOutcomeIsWrittenInBothLanguages(RuleCase ruleCase) {
        for (Outcome outcome : ruleCase.sample().get().outcomes(ruleCase.rule())) {
            Stream.of(Stream.of(outcome.explanation(), outcome.message(), outcome.title()), outcome.action().stream(),
                    outcome.missing().stream(), outcome.steps().stream()).flatMap(messages -> messages)
                    .forEach(OutcomeLanguageTest::assertWritten);
        }
    }

    private static void assertWritten(Message message) {
        for (MessageRenderer language : LANGUAGES) {
            assertKnown(language, message);
            String text = language.render(message);
            assertFalse(text.matches("(?s).*\\{\\d+}.*"), "a place is not filled: " + text);
        }
    }

    private static void assertKnown(MessageRenderer language, Argument argument) {
        if (argument instanceof Message message) {
            assertTrue(language.keys().contains(message.key()), message.key() + " in " + language.language());
            message.arguments().forEach(part -> assertKnown(language, part));
        } else if (argument instanceof Argument.Series series) {
            series.items().forEach(part -> assertKnown(language, part));
        } else if (argument instanceof Argument.Term term) {
            assertTrue(language.keys().contains("term." + term.key()), term.key() + " in " + language.language());
        }
    }
}
