package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;

import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.testkit.DemoProjects;

/** The committed page of values to confirm is what the rule sets and the demos give today, and leaves nothing out. */
class ValuesToConfirmTest {

    private static final Path PAGE = DemoProjects.root().resolve("bundles/app/slopewright.headless/docs/to-confirm.md");

    private static List<String> page() throws IOException {
        return Files.readAllLines(PAGE);
    }

    @Test
    void thePageIsOfToday() throws IOException {
        Words words = Words.run("rule-sets", "--to-confirm", DemoProjects.file("harrow-vale").toString(),
                DemoProjects.file("every-family").toString());
        assertEquals(0, words.code());
        assertEquals(page(), words.out().lines().toList(), "write it anew with rule-sets --to-confirm");
    }

    /** Every value whose class needs a person stands there under its rule set, the weightiest first. */
    @Test
    void everyOpenValueStandsThereByItsWeight() throws IOException {
        String whole = String.join("\n", page());
        for (RuleSet rules : RuleSets.all()) {
            String name = "## " + rules.key() + ":" + rules.edition() + "\n";
            String part = whole.substring(whole.indexOf(name) + name.length()).split("\n## ")[0];
            List<Integer> weights = new ArrayList<>();
            Set<String> listed = new TreeSet<>();
            part.lines().filter(line -> line.startsWith("| ") && Character.isDigit(line.charAt(2))).forEach(line -> {
                weights.add(Integer.valueOf(line.split("\\|")[1].strip()));
                listed.add(line.split("`")[1]);
            });
            for (int i = 1; i < weights.size(); i++) {
                assertTrue(weights.get(i - 1) >= weights.get(i), name + weights);
            }
            Set<String> open = new TreeSet<>();
            rules.values().stream().map(CitedValue::citation).filter(citation -> citation.provenance().needsConfirmation())
                    .forEach(citation -> open.add(citation.key()));
            open.removeAll(listed);
            assertEquals(Set.of(), open, name);
        }
    }
}
