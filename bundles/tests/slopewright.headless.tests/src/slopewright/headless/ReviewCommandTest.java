package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.fasterxml.jackson.databind.JsonNode;

/** A review from the first comment to the signature, by two people. Every name is invented. */
class ReviewCommandTest {
    private static final String DEMO = Words.demo("harrow-vale/harrow-vale.slopewright").toString();
    private static final String AUTHOR = "R. Tamsin";

    @TempDir
    private Path folder;

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private static Words run(int code, String... words) {
        Words ran = Words.run(words);
        assertEquals(code, ran.code(), () -> String.join(" ", words) + "\n" + ran.out() + ran.err());
        return ran;
    }

    private static String counts(String project) {
        JsonNode counts = Words.run("check", project, "--json").json().get("projects").get(0).get("counts");
        return counts.get("not-met") + " " + counts.get("to-clear-up");
    }

    @Test
    void aReviewGoesFromACommentToASignature() throws IOException {
        String before = counts(DEMO);
        run(0, "review", DEMO, "--comment", "Why 330 m?", "--element", "approach-aid-1", "--rule", "EYE-01", "--by", "B. Bole", "--date",
                "2026-06-02", "-o", file("a.slopewright"));
        assertEquals(before, counts(file("a.slopewright")), "no note changes a verdict");
        JsonNode open = run(0, "review", file("a.slopewright"), "--json").json();
        assertEquals("open", open.get("comments").get(0).get("state").asText());
        assertTrue(open.get("signedOff").isNull());
        String id = open.get("comments").get(0).get("id").asText();
        assertTrue(run(2, "review", file("a.slopewright"), "--sign-off", "--by", "B. Bole", "--date", "2026-06-03", "-o",
                file("no.slopewright")).err().contains(id), "a comment is open");

        run(0, "review", file("a.slopewright"), "--answer", id, "--text", "For the wheels of the heaviest group.", "--by", AUTHOR,
                "--date", "2026-06-03", "-o", file("b.slopewright"));
        run(0, "review", file("b.slopewright"), "--return", id, "--text", "Which is that?", "--by", "B. Bole", "--date", "2026-06-03",
                "-o", file("c.slopewright"));
        run(0, "review", file("c.slopewright"), "--answer", id, "--text", "The twin-jet.", "--by", AUTHOR, "--date", "2026-06-04", "-o",
                file("d.slopewright"));
        run(2, "review", file("d.slopewright"), "--accept", id, "--by", AUTHOR, "--date", "2026-06-04", "-o", file("no.slopewright"));
        run(0, "review", file("d.slopewright"), "--accept", id, "--by", "B. Bole", "--date", "2026-06-04", "-o", file("e.slopewright"));
        run(2, "review", file("e.slopewright"), "--answer", id, "--text", "More.", "--by", AUTHOR, "--date", "2026-06-05", "-o",
                file("no.slopewright"));
        run(2, "review", file("e.slopewright"), "--sign-off", "--by", AUTHOR, "--date", "2026-06-05", "-o", file("no.slopewright"));
        run(2, "review", file("e.slopewright"), "--sign-off", "--by", "B. Bole", "--date", "2026-06-01", "-o", file("no.slopewright"));
        run(0, "review", file("e.slopewright"), "--sign-off", "--by", "B. Bole", "--date", "2026-06-05", "-o", file("f.slopewright"));
        assertFalse(Files.exists(folder.resolve("no.slopewright")));

        JsonNode signed = run(0, "review", file("f.slopewright"), "--json").json();
        assertEquals(4, signed.get("comments").get(0).get("replies").size());
        assertEquals("accepted", signed.get("comments").get(0).get("state").asText());
        assertTrue(signed.get("signedOff").get("asSigned").asBoolean());
        assertTrue(signed.get("signedOff").get("text").asText().contains("0 not met, 0 to clear up"));
        assertEquals(before, counts(file("f.slopewright")));
        assertTrue(run(0, "check", file("f.slopewright"), "--rules", "REC-01", "--all").out().contains("is as it was signed off"));
        run(0, "report", file("f.slopewright"), "-o", file("f.html"), "--date", "2026-06-05");
        String report = Files.readString(folder.resolve("f.html"));
        for (String words : new String[] {"Why 330 m?", "Which is that?", "The twin-jet.", "B. Bole"}) {
            assertTrue(report.contains(words), words);
        }
        assertTrue(run(0, "text", file("f.slopewright")).out().contains("Which is that?"));
        String versions = Words.run("compare-versions", DEMO, file("f.slopewright")).out();
        for (String said : new String[] {"(comment, B. Bole: Why 330 m?)", "(accepted, B. Bole", "(signed off, B. Bole: "}) {
            assertTrue(versions.contains(said), said + " in " + versions);
        }

        run(0, "enter", file("f.slopewright"), "light-unit-1.heightAboveGroundM=0.9", "-o", file("g.slopewright"));
        assertFalse(run(0, "review", file("g.slopewright"), "--json").json().get("signedOff").get("asSigned").asBoolean());
        assertTrue(run(1, "check", file("g.slopewright"), "--rules", "REC-01").out().contains("was changed since B. Bole signed it off"));
    }

    @Test
    void whatMakesNoSenseIsRefused() {
        run(2, "review", DEMO, "--comment", "x", "--by", "B. Bole", "--date", "2026-06-02");
        run(2, "review", DEMO, "--comment", "x", "--element", "nobody", "--by", "B. Bole", "--date", "2026-06-02", "-o", file("x"));
        run(2, "review", DEMO, "--comment", "x", "--rule", "NONE-01", "--by", "B. Bole", "--date", "2026-06-02", "-o", file("x"));
        run(2, "review", DEMO, "--comment", " ", "--by", "B. Bole", "--date", "2026-06-02", "-o", file("x"));
        run(2, "review", DEMO, "--comment", "x", "--by", "?", "--date", "2026-06-02", "-o", file("x"));
        run(2, "review", DEMO, "--answer", "review-note-9", "--text", "x", "--by", "B. Bole", "--date", "2026-06-02", "-o", file("x"));
        run(2, "review", DEMO, "--comment", "x", "--sign-off", "--by", "B. Bole", "--date", "2026-06-02", "-o", file("x"));
        run(2, "review", DEMO, "--element", "approach-aid-1");
        assertFalse(Files.exists(folder.resolve("x")));
    }

    /** What is signed off was judged by an own rule set that lies beside the project; a number in it is as good as one in the project. */
    @Test
    void aRuleSetThatChangesAfterTheSignatureShows() throws IOException {
        run(0, "rule-sets", "--new", file("ours"), "--over", "icao:9th");
        run(0, "enter", DEMO, "project-1.ruleSetFolder=ours", "project-1.ruleSetKey=our-own:1", "-o", file("a.slopewright"));
        run(0, "review", file("a.slopewright"), "--sign-off", "--by", "B. Bole", "--date", "2026-06-05", "-o", file("b.slopewright"));
        assertTrue(run(0, "review", file("b.slopewright"), "--json").json().get("signedOff").get("asSigned").asBoolean());
        Path values = folder.resolve("ours").resolve("values.csv");
        String printed = "## four-unit-row.inner-unit-to-edge-tolerance-m,1,";
        String before = Files.readString(values);
        assertTrue(before.contains(printed));
        Files.writeString(values, before.replace(printed, printed.replace("## ", "").replace(",1,", ",1.8,")));
        assertFalse(run(0, "review", file("b.slopewright"), "--json").json().get("signedOff").get("asSigned").asBoolean());
        Files.writeString(values, before);
        assertTrue(run(0, "review", file("b.slopewright"), "--json").json().get("signedOff").get("asSigned").asBoolean());
    }
}
