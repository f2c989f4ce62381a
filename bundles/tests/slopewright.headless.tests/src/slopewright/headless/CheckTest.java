package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import com.fasterxml.jackson.databind.JsonNode;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

import slopewright.checks.Verdict;

/** The documents and exit codes of {@code check}. */
class CheckTest {

    private static final String GOOD = Words.demo("harrow-vale/harrow-vale.slopewright").toString();
    private static final String FAULTY = Words.demo("harrow-vale-faults/harrow-vale-faults.slopewright").toString();

    @TempDir
    private Path folder;

    /** Counts the verdicts of the outcomes, apart from the counts that the document states. */
    private static Map<Verdict, Integer> counted(JsonNode project) {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        for (Verdict verdict : Verdict.values()) {
            counts.put(verdict, 0);
        }
        project.get("outcomes").forEach(outcome -> counts.merge(Verdict.valueOf(outcome.get("verdict").asText().toUpperCase()
                .replace('-', '_')), 1, Integer::sum));
        return counts;
    }

    @Test
    void oneDocumentHasSchemaTwo() throws Exception {
        Words good = Words.run("check", GOOD, "--json", "--fail-on", "fail");
        assertEquals(0, good.code(), good.out());
        JsonNode root = good.json();
        assertEquals(2, root.get("schema").asInt());
        assertTrue(root.get("program").asText().startsWith("slopewright "), root.get("program").asText());
        JsonNode project = good.project();
        assertEquals("icao", project.get("ruleSet").asText());
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(Path.of(GOOD)));
        assertEquals(HexFormat.of().formatHex(hash), project.get("sha256").asText());
        Map<Verdict, Integer> counts = counted(project);
        counts.forEach((verdict, count) -> assertEquals(count, project.get("counts").get(verdict.key()).asInt(), verdict.key()));
        assertEquals(0, counts.get(Verdict.NOT_MET));
        assertEquals(Verdict.values().length, project.get("counts").size());
    }

    /** The first word that holds, from the decision on verdicts; the message is data with its words beside. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void everyOutcomeHasAVerdictAndItsMessageAsData(boolean faulty) {
        for (JsonNode outcome : Words.run("check", faulty ? FAULTY : GOOD, "--json").project().get("outcomes")) {
            String expected = switch (outcome.get("outcome").asText()) {
                case "FAIL" -> "not-met";
                case "NOT_EVALUATED" -> "to-clear-up";
                case "PASS" -> outcome.get("toConfirm").asBoolean() ? "to-clear-up" : "met";
                default -> "not-applicable";
            };
            assertEquals(expected, outcome.get("verdict").asText(), outcome.toString());
            assertFalse(outcome.get("message").get("key").asText().isEmpty());
            assertTrue(outcome.get("message").get("arguments").isArray());
            assertTrue(outcome.get("explanation").asText().startsWith(outcome.get("message").get("text").asText()), outcome::toString);
            outcome.get("steps").forEach(step -> assertFalse(step.get("key").asText().isEmpty()));
            if (outcome.get("value").isNumber()) {
                assertTrue(outcome.get("resolution").asDouble() >= 0 && outcome.get("resolution").isNumber(), outcome.toString());
            }
        }
    }

    @Test
    void severalFilesAreOneDocumentAndTheWorstCodeWins() {
        Words words = Words.run("check", "--json", GOOD, FAULTY, folder.resolve("none").toString());
        assertEquals(3, words.code());
        assertEquals(2, words.json().get("projects").size());
        assertEquals(GOOD, words.json().get("projects").get(0).get("file").asText());
        assertTrue(words.err().contains("there is no such file"));
    }

    @Test
    void checkOfNothingIsNeverAPass() throws IOException {
        Path file = folder.resolve("empty.slopewright");
        Files.writeString(file, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<slopewright:Project xmi:version=\"2.0\" "
                + "xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:slopewright=\"http://slopewright.example/model/1.0\" "
                + "xmi:id=\"project-1\"/>\n");
        assertEquals(5, Words.run("check", file.toString()).code());
    }

    /** What is not met with severity fail exits 1 whatever weight was asked for; what is to clear up weighs as a warning. */
    @Test
    void onlyWarningsNotesAndWhatIsToClearUpAreRelaxed() throws IOException {
        for (String weight : List.of("note", "warning", "fail")) {
            assertEquals(1, Words.run("check", FAULTY, "--fail-on", weight).code(), weight);
        }
        Path unconfirmed = Files.writeString(folder.resolve("u.slopewright"),
                Files.readString(Path.of(GOOD)).replaceAll("\\s*<confirmations [^>]*/>", ""));
        Map<Verdict, Integer> counts = counted(Words.run("check", unconfirmed.toString(), "--json").project());
        assertEquals(0, counts.get(Verdict.NOT_MET));
        assertTrue(counts.get(Verdict.TO_CLEAR_UP) > 0);
        assertEquals(1, Words.run("check", unconfirmed.toString()).code());
        assertEquals(1, Words.run("check", unconfirmed.toString(), "--fail-on", "note").code());
        assertEquals(0, Words.run("check", unconfirmed.toString(), "--fail-on", "fail").code());
        assertEquals(2, Words.run("check", FAULTY, "--fail-on", "often").code());
    }

    @Test
    void wordsThatDoNotFitTogetherAreRefused() {
        assertEquals(2, Words.run("check", FAULTY, "--junit", "--csv").code());
        assertEquals(2, Words.run("check", FAULTY, "--rules", "NOPE-99").code());
        assertEquals(2, Words.run("check", FAULTY, "--language", "fr").code());
    }

    private static List<List<String>> table(String file) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(Words.run("check", file, "--csv").out())) {
            reader.forEach(row -> rows.add(row.getFields()));
        }
        return rows;
    }

    @Test
    void theTableHasARowForEachOutcomeAndNumbersStayNumbers() throws Exception {
        List<List<String>> rows = table(FAULTY);
        assertEquals(List.of("file", "rule", "element", "verdict", "outcome", "severity", "value", "limit", "margin", "unit", "missing",
                "citation", "provenance", "toConfirm", "explanation", "program", "project", "revision", "projectFileSha256",
                "ruleSet"), rows.get(0));
        String digest = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(Path.of(FAULTY))));
        assertEquals(List.of("Harrow Vale, layout with planted faults", "A", digest), rows.get(1).subList(16, 19));
        JsonNode outcomes = Words.run("check", FAULTY, "--json").project().get("outcomes");
        assertEquals(outcomes.size() + 1, rows.size());
        boolean negative = false;
        for (int i = 0; i < outcomes.size(); i++) {
            JsonNode outcome = outcomes.get(i);
            List<String> row = rows.get(i + 1);
            assertEquals(outcome.get("verdict").asText(), row.get(3));
            assertEquals(outcome.get("explanation").asText(), row.get(14));
            if (outcome.get("margin").isNumber()) {
                assertEquals(outcome.get("margin").asDouble(), Double.parseDouble(row.get(8)), 0.00005);
                negative |= row.get(8).startsWith("-");
            } else {
                assertEquals("", row.get(8));
            }
        }
        assertTrue(negative, "a margin below zero is no formula");
    }

    private Path withHillCalled(String name) throws IOException {
        return Files.writeString(folder.resolve("hill.slopewright"),
                Files.readString(Path.of(FAULTY)).replace("name=\"Cold Barrow hill\"", "name=\"" + name + "\""));
    }

    /** The name of an obstacle stands in the sentences; one that begins like a formula begins with an apostrophe. */
    @Test
    void aNameIsNoFormula() throws IOException {
        Path file = withHillCalled("=HYPERLINK(1)");
        boolean found = false;
        for (List<String> row : table(file.toString())) {
            row.forEach(cell -> assertFalse(cell.startsWith("="), cell));
            found |= row.get(14).startsWith("'=HYPERLINK(1)");
        }
        assertTrue(found);
    }

    private static Element suite(String file) throws ParserConfigurationException, SAXException, IOException {
        String text = Words.run("check", file, "--junit").out();
        Element root = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8))).getDocumentElement();
        return (Element) root.getElementsByTagName("testsuite").item(0);
    }

    /** Failures are what is not met; what is to clear up is skipped with its reason, so that no test passes that nobody can vouch for. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void junitCountsVerdicts(boolean faulty) throws ParserConfigurationException, SAXException, IOException {
        String file = faulty ? FAULTY : GOOD;
        Map<Verdict, Integer> counts = counted(Words.run("check", file, "--json").project());
        Element suite = suite(file);
        assertEquals(counts.get(Verdict.NOT_MET), Integer.valueOf(suite.getAttribute("failures")));
        assertEquals(counts.get(Verdict.NOT_MET), suite.getElementsByTagName("failure").getLength());
        assertEquals(counts.get(Verdict.TO_CLEAR_UP) + counts.get(Verdict.NOT_APPLICABLE), Integer.valueOf(suite.getAttribute("skipped")));
        NodeList skipped = suite.getElementsByTagName("skipped");
        int toClearUp = 0;
        for (int i = 0; i < skipped.getLength(); i++) {
            String message = ((Element) skipped.item(i)).getAttribute("message");
            toClearUp += message.startsWith("to clear up") ? 1 : 0;
            assertTrue(message.startsWith("to clear up") || message.startsWith("not applicable"), message);
        }
        assertEquals(counts.get(Verdict.TO_CLEAR_UP), toClearUp);
        assertEquals(counts.values().stream().mapToInt(Integer::intValue).sum(), suite.getElementsByTagName("testcase").getLength());
    }

    @Test
    void theTextSaysTheVerdictsInTwoLanguages() {
        String english = Words.run("check", FAULTY).out();
        String german = Words.run("check", FAULTY, "--language", "de").out();
        Map<Verdict, Integer> counts = counted(Words.run("check", FAULTY, "--json").project());
        assertTrue(english.contains("\n" + counts.get(Verdict.NOT_MET) + " not met, " + counts.get(Verdict.TO_CLEAR_UP) + " to clear up ("),
                english);
        assertTrue(german.contains("\n" + counts.get(Verdict.NOT_MET) + " nicht erfüllt, " + counts.get(Verdict.TO_CLEAR_UP)
                + " zu klären"), german);
        assertTrue(german.contains("Wert 4,30 m, Grenze 8,10 m, Abstand -3,80 m"), "the decimal sign of the language");
        assertTrue(english.contains("value 4.30 m, limit 8.10 m, margin -3.80 m"));
        assertNotEquals(english.lines().count(), 0);
        assertEquals(english.lines().count(), german.lines().count());
    }

    /** The stage stands in the document and in the count line; a stage asked for by name stands above that of the project. */
    @Test
    void theStageIsSaidAndCanBeChosen() {
        for (String stage : List.of("design", "set-up", "operation")) {
            JsonNode project = Words.run("check", GOOD, "--json", "--stage", stage).project();
            assertEquals(stage, project.get("stage").asText());
            int later = 0;
            for (JsonNode outcome : project.get("outcomes")) {
                later += outcome.get("outcome").asText().equals("NOT_AT_THIS_STAGE") ? 1 : 0;
            }
            assertEquals(later, project.get("notAtThisStage").asInt());
            assertTrue(!stage.equals("operation") || later == 0, stage);
            String text = Words.run("check", GOOD, "--stage", stage).out();
            assertTrue(text.contains("(" + later + " of them not at this stage: " + stage + ")"), text);
        }
        assertEquals(2, Words.run("check", GOOD, "--stage", "later").code());
    }

    /** A red with y = 0.330 where 0.320 is allowed is not met before equipment is asked for, and exits 1 whatever weight was asked for. */
    @Test
    void whatWasEnteredWronglyIsNotMetAtEveryStage() throws IOException {
        Path amber = Files.writeString(folder.resolve("amber.slopewright"),
                Files.readString(Path.of(GOOD)).replace("redChromaticityY=\"0.315\"", "redChromaticityY=\"0.33\""));
        for (String stage : List.of("design", "set-up", "operation")) {
            Words words = Words.run("check", amber.toString(), "--stage", stage, "--rules", "EQUIP-03", "--fail-on", "fail");
            assertEquals(1, words.code(), stage + words.out());
            assertTrue(words.out().contains("not met        fail     EQUIP-03"), words.out());
        }
    }

    /** A name with a line break and an escape sequence prints nothing of its own. */
    @Test
    void aNameForgesNoLine() throws IOException {
        Path file = withHillCalled("hill&#10;999 not met, 0 to clear up&#9;x");
        String text = Words.run("check", file.toString(), "--all").out();
        assertTrue(text.lines().noneMatch(line -> line.startsWith("999")), text);
        assertTrue(text.chars().noneMatch(c -> Character.isISOControl(c) && c != '\n'), text);
    }
}
