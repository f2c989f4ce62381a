package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;
import slopewright.siting.magnetic.MagneticModel;
import slopewright.standards.Citation;
import slopewright.standards.CitedChoice;
import slopewright.standards.CitedText;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** What the data of rule sets say in words is said in every language; what stands in them as it is are titles and numbers of clauses. */
class CitedTextTest {
    /** A word that is no name: it begins small and is no Roman numeral. */
    private static final Pattern ENGLISH = Pattern.compile("\\b(?!i+\\b)[a-z]{2,}\\b");

    private static Stream<Argument> texts() {
        return RuleSets.all().stream().flatMap(rules -> Stream.concat(
                Stream.of(rules.descriptor().name(), rules.descriptor().title(), rules.descriptor().note()),
                citations(rules).flatMap(citation -> Stream.of(citation.source().title(), citation.source().edition(), citation.clause(),
                        citation.note()))));
    }

    private static Stream<Citation> citations(RuleSet rules) {
        return Stream.of(rules.values().stream().map(CitedValue::citation), rules.choices().stream().map(CitedChoice::citation),
                rules.tableCitations().stream(), Stream.of(MagneticModel.bundled().citation())).flatMap(all -> all);
    }

    @Test
    void everyKeyOfTheDataIsInTheCatalogues() {
        Set<String> keys = new TreeSet<>();
        texts().filter(text -> text instanceof Message).forEach(text -> keys.add(((Message) text).key()));
        assertTrue(keys.size() > 200, keys.size() + " keys");
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            Set<String> absent = new TreeSet<>(keys);
            absent.removeAll(MessageRenderer.of(language).keys());
            assertEquals(Set.of(), absent, language.toString());
        }
    }

    @Test
    void noWordOfOneLanguageStandsInTheData() {
        Set<String> wrong = new TreeSet<>();
        texts().filter(text -> text instanceof Argument.Name).map(Argument::english).filter(text -> ENGLISH.matcher(text).find())
                .forEach(wrong::add);
        assertEquals(Set.of(), wrong);
    }

    /** What an organisation writes into its own rule set stays as it is; what takes the place of a value says of which. */
    @Test
    void ownTextsStayAsTheyAre() {
        assertEquals(Words.name("our manual, chapter 3"), CitedText.of("our manual, chapter 3"));
        RuleSet own = RuleSets.find("icao:9th").orElseThrow().withOverride("four-unit-row.unit-spacing-m", 8, "narrow strip");
        Citation changed = own.value("four-unit-row.unit-spacing-m").citation();
        MessageRenderer german = MessageRenderer.of(Locale.GERMAN);
        assertEquals("eigener Wert des Projekts: narrow strip", german.write(changed.text()));
        assertEquals("statt 9 m (Annex 14 Vol I, 9. Ausgabe (2022), gelesen in der chinesischen Ausgabe, Fig 5-19)",
                german.write(changed.note()));
    }

    /** The trade name of a family is a word of the catalogues, the same in English as where nobody asks for a language. */
    @Test
    void everyFamilyHasANameInBothLanguages() {
        for (IndicatorFamily family : Families.all()) {
            assertEquals(family.name(), Families.name(family).english());
            assertEquals(Words.term("family." + family.key()), Families.name(family), "it stands in the catalogues");
        }
        assertEquals("Dreifarben-VASI", MessageRenderer.of(Locale.GERMAN).write(Families.name(Families.get("tri-colour"))));
    }
}
