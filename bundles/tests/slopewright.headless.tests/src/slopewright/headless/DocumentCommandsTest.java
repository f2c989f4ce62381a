package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import com.fasterxml.jackson.databind.JsonNode;

import slopewright.checks.Cure;
import slopewright.checks.RuleCatalogue;

/** Reports, commissioning sheets and set-up cards on the command line. */
class DocumentCommandsTest {

    private static final String DEMO = Words.demo("harrow-vale/harrow-vale.slopewright").toString();
    private static final String FAULTS = Words.demo("harrow-vale-faults/harrow-vale-faults.slopewright").toString();

    /** Rule and title, and behind them verdict with values and limits, or value and limit of the first with each margin. */
    private static final Pattern ROW = Pattern.compile("<td>([^<]*)</td>\\n<td>([^<]*)</td>\\n<td>([^<]*)</td>\\n");
    private static final Pattern NUMBER = Pattern.compile("(-?\\d+(\\.\\d+)?)(\\D*)");

    @TempDir
    private Path folder;

    private String text(Path html) throws IOException {
        return Files.readString(html).replaceAll("<style>(?s:.*?)</style>", "").replaceAll("<[^>]*>", " ").replace("&gt;", ">")
                .replace("&lt;", "<").replace("&quot;", "\"").replace("&amp;", "&").replaceAll("\\s+", " ");
    }

    /**
     * What a report prints is what the check counts: every finding with its value and limit, everything that is met with the least
     * margin of its indicator among those of its rule, the least first with value and limit, to the last digit. Of more than twelve that
     * are met the others are counted.
     */
    @Test
    void theNumbersOfAReportAreThoseOfTheCheck() throws IOException {
        for (String project : new String[] {DEMO, FAULTS}) {
            Path out = folder.resolve(project.hashCode() + ".html");
            assertEquals(0, Words.run("report", project, "-o", out.toString(), "--date", "2026-06-01").code());
            String html = Files.readString(out);
            JsonNode checked = Words.run("check", project, "--json").project();
            List<List<String>> rows = ROW.matcher(html).results().map(row -> List.of(row.group(1), row.group(2), row.group(3))).toList();
            int compared = 0;
            for (JsonNode outcome : checked.get("outcomes")) {
                if (isSaidTogether(outcome)) {
                    continue;
                }
                boolean isMet = "met".equals(outcome.get("verdict").asText());
                assertTrue(rows.stream().filter(row -> row.get(0).startsWith(outcome.get("rule").asText() + " "))
                        .anyMatch(row -> isMet ? saysMargin(row.get(2), leastOfAid(checked, outcome))
                                : saysValueAndLimit(row.get(1), outcome)),
                        outcome + " is not in the report");
                compared += outcome.path("value").isNumber() ? 1 : 0;
            }
            assertTrue(compared > 100, String.valueOf(compared));
            assertTrue(text(out).contains(" " + checked.get("counts").get("met").asInt() + " "), checked.get("counts").toString());
        }
    }

    private static boolean saysValueAndLimit(String cell, JsonNode outcome) {
        String[] judged = cell.split("\\. ", 2);
        if (judged.length < 2) {
            return !outcome.path("value").isNumber() && !outcome.path("limit").isNumber();
        }
        return Pattern.compile("(?:^|; )(\\S[^;]*); limit ([^;]*)").matcher(judged[1]).results()
                .anyMatch(pair -> says(pair.group(1), outcome, "value") && says(pair.group(2), outcome, "limit"));
    }

    /** What is met of several parts of an indicator, or for several aeroplanes, stands with the least of their margins. */
    private static JsonNode leastOfAid(JsonNode checked, JsonNode outcome) {
        String aid = aid(outcome);
        JsonNode least = outcome;
        for (JsonNode other : checked.get("outcomes")) {
            if (!aid.isEmpty() && other.get("rule").equals(outcome.get("rule")) && "met".equals(other.get("verdict").asText())
                    && aid.equals(aid(other)) && other.path("margin").isNumber()
                    && other.get("margin").asDouble() < least.path("margin").asDouble(Double.MAX_VALUE)) {
                least = other;
            }
        }
        return least;
    }

    /** Returns the path of an indicator, without that of its unit and change of colour. */
    private static String aid(JsonNode outcome) {
        Matcher found = Pattern.compile("((?:runway|.*approach) \\S+ > [^>]+?)(?: > .*)?").matcher(outcome.path("elementPath").asText());
        return found.matches() ? found.group(1) : "";
    }

    /** Each indicator, or what else was judged, stands with its margin behind its name. */
    private static boolean saysMargin(String cell, JsonNode outcome) {
        String[] elements = cell.substring(Math.max(0, cell.indexOf(": ") + 2)).split("; ");
        return !outcome.path("margin").isNumber() || elements[elements.length - 1].endsWith("more, none with less")
                || Stream.of(elements).anyMatch(element -> {
                    String unit = notation(outcome.path("unit").asText(""));
                    String number = element.endsWith(unit) ? element.substring(0, element.length() - unit.length()) : "";
                    return says(number.substring(number.lastIndexOf(' ') + 1) + unit, outcome, "margin");
                });
    }

    /** Sound entries and what a rule does not concern are counted together in the matrix. */
    private static boolean isSaidTogether(JsonNode outcome) {
        String verdict = outcome.get("verdict").asText();
        return "not-applicable".equals(verdict) || "met".equals(verdict)
                && RuleCatalogue.find(outcome.get("rule").asText()).filter(rule -> rule.isAboutData() || rule.cure() == Cure.ENTRY)
                .isPresent();
    }

    private static String notation(String unit) {
        return switch (unit) {
            case "" -> "";
            case "deg" -> "°";
            case "min" -> "'";
            default -> " " + unit;
        };
    }

    /** The number of a cell is that of the outcome to the last digit that it prints, and stands in its unit. */
    private static boolean says(String cell, JsonNode outcome, String name) {
        JsonNode number = outcome.path(name);
        if (!number.isNumber()) {
            return cell.isEmpty();
        }
        String unit = notation(outcome.path("unit").asText(""));
        Matcher printed = NUMBER.matcher(cell);
        return printed.matches() && printed.group(3).equals(unit)
                && Math.abs(Double.parseDouble(printed.group(1)) - number.asDouble())
                <= 0.5 * Math.pow(10, -Math.max(digits(unit), printed.group(2) == null ? 0 : printed.group(2).length() - 1))
                        + (unit.equals(" m") ? 0.001 : 1e-9);
    }

    /** A length shows every digit that it is rounded to, and one at its limit stands as it; of all else zeros at the end are left out. */
    private static int digits(String unit) {
        return switch (unit) {
            case " m" -> 0;
            case "'", " h", " kt", " W", " cd" -> 1;
            case " %", " V", " A" -> 2;
            default -> 3;
        };
    }

    /** The layout that the rule set gives, on the command line and in the calculation of the report. */
    @Test
    void theSitingOfAReportIsThatOfTheCommandLine() throws IOException {
        Path out = folder.resolve("a.html");
        assertEquals(0, Words.run("report", DEMO, "-o", out.toString(), "--date", "2026-06-01").code());
        JsonNode sited = Words.run("site", DEMO, "--family", "four-unit-row", "--end", "27", "--rule-set", "icao:5th", "--json").json();
        for (String name : new String[] {"distanceM", "eyeHeightOverThresholdM", "wheelClearanceM"}) {
            String expected = String.format(Locale.ROOT, "%.2f", sited.get(name).asDouble());
            assertTrue(text(out).contains(" " + expected + " "), name + " " + expected);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"pdf", "html"})
    void aCommissioningSheetIsWrittenInTheSameBytes(String ending) throws IOException {
        Path first = folder.resolve("first." + ending);
        Path second = folder.resolve("second." + ending);
        for (Path out : new Path[] {first, second}) {
            Words words = Words.run("commission", DEMO, "--aid", "PAPI 27", "-o", out.toString(), "--date", "2026-06-01");
            assertEquals(0, words.code(), words.err());
        }
        assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second));
        if ("html".equals(ending)) {
            assertTrue(text(first).contains("Commissioning sheet"));
            assertTrue(text(first).contains("No flight inspection was entered."));
        }
    }

    @Test
    void aCommissioningSheetOfAnUnknownAidIsRefused() {
        Path out = folder.resolve("a.pdf");
        Words words = Words.run("commission", DEMO, "--aid", "none", "-o", out.toString());
        assertEquals(2, words.code());
        assertTrue(words.err().contains("there is no approach aid 'none'"), words.err());
        assertFalse(Files.exists(out));
        assertEquals(2, Words.run("commission", DEMO, "--aid", "PAPI 27", "-o", folder.resolve("a.txt").toString()).code());
        assertEquals(2, Words.run("commission", DEMO, "--aid", "PAPI 27", "-o", out.toString(), "--date", "June").code());
    }

    @Test
    void aReportTakesItsPaperAndTemplate() throws IOException {
        Path template = Files.createDirectory(folder.resolve("own"));
        Files.writeString(template.resolve("cover.html"), "<div><p>Our own cover of {{project.name}}</p>{{cautions}}</div>");
        Path out = folder.resolve("a.html");
        Words words = Words.run("report", DEMO, "-o", out.toString(), "--template", template.toString(), "--paper", "letter");
        assertEquals(0, words.code(), words.err());
        assertTrue(text(out).contains("Our own cover of Harrow Vale"));
        assertTrue(new String(Files.readAllBytes(out), StandardCharsets.UTF_8).contains("size: letter"));
    }

    @Test
    void aFaultOfATemplateIsNamedWithFileAndLine() throws IOException {
        Path template = Files.createDirectory(folder.resolve("own"));
        Files.writeString(template.resolve("cover.html"), "<p>\n{{project.nome}}</p>");
        Path out = folder.resolve("a.pdf");
        Words words = Words.run("report", DEMO, "-o", out.toString(), "--template", template.toString());
        assertEquals(3, words.code());
        assertTrue(words.err().contains("template cover.html, line 2: there is no placeholder 'project.nome'"), words.err());
        assertFalse(Files.exists(out));
        assertEquals(3, Words.run("report", DEMO, "-o", out.toString(), "--template", folder.resolve("none").toString()).code());
    }
}
