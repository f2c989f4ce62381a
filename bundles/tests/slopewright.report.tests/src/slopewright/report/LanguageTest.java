package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.MessageRenderer;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.util.Projects;

/** Documents in both languages: whole sentences, no keys, the language's decimal sign. */
class LanguageTest {

    /** A key that no catalogue has is written as it is, so that it shows. */
    private static final Pattern KEY = Pattern.compile("\\b(?:report|term|step|caution|asbuilt|outcome)\\.[a-z][a-z.-]+");
    private static final int LEAST_LETTERS = 24;

    private static ReportOptions options(Locale language) {
        return Demo.OPTIONS.in(language);
    }

    private static String text(byte[] html) {
        return Demo.text(new String(html, StandardCharsets.UTF_8).replaceAll("(?s)<svg.*?</svg>", ""));
    }

    private static String report(Project project, Locale language) throws ReportException {
        return text(Reports.write(project, Optional.empty(), options(language), Reports.Format.HTML));
    }

    /** Returns what stands between the places of all English sentences and is long enough to be no name. */
    private static List<String> english() {
        MessageRenderer german = MessageRenderer.of(Locale.GERMAN);
        return MessageRenderer.of(Locale.ENGLISH).patterns().entrySet().stream()
                .filter(entry -> !entry.getValue().equals(german.patterns().get(entry.getKey())))
                .flatMap(entry -> Stream.of(entry.getValue().split("\\{\\d+[^}]*}"))).map(String::strip)
                .filter(part -> part.length() >= LEAST_LETTERS).distinct().toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"harrow-vale", "harrow-vale-faults"})
    void theGermanReportHoldsNoEnglishSentenceOfTheCatalogues(String demo) throws ReportException {
        String text = report(Demo.project(demo), Locale.GERMAN);
        List<String> found = new ArrayList<>(english());
        found.removeIf(part -> !text.contains(part));
        assertEquals(List.of(), found);
        assertFalse(KEY.matcher(text).find(), () -> KEY.matcher(text).results().map(result -> result.group()).distinct().toList()
                .toString());
        Cautions.in(Locale.GERMAN).forEach(caution -> assertTrue(text.contains(caution), caution));
    }

    /** The row at 09 with German decimals: 0.73 m and 330.46 m at 2 degrees 43 minutes make 16.41 m, as in the English report. */
    @Test
    void numbersHaveTheDecimalSignOfTheLanguage() throws ReportException {
        String german = report(Demo.project("harrow-vale"), Locale.GERMAN);
        assertTrue(german.contains("0,73 m + 330,46 m \u00d7 tan 2\u00b043' = 16,41 m"), german);
        assertTrue(german.contains("Augenh\u00f6he \u00fcber der Schwelle (MEHT)"), german);
        assertTrue(report(Demo.project("harrow-vale"), Locale.ENGLISH).contains("0.73 m + 330.46 m \u00d7 tan 2\u00b043' = 16.41 m"));
    }

    @Test
    void theEnglishReportHoldsNoKeys() throws ReportException {
        String text = report(Demo.project("every-family"), Locale.ENGLISH);
        assertFalse(KEY.matcher(text).find(), () -> KEY.matcher(text).results().map(result -> result.group()).distinct().toList()
                .toString());
    }

    @Test
    void sheetsAndCardsAreWrittenInBothLanguages() throws ReportException {
        Project project = Demo.project("every-family");
        ProjectEvaluation evaluation = ProjectEvaluation.of(project, Optional.empty());
        for (ApproachAid aid : Projects.aids(project)) {
            for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                String sheet = text(CommissioningSheets.write(evaluation, aid, options(language), Reports.Format.HTML));
                assertFalse(KEY.matcher(sheet).find(), sheet);
                assertTrue(sheet.contains(Cautions.in(language).get(1)), sheet);
                if (Boolean.TRUE.equals(aid.getPortable())) {
                    String card = text(SetUpCards.write(evaluation, aid, LocalDate.of(2026, 6, 1), options(language),
                            Reports.Format.HTML).bytes());
                    assertFalse(KEY.matcher(card).find(), card);
                    assertTrue(card.contains(Cautions.in(language).get(1)), card);
                }
            }
        }
    }

    /** The two cautions word for word, as the description of the product has them. */
    @Test
    void theCautionsAreThoseOfTheProduct() {
        assertEquals(List.of("A design aid: it does not replace the current edition of the standard, the authority's approval, ground "
                + "survey, flight inspection, or a licensed engineer's judgement; local codes come first.",
                "Never set up or switch on an indicator at an operational aerodrome without the operator's authorisation; lamp units are "
                        + "hot, bright and electrically powered."), Cautions.in(Locale.ENGLISH));
        assertEquals(2, Cautions.in(Locale.GERMAN).size());
    }
}
