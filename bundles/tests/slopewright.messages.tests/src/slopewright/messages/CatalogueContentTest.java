package slopewright.messages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every sentence and word of every language. */
class CatalogueContentTest {
    private static final Pattern PLACE = Pattern.compile("\\{(\\d+)(\\|[^|{}]*\\|[^|{}]*)?}");
    private static final Pattern MANY = Pattern.compile("\\{\\d+} ((survey|light|brightness) )?"
            + "(outcomes|values|points(?! off)|units|places|others"
            + "|entries|lamps|measurements|numbers|results|rules|aids|indicators|sheets|notes|rows)\\b");
    private static final Pattern WORD = Pattern.compile("\\p{L}+");
    /** Words of English grammar that no German sentence has, whatever it is about. */
    private static final Set<String> ENGLISH = Set.of("the", "is", "are", "of", "and", "to", "for", "with", "from", "that", "this", "where",
            "which", "has", "have", "its", "be", "been", "cannot", "must", "than", "only", "not", "it", "or", "by", "no", "at", "on", "as",
            "there", "their", "what", "how", "any", "each", "every", "other", "above", "below", "between", "within", "without");
    /** Words of German grammar that no English sentence has. */
    private static final Set<String> GERMAN = Set.of("der", "das", "ist", "sind", "und", "oder", "nicht", "von", "mit", "wird", "werden",
            "eine", "einen", "einer", "kein", "keine", "für", "über", "bei", "auf", "zu", "wo", "wie", "sie");

    static List<MessageRenderer> renderers() {
        return List.of(MessageRenderer.of(Locale.ENGLISH), MessageRenderer.of(Locale.GERMAN));
    }

    private static Set<Integer> places(String pattern) {
        Set<Integer> places = new TreeSet<>();
        PLACE.matcher(pattern).results().filter(place -> place.group(2) == null).forEach(place -> places.add(
                Integer.parseInt(place.group(1))));
        return places;
    }

    @Test
    void everyLanguageHasTheSameKeys() {
        assertEquals(MessageRenderer.of(Locale.ENGLISH).keys(), MessageRenderer.of(Locale.GERMAN).keys());
        assertTrue(MessageRenderer.of(Locale.ENGLISH).keys().size() > 500, "the catalogues were read");
    }

    @Test
    void everyLanguageFillsTheSamePlaces() {
        Map<String, String> german = MessageRenderer.of(Locale.GERMAN).patterns();
        List<String> different = MessageRenderer.of(Locale.ENGLISH).patterns().entrySet().stream()
                .filter(entry -> !places(entry.getValue()).equals(places(german.getOrDefault(entry.getKey(), "")))).map(Map.Entry::getKey)
                .toList();
        assertEquals(List.of(), different);
    }

    @ParameterizedTest
    @MethodSource("renderers")
    void everySentenceIsRenderedWithItsArguments(MessageRenderer renderer) {
        renderer.patterns().forEach((key, pattern) -> {
            int arguments = places(pattern).stream().mapToInt(place -> place + 1).max().orElse(0);
            Argument[] samples = IntStream.range(0, arguments).mapToObj(CatalogueContentTest::sample).toArray(Argument[]::new);
            String text = renderer.render(Message.of(key, samples));
            assertFalse(text.isBlank(), key);
            assertFalse(text.contains("{") || text.contains("}"), key + ": " + text);
            assertEquals(1, text.lines().count(), key);
            for (int place : places(pattern)) {
                assertTrue(text.contains(renderer.write(samples[place])), key + ": " + text);
            }
        });
    }

    private static Argument sample(int place) {
        return switch (place % 3) {
            case 0 -> Words.m(1234.567 + place);
            case 1 -> Words.name("name " + place);
            default -> Words.list(List.of(Words.deg(2.5), Words.count(place)));
        };
    }

    /** A sentence ends with its sign, and a name or a title with none; no space stands where none belongs. */
    @ParameterizedTest
    @MethodSource("renderers")
    void everySentenceIsWrittenCleanly(MessageRenderer renderer) {
        renderer.patterns().forEach((key, pattern) -> {
            boolean columns = key.startsWith("drawing.detail.") || key.equals("report.figure");
            assertFalse(pattern.contains("  ") && !columns || pattern.contains(" .") || pattern.contains(" ,"), key + ": " + pattern);
            assertFalse(pattern.matches(".*\\bcan not\\b.*"), key + ": " + pattern);
            if (key.endsWith(".title") || key.startsWith("term.") || key.startsWith("missing.") || key.startsWith("step.")) {
                assertFalse(pattern.endsWith("."), key + " is no sentence: " + pattern);
            }
            if (key.endsWith(".description")) {
                assertTrue(pattern.matches("\\p{Lu}.*\\."), key + " is one sentence: " + pattern);
            }
        });
    }

    /** A count that may be one has its word in both numbers: never "1 outcomes". */
    @Test
    void noCountIsWrittenWithTheWordForManyAlone() {
        List<String> found = MessageRenderer.of(Locale.ENGLISH).patterns().entrySet().stream()
                .filter(entry -> MANY.matcher(entry.getValue()).find()).map(entry -> entry.getKey() + " = " + entry.getValue()).toList();
        assertEquals(List.of(), found);
    }

    @Test
    void germanIsGerman() {
        assertNoWordOf(ENGLISH, MessageRenderer.of(Locale.GERMAN));
    }

    @Test
    void englishIsEnglish() {
        assertNoWordOf(GERMAN, MessageRenderer.of(Locale.ENGLISH));
    }

    private static void assertNoWordOf(Set<String> words, MessageRenderer renderer) {
        List<String> strange = renderer.patterns().entrySet().stream()
                .filter(entry -> WORD.matcher(entry.getValue()).results().map(MatchResult::group).anyMatch(words::contains))
                .map(entry -> entry.getKey() + " = " + entry.getValue()).toList();
        assertEquals(List.of(), strange);
    }

    /** A German sentence that equals the English one was forgotten; what is the same in both has no word of a language in it. */
    @Test
    void noSentenceWasLeftInEnglish() {
        Map<String, String> german = MessageRenderer.of(Locale.GERMAN).patterns();
        List<String> same = MessageRenderer.of(Locale.ENGLISH).patterns().entrySet().stream()
                .filter(entry -> entry.getValue().equals(german.get(entry.getKey())))
                .filter(entry -> WORD.matcher(PLACE.matcher(entry.getValue()).replaceAll("")).results().count() > 2)
                .map(entry -> entry.getKey() + " = " + entry.getValue()).toList();
        assertEquals(List.of(), same);
    }
}
