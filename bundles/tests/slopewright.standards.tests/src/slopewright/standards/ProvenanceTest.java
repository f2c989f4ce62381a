package slopewright.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** How well values are known, what a person may change of that, and what a derived value inherits. */
class ProvenanceTest {

    private static final Source TEXT = new Source("text", CitedText.of("a text"), CitedText.of("2001"));

    private static Citation citation(Provenance provenance) {
        return new Citation("a.key-m", TEXT, CitedText.of("1.2.3"), provenance, CitedText.of(""), "");
    }

    private static RuleSet ruleSet() {
        var none = new RuleSet.Tables(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.of(new CrossingHeightTable(List.of(),
                        new Citation("table.crossing-height", TEXT, CitedText.of("T"), Provenance.FROM_MEMORY, CitedText.of(""), ""))),
                                List.of(), Optional.empty());
        var descriptor = new RuleSet.Descriptor("trial", "1", CitedText.of("Trial"), CitedText.of("trial text"), CitedText.of(""),
                List.of("x"), "table",
                "outer-first");
        return new RuleSet(descriptor, Map.of("a.key-m", new CitedValue(9, "m", citation(Provenance.FROM_MEMORY)), "b.key-m",
                new CitedValue(4, "m", citation(Provenance.PUBLISHED))), none);
    }

    @ParameterizedTest
    @CsvSource({"published, false", "derived, false", "override, false", "secondary, true", "common-practice, true", "from-memory, true"})
    void theWordsAndWhetherAPersonMustConfirm(String word, boolean toConfirm) {
        Provenance provenance = Provenance.of(word);
        assertEquals(word, provenance.key());
        assertEquals(toConfirm, provenance.needsConfirmation());
        assertEquals(toConfirm, citation(provenance).toConfirm());
    }

    @Test
    void anUnknownWordIsRefusedByName() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Provenance.of("rumour")).getMessage().contains("rumour"));
    }

    @ParameterizedTest
    @CsvSource({"published, published, derived", "published, derived, derived", "derived, secondary, secondary",
        "published, from-memory, from-memory", "common-practice, secondary, common-practice", "override, published, override",
        "from-memory, common-practice, from-memory"})
    void aDerivedValueIsKnownAsWellAsItsWeakestInput(String one, String other, String expected) {
        assertEquals(Provenance.of(expected), Provenance.derivedFrom(Stream.of(Provenance.of(one), Provenance.of(other))));
        assertEquals(Provenance.of(expected), Provenance.derivedFrom(Stream.of(Provenance.of(other), Provenance.of(one))));
    }

    @ParameterizedTest
    @EnumSource(Provenance.class)
    void aCitationIsNeverMadeBetter(Provenance provenance) {
        for (Provenance weakest : Provenance.values()) {
            Provenance after = citation(provenance).atMost(weakest).provenance();
            assertTrue(after.compareTo(provenance) >= 0);
            assertTrue(after.compareTo(weakest) >= 0);
            assertTrue(Arrays.asList(provenance, weakest).contains(after));
        }
    }

    @Test
    void anOverrideKeepsTheOldNumberAndTheReason() {
        RuleSet rules = ruleSet();
        CitedValue changed = rules.withOverride("a.key-m", 10.5, "site survey, J. Doe").value("a.key-m");
        assertEquals(10.5, changed.value());
        assertEquals("m", changed.unit());
        assertEquals(Provenance.OVERRIDE, changed.citation().provenance());
        assertTrue(changed.citation().source().title().english().contains("site survey, J. Doe"));
        assertTrue(changed.citation().note().english().contains("instead of 9 m (a text, 1.2.3)"), changed.citation().note().english());
        assertEquals(9, rules.value("a.key-m").value(), "the old rule set stays");
        assertThrows(IllegalArgumentException.class, () -> rules.withOverride("a.key-m", Double.NaN, "typing error"));
        IllegalArgumentException unknown = assertThrows(IllegalArgumentException.class, () -> rules.withOverride("no.key-m", 1, ""));
        assertTrue(unknown.getMessage().contains("no.key-m"));
    }

    @Test
    void aConfirmationNamesWhoAndLeavesTheClass() {
        RuleSet rules = ruleSet();
        RuleSet confirmed = rules.withConfirmation("a.key-m", "J. Doe against the issued text").withConfirmation("table.crossing-height",
                "J. Doe");
        assertNotSame(rules, confirmed);
        assertTrue(rules.value("a.key-m").citation().toConfirm());
        Citation citation = confirmed.value("a.key-m").citation();
        assertFalse(citation.toConfirm());
        assertEquals("J. Doe against the issued text", citation.confirmation());
        assertEquals(Provenance.FROM_MEMORY, citation.provenance());
        assertFalse(confirmed.crossingHeight().orElseThrow().citation().toConfirm());
        assertFalse(confirmed.values().get(0).citation().toConfirm());
        assertEquals("J. Doe", confirmed.withOverride("b.key-m", 5, "why").crossingHeight().orElseThrow().citation().confirmation());
    }

    @Test
    void aMissingValueIsRefusedWithTheRuleSetsName() {
        String message = assertThrows(IllegalArgumentException.class, () -> ruleSet().value("c.key-m")).getMessage();
        assertTrue(message.contains("trial (1)") && message.contains("c.key-m"), message);
        assertTrue(ruleSet().find("c.key-m").isEmpty());
    }

    @Test
    void aCitationIsPrintedWithDocumentAndClause() {
        assertEquals("a text, 1.2.3", citation(Provenance.PUBLISHED).text().english());
        assertEquals("a text", new Citation("k", TEXT, CitedText.of(""), Provenance.PUBLISHED, CitedText.of(""), "").text().english());
    }
}
