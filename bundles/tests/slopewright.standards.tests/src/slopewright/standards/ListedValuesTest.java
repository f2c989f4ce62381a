package slopewright.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every value of every rule set against a second copy, with how well it is known: nothing is promoted, nothing is unlisted. */
class ListedValuesTest {

    static List<RuleSet> all() {
        return FreshRuleSets.all();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/values.csv")
    void valuesAreThoseOfTheSources(String ruleSet, String key, String value, String unit, String provenance) {
        RuleSet rules = FreshRuleSets.find(ruleSet).orElseThrow();
        if (Set.of("choice", "flag").contains(unit)) {
            assertEquals(value, rules.choice(key).orElseThrow().word().key());
        } else {
            assertEquals(Double.parseDouble(value), rules.value(key).printed(), 1e-9);
        }
        assertEquals(unit, rules.unit(key).orElseThrow());
        assertEquals(provenance, rules.citation(key).orElseThrow().provenance().key());
    }

    /** What is not in the second copy was not read in the ninth edition: it comes from the older one, from memory at best. */
    @Test
    void whatTheNinthEditionWasNotReadForIsFromMemory() throws IOException {
        Set<String> listed = listed("icao:9th");
        RuleSet rules = FreshRuleSets.find("icao:9th").orElseThrow();
        List<Citation> all = new ArrayList<>(rules.values().stream().map(CitedValue::citation).toList());
        rules.choices().forEach(choice -> all.add(choice.citation()));
        for (Citation citation : all) {
            boolean claimed = citation.provenance().compareTo(Provenance.FROM_MEMORY) < 0;
            assertTrue(!claimed || listed.contains(citation.key()), citation.key() + " is " + citation.provenance().key());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"icao:5th", "easa", "faa", "casa"})
    void noValueIsUnlisted(String ruleSet) throws IOException {
        Set<String> listed = listed(ruleSet);
        RuleSet rules = FreshRuleSets.find(ruleSet).orElseThrow();
        Set<String> held = rules.values().stream().map(CitedValue::key).collect(Collectors.toCollection(TreeSet::new));
        rules.choices().forEach(choice -> held.add(choice.key()));
        assertEquals(listed, held);
    }

    private Set<String> listed(String ruleSet) throws IOException {
        InputStream cases = getClass().getResourceAsStream("/cases/values.csv");
        try (var reader = new BufferedReader(new InputStreamReader(cases, StandardCharsets.UTF_8))) {
            return reader.lines().filter(line -> line.startsWith(ruleSet + ",")).map(line -> line.split(",")[1])
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /** What differs from the older US edition, and only that, is listed for the refinements of 2022. */
    @Test
    void theRefinementsOf2022AreListed() throws IOException {
        Set<String> listed = listed("faa:2022");
        RuleSet rules = FreshRuleSets.find("faa:2022").orElseThrow();
        RuleSet older = FreshRuleSets.find("faa:2010").orElseThrow();
        for (CitedValue value : rules.values()) {
            boolean same = older.find(value.key()).filter(value::equals).isPresent();
            assertEquals(!same, listed.contains(value.key()), value.key());
        }
        CitedValue tolerance = rules.value("four-unit-row.inner-unit-to-edge-tolerance-ft");
        assertEquals(10, tolerance.value(), "the published figure decides");
        assertTrue(tolerance.citation().note().english().contains("25 ft"), "the disagreement is shown");
    }

    /** A text that was not read cannot have published a value. */
    @ParameterizedTest
    @MethodSource("all")
    void unreadSourcesPublishNothing(RuleSet rules) {
        for (CitedValue value : rules.values()) {
            String source = value.citation().source().title().english();
            Provenance provenance = value.citation().provenance();
            if (source.contains("not read") || source.contains("from memory")) {
                assertEquals(Provenance.FROM_MEMORY, provenance, rules.key() + " " + value.key());
            }
            if (source.contains("restate") && !source.contains("AIP") || source.contains("citing") || source.contains("data sheets")
                    || source.contains("textbook") || source.contains("as restated")) {
                assertTrue(provenance.compareTo(Provenance.SECONDARY) >= 0, rules.key() + " " + value.key());
            }
            assertFalse(value.citation().clause().isBlank(), value.key() + " names its clause");
        }
    }

    /** What was read is named as it was read: a transposition by its name, the annex with the language of the copy. */
    @ParameterizedTest
    @MethodSource("all")
    void noPublishedValueIsCitedAsTheAnnexAlone(RuleSet rules) {
        for (CitedValue value : rules.values()) {
            boolean published = value.citation().provenance() == Provenance.PUBLISHED;
            String title = value.citation().source().title().english();
            assertFalse(published && title.startsWith("Annex 14") && !title.contains("read in the"), value.key());
        }
        String title = rules.descriptor().title().english();
        assertFalse(title.startsWith("Annex 14") && !title.contains("read in the"), title);
    }

    @Test
    void ruleSetsAreFoundByKeyAndEdition() {
        assertEquals(List.of("icao:9th", "icao:5th", "easa:2022", "faa:2010", "faa:2022", "casa:guide"),
                RuleSets.all().stream().map(rules -> rules.key() + ":" + rules.edition()).toList());
        assertEquals("9th", RuleSets.find("icao").orElseThrow().edition(), "the first of a key is its default edition");
        assertEquals("5th", RuleSets.find("icao:5th").orElseThrow().edition());
        assertTrue(RuleSets.find("icao:later").isEmpty());
        assertTrue(RuleSets.find("icao:4th").isEmpty());
        assertTrue(RuleSets.find("nobody").isEmpty());
        assertTrue(RuleSets.find("").isEmpty());
    }

    /** Each rule set lists the families that its texts cover. */
    @Test
    void familiesAreCoveredAsTheTextsDo() {
        Set<String> icao = Set.of("four-unit-row", "two-unit-row", "t-form", "t-form-abbreviated", "heliport-sector");
        assertEquals(icao, Set.copyOf(FreshRuleSets.find("icao:5th").orElseThrow().descriptor().families()));
        assertEquals(icao, Set.copyOf(FreshRuleSets.find("icao:9th").orElseThrow().descriptor().families()));
        assertEquals(Set.of("four-unit-row", "two-unit-row"), Set.copyOf(FreshRuleSets.find("easa").orElseThrow().descriptor().families()));
        RuleSet faa = FreshRuleSets.find("faa").orElseThrow();
        assertFalse(faa.covers("t-form"));
        assertFalse(faa.covers("heliport-sector"));
        assertTrue(faa.covers("heliport-pair"));
        assertTrue(FreshRuleSets.find("casa").orElseThrow().covers("t-form-abbreviated"));
    }
}
