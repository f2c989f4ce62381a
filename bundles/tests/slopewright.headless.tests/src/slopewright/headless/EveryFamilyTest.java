package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import com.fasterxml.jackson.databind.JsonNode;

import slopewright.evaluation.AidLayouts;
import slopewright.geometry.Angles;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.standards.RuleSets;

/** One aid of every family, from the file to signal, drawing, check, report and tolerance. */
class EveryFamilyTest {

    private static final Path FILE = Words.demo("every-family/every-family.slopewright");

    @TempDir
    private Path folder;

    private static List<ApproachAid> aids() throws ProjectFileException {
        Project project = ProjectFile.load(FILE);
        return Projects.aids(project);
    }

    static List<Named<ApproachAid>> named() throws ProjectFileException {
        return aids().stream().map(aid -> Named.of(aid.getFamilyKey(), aid)).toList();
    }

    /** The families that the product offers are those of the file, each once. */
    @Test
    void everyFamilyStandsOnce() throws ProjectFileException {
        Set<String> offered = new TreeSet<>();
        Words.run("families", "--json").json().forEach(family -> offered.add(family.get("key").asText()));
        List<String> standing = aids().stream().map(ApproachAid::getFamilyKey).sorted().toList();
        assertEquals(List.copyOf(offered), standing);
        assertEquals(11, standing.size());
    }

    /** An eye on the slope through the reference point of the layout sees the signal for it: of both paths where there are two. */
    @ParameterizedTest
    @MethodSource("named")
    void anEyeOnTheSlopeSeesOnSlope(ApproachAid aid) {
        Siting laid = AidLayouts.evaluate(aid, RuleSets.find(aid.getRuleSetKey()).orElseThrow());
        double far = Projects.host(aid).orElseThrow() instanceof RunwayEnd ? 3000 : 600;
        double height = laid.reference().heightM() + (laid.reference().alongM() + far) * Angles.tanDeg(laid.slopeDeg());
        assertEquals("on-slope", meaning(aid, -far, height));
        assertFalse(meaning(aid, -far, height * 2).contains("on-slope"), "twice as high");
        assertFalse(meaning(aid, -far, height * 0.5).contains("on-slope"), "half as high");
    }

    private static String meaning(ApproachAid aid, double alongM, double heightM) {
        Words words = Words.run("signal", FILE.toString(), "--aid", aid.getId(), "--along-m", String.valueOf(alongM), "--height-m",
                String.valueOf(heightM), "--json");
        assertEquals(0, words.code(), words.err());
        JsonNode meaning = words.json().get("meaning");
        return meaning.isObject() && meaning.has("lower") ? meaning.get("lower").asText() : meaning.asText();
    }

    @ParameterizedTest
    @MethodSource("named")
    void everyViewIsDrawn(ApproachAid aid) throws IOException {
        Set<String> drawings = new HashSet<>();
        for (String view : List.of("plan", "surface", "section", "pilot")) {
            Path target = folder.resolve(view + ".svg");
            Words words = Words.run("draw", FILE.toString(), "--aid", aid.getId(), "--view", view, "-o", target.toString());
            assertEquals(0, words.code(), view + ": " + words.err());
            String svg = Files.readString(target, StandardCharsets.UTF_8);
            assertTrue(svg.contains("<svg") && svg.strip().endsWith("</svg>") && svg.length() > 1500, view);
            assertFalse(svg.contains("NaN") || svg.contains("Infinity"), view);
            drawings.add(svg);
        }
        assertEquals(4, drawings.size());
    }

    /** Nothing is broken and nothing is missing; what rests on values that nobody confirmed is said to. */
    @ParameterizedTest
    @MethodSource("named")
    void aSolvedAidBreaksNoRule(ApproachAid aid) {
        Set<String> own = new HashSet<>(Set.of(aid.getId()));
        aid.getUnits().forEach(unit -> own.add(unit.getId()));
        List<String> bad = new ArrayList<>();
        int passed = 0;
        for (JsonNode outcome : Words.run("check", FILE.toString(), "--json").project().get("outcomes")) {
            String verdict = outcome.get("outcome").asText();
            if (own.contains(outcome.get("element").asText())) {
                passed += verdict.equals("PASS") ? 1 : 0;
                if (verdict.equals("FAIL") || verdict.equals("NOT_EVALUATED")) {
                    bad.add(outcome.get("rule").asText() + " " + verdict);
                }
            }
        }
        assertEquals(List.of(), bad);
        assertTrue(passed >= 10, passed + " rules passed");
    }

    @Test
    void theReportHasAChapterForEach() throws IOException, ProjectFileException {
        Path target = folder.resolve("report.html");
        Words words = Words.run("report", FILE.toString(), "-o", target.toString(), "--date", "2026-06-01");
        assertEquals(0, words.code(), words.err());
        String html = Files.readString(target, StandardCharsets.UTF_8);
        for (ApproachAid aid : aids()) {
            assertTrue(Pattern.compile("<h[1-3][^>]*>[^<]*" + Pattern.quote(aid.getName()) + "\\s*</h").matcher(html).find(),
                    aid.getName());
        }
    }

    @ParameterizedTest
    @MethodSource("named")
    void whatCanGoWrongIsTold(ApproachAid aid) {
        Words words = Words.run("tolerance", FILE.toString(), "--aid", aid.getId(), "--samples", "200", "--json");
        assertEquals(0, words.code(), words.err());
        assertTrue(words.json().size() > 2, words.out());
    }
}
