package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import com.fasterxml.jackson.databind.JsonNode;

/** What is typed in feet is what is typed in metres: the same layout, notes, findings and verdicts. A foot is 0.3048 m exactly. */
class UnitInvarianceTest {

    private static final int LAYOUTS = 12;
    private static final double SAME_M = 1e-6;
    private static final BigDecimal FOOT = new BigDecimal("0.3048");

    private static final Set<String> LAID_OUT = new TreeSet<>();

    @TempDir
    private Path folder;

    /** Lengths in hundredths of a foot, each said once in either unit. */
    private static final class Drawn {

        private final List<String> feet = new ArrayList<>();
        private final List<String> metres = new ArrayList<>();

        void words(String... words) {
            feet.addAll(List.of(words));
            metres.addAll(List.of(words));
        }

        void length(Random random, String option, double fromFt, double toFt) {
            BigDecimal length = BigDecimal.valueOf(Math.round(100 * (fromFt + random.nextDouble() * (toFt - fromFt))), 2);
            words(option);
            feet.add(length.toPlainString() + "ft");
            metres.add(length.multiply(FOOT).toPlainString());
        }
    }

    static List<String> familiesUnderTheirRuleSets() {
        List<String> pairs = new ArrayList<>();
        for (JsonNode family : Words.run("families", "--json").json()) {
            for (String ruleSet : List.of("icao:9th", "icao:5th", "easa:2022", "faa:2010", "faa:2022", "casa:guide")) {
                pairs.add(family.get("key").asText() + " " + ruleSet);
            }
        }
        return pairs;
    }

    /** The same structure; numbers within a tolerance, all else to the letter. */
    private static void assertSame(String path, JsonNode expected, JsonNode actual) {
        if (expected.isNumber() && actual.isNumber()) {
            assertEquals(expected.asDouble(), actual.asDouble(), SAME_M, path);
        } else if (expected.isContainerNode()) {
            assertEquals(expected.getNodeType(), actual.getNodeType(), path);
            assertEquals(expected.size(), actual.size(), path);
            if (expected.isArray()) {
                for (int i = 0; i < expected.size(); i++) {
                    assertSame(path + "/" + i, expected.get(i), actual.get(i));
                }
            } else {
                expected.fieldNames().forEachRemaining(name -> {
                    assertTrue(actual.has(name), path + "/" + name);
                    assertSame(path + "/" + name, expected.get(name), actual.get(name));
                });
            }
        } else {
            assertEquals(expected, actual, path);
        }
    }

    private static Drawn layout(Random random, String family, String ruleSet) {
        Drawn drawn = new Drawn();
        drawn.words("site", "--json", "--family", family, "--rule-set", ruleSet, "--code", String.valueOf(1 + random.nextInt(4)),
                "--approach", random.nextBoolean() ? "visual" : "precision", "--slope-deg", random.nextBoolean() ? "3" : "3.25");
        drawn.length(random, "--runway-width-m", 60, 200);
        if (random.nextInt(3) > 0) {
            drawn.length(random, "--eye-to-wheel-m", 5, 40);
        } else {
            drawn.length(random, "--eye-height-m", 25, 80);
        }
        if (random.nextBoolean()) {
            drawn.length(random, "--distance-m", 600, 1600);
        } else if (random.nextBoolean()) {
            drawn.length(random, "--lens-height-m", -8, 8);
        }
        if (random.nextInt(4) == 0) {
            drawn.length(random, "--glide-path-origin-m", 700, 1200);
        }
        return drawn;
    }

    @ParameterizedTest
    @MethodSource("familiesUnderTheirRuleSets")
    void aLayoutIsTheSameInFeet(String pair) {
        String[] names = pair.split(" ");
        Random random = new Random(pair.hashCode());
        for (int i = 0; i < LAYOUTS; i++) {
            Drawn drawn = layout(random, names[0], names[1]);
            Words metres = Words.run(drawn.metres.toArray(String[]::new));
            Words feet = Words.run(drawn.feet.toArray(String[]::new));
            assertEquals(metres.code(), feet.code(), drawn.feet + feet.err());
            if (metres.code() < 2) {
                LAID_OUT.add(pair);
                assertSame(String.join(" ", drawn.feet), metres.json(), feet.json());
            }
        }
    }

    /** Of all pairs enough were laid out for the test above to say something. */
    @AfterAll
    static void mostPairsThatAreOfferedWereLaidOut() {
        assertTrue(LAID_OUT.isEmpty() || LAID_OUT.size() >= 20, LAID_OUT.toString());
    }

    private static List<String> verdicts(Path file) {
        return Stream.of(Words.run("check", file.toString(), "--json").project().get("outcomes"))
                .flatMap(outcomes -> Stream.iterate(0, i -> i < outcomes.size(), i -> i + 1).map(outcomes::get))
                .map(outcome -> outcome.get("rule").asText() + " " + outcome.get("element").asText() + " "
                        + outcome.get("outcome").asText())
                .sorted().toList();
    }

    /** A project begun in feet, with an indicator and all that is known of the runway, is judged as the one begun in metres. */
    @Test
    void aProjectIsJudgedTheSameInFeet() throws Exception {
        Random random = new Random(12);
        for (int i = 0; i < 6; i++) {
            Drawn drawn = new Drawn();
            drawn.words("new", "--name", "Field", "--template", i % 2 == 0 ? "runway-instrument" : "runway-visual",
                    "--designator", "09", "--bearing-deg", "90",
                    "--latitude-deg", "47.3", "--longitude-deg", "-11.9", "--coordinate-epoch-year", "2026.4", "--date", "2026-05-20",
                    "--rule-set", i % 3 == 0 ? "faa" : "icao:9th");
            drawn.length(random, "--elevation-m", 20, 900);
            drawn.length(random, "--runway-length-m", 3000, 11000);
            drawn.length(random, "--runway-width-m", 75, 200);
            drawn.length(random, "--eye-to-wheel-m", 8, 30);
            drawn.length(random, "--other-end-elevation-m", 20, 900);
            Path metres = folder.resolve("metres-" + i + ".slopewright");
            Path feet = folder.resolve("feet-" + i + ".slopewright");
            drawn.metres.addAll(List.of("-o", metres.toString()));
            drawn.feet.addAll(List.of("-o", feet.toString()));
            Words said = Words.run(drawn.metres.toArray(String[]::new));
            assertEquals(0, said.code(), said.err());
            assertEquals(0, Words.run(drawn.feet.toArray(String[]::new)).code());
            assertTrue(Files.size(metres) > 1000);
            List<String> verdicts = verdicts(metres);
            assertTrue(verdicts.size() > 40, verdicts.toString());
            assertEquals(verdicts, verdicts(feet), drawn.feet.toString());
        }
    }
}
