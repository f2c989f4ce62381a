package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;

/** The demo: one layout that passes and one whose planted faults are all found, and nothing else. */
class DemoFindingsTest {

    @Test
    void theGoodLayoutHasNoFindingAtAll() {
        Words words = Words.run("check", Words.demo("harrow-vale/harrow-vale.slopewright").toString());
        assertEquals(0, words.code(), words.out());
    }

    @Test
    void thePlantedFaultsAreFoundAndNothingElse() throws IOException {
        JsonNode checked = Words.run("check", Words.demo("harrow-vale-faults/harrow-vale-faults.slopewright").toString(), "--json")
                .project();
        List<String> found = new ArrayList<>(List.of("rule,element,outcome"));
        for (JsonNode outcome : checked.get("outcomes")) {
            String verdict = outcome.get("outcome").asText();
            if (!verdict.equals("PASS") && !outcome.get("verdict").asText().equals("not-applicable")) {
                found.add(outcome.get("rule").asText() + "," + outcome.get("element").asText() + "," + verdict);
            }
        }
        assertEquals(Files.readAllLines(Words.demo("harrow-vale-faults/expected-findings.csv")), found);
    }
}
