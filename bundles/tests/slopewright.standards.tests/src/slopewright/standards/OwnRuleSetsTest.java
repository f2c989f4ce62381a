package slopewright.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.messages.MessageRenderer;

/** An organisation's own rule set; every name and number of it is invented. */
class OwnRuleSetsTest {
    private static final String VALUES = "key,value,unit,source,clause,provenance,note\n"
            + "four-unit-row.inner-unit-to-edge-m,16,m,-,4.2,published,agreed with the fire brigade\n";

    @TempDir
    private Path folder;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(folder.resolve("rule-set.properties"), "key=harrow\nedition=2\nname=Harrow\ntitle=Harrow manual\nnote=Invented.\n"
                + "over=icao:9th\ndocument=Harrow manual, issue 2\nperson=R. Tamsin\ndate=2026-05-01\n");
        Files.writeString(folder.resolve("values.csv"), VALUES);
    }

    @Test
    void whatDiffersIsTheOrganisationsOwnAndTheRestIsTheSetBelow() {
        RuleSet own = OwnRuleSets.read(folder);
        RuleSet below = RuleSets.find("icao:9th").orElseThrow();
        CitedValue edge = own.value("four-unit-row.inner-unit-to-edge-m");
        assertEquals(16, edge.value());
        assertEquals(Provenance.ORGANISATION, edge.citation().provenance(), "whatever the file claims");
        assertFalse(edge.citation().toConfirm());
        assertTrue(edge.citation().text().english().contains("Harrow manual, issue 2, R. Tamsin, 2026-05-01"),
                edge.citation().text().english());
        assertTrue(edge.citation().note().english().contains("instead of 15 m"), edge.citation().note().english());
        assertEquals(below.value("four-unit-row.unit-spacing-m"), own.value("four-unit-row.unit-spacing-m"));
        assertEquals(below.surface(), own.surface());
        assertEquals(List.of("four-unit-row.inner-unit-to-edge-m"), OwnRuleSets.compare(below, own).stream()
                .map(OwnRuleSets.Difference::key).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "values.csv; inner-unit-to-edge-m; inner-unit-to-hedge-m; values.csv:2: the rule set below has no value",
        "values.csv; 16,m; 16,ft; values.csv:2: four-unit-row.inner-unit-to-edge-m is given in m, not in 'ft'",
        "values.csv; 16,m; sixteen,m; values.csv:2: value:",
        "values.csv; 4.2; -; values.csv:2: four-unit-row.inner-unit-to-edge-m names no clause",
        "rule-set.properties; over=icao:9th; over=icao; rule-set.properties:6: over names no shipped rule set with its edition: 'icao'",
        "rule-set.properties; key=harrow; key=faa; rule-set.properties:1: the key 'faa' is that of a shipped rule set",
        "rule-set.properties; person=R. Tamsin; persona=R. Tamsin; rule-set.properties:8: 'persona' is not known here",
        "rule-set.properties; person=R. Tamsin; #; rule-set.properties: gives no person"})
    void whatIsWrongIsRefusedWithFileAndLine(String file, String from, String to, String message) throws IOException {
        Path changed = folder.resolve(file);
        Files.writeString(changed, Files.readString(changed).replace(from, to));
        StandardsException refused = assertThrows(StandardsException.class, () -> OwnRuleSets.read(folder));
        String said = refused.getMessage();
        assertTrue(said.contains(message), said);
        String german = MessageRenderer.of(Locale.GERMAN).render(refused.reason());
        int place = said.indexOf(": ");
        assertEquals(said.substring(0, place), german.substring(0, place), "file and line");
        assertNotEquals(said, german);
        assertFalse(german.matches(".*\\b(the|not|names|is|given)\\b.*"), german);
    }

    @Test
    void aStrangeFileIsRefused() throws IOException {
        Files.writeString(folder.resolve("tab-9-9.csv"), "x");
        String said = assertThrows(StandardsException.class, () -> OwnRuleSets.read(folder)).getMessage();
        assertTrue(said.contains("tab-9-9.csv: is no file of a rule set"), said);
    }

    @ParameterizedTest
    @CsvSource({"icao:9th", "faa", "casa", "easa"})
    void theStartingPointIsSound(String over) throws IOException {
        RuleSet below = RuleSets.find(over).orElseThrow();
        for (var file : OwnRuleSets.template(below).entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
        RuleSet own = OwnRuleSets.read(folder);
        assertEquals(below.values().size(), own.values().size());
        assertEquals(below.values().get(0).value(), own.values().get(0).value());
        assertEquals(Provenance.ORGANISATION, own.values().get(0).citation().provenance());
    }
}
