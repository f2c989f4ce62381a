package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import com.fasterxml.jackson.databind.JsonNode;

import slopewright.evaluation.site.SiteTemplate;

/** A party's whole job on the command line, from nothing to a card. Every name and place is invented. */
class NewSiteWalkTest {
    private static final String DAY = "2026-11-01";
    private static final String SHEET = "equipment-type-1.dataSource=sheet of the unit in hand";

    private static final String DATED = "project-1.date=2026-11-03";

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

    private static String[] words(List<String> first, String... more) {
        List<String> all = new ArrayList<>(first);
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    private static List<String> begun(String template) {
        return List.of("new", "--template", template, "--name", "Alder field", "--latitude-deg", "47.30", "--longitude-deg", "-11.88",
                "--elevation-m", "86", "--author", "R. Tamsin", "--vertical-datum", "local mean sea level", "--survey-reach-m", "7000",
                "--survey-place-m", "5", "--survey-height-m", "2", "--survey-source", "looked round by the party", "--survey-date", DAY,
                "--variation-deg", "-2.4", "--variation-change-deg", "0.19", "--variation-source", "chart of the party (invented)",
                "--variation-date", DAY,
                "--date", DAY);
    }

    private static Set<String> open(Words check) {
        Set<String> found = new TreeSet<>();
        for (JsonNode outcome : check.json().get("projects").get(0).get("outcomes")) {
            boolean settled = List.of("met", "not-applicable").contains(outcome.get("verdict").asText());
            if (!settled) {
                found.add(outcome.get("rule").asText() + (outcome.get("toConfirm").asBoolean() ? " on a value to confirm" : ""));
            }
        }
        return found;
    }

    /** Signs every value that a verdict rests on and nobody confirmed, as a second person would after reading the documents. */
    private String confirmed(String project) throws IOException {
        Path book = folder.resolve("book.csv");
        run(0, "book", book.toString(), "--collect", project);
        Files.writeString(book, Files.readString(book).replaceAll("(?m)open,-,,,,,,,,$",
                "confirmed,-,,invented document,2,sheet 1,A. Ames,2026-11-02,B. Bole,2026-11-03"));
        run(0, "book", book.toString(), "--into", project, "-o", file("confirmed.slopewright"), "--force");
        return file("confirmed.slopewright");
    }

    /**
     * The oak stands due east, the wire from north-north-east to east-north-east: both are under the approach toward 250, which comes from
     * 070, and neither is under the one toward 300, which comes from 120. 60 kt are 60 x 101.2686 = 6076.1 ft/min over the ground, and 640
     * ft/min of them atan(0.105331) = 6.01 degrees.
     */
    @Test
    void fromNothingToACard() throws IOException {
        Words begun = run(0, words(begun("field-site"), "--bearing-deg", "250", "--ground-speed-kt", "60", "--descent-ftmin", "640", "-o",
                file("a.slopewright")));
        assertTrue(begun.out().contains("slope 6.01°"), begun.out());
        assertTrue(begun.out().contains("Assumed, to be replaced by what is measured"), begun.out());
        run(0, "sight", file("a.slopewright"), "--helipad", "helipad-1", "--name", "Oak", "--bearing-deg", "90", "--distance-m", "300",
                "--angle-deg", "4", "--crown-radius-m", "5", "--date", DAY, "-o", file("b.slopewright"));
        run(0, "sight", file("b.slopewright"), "--helipad", "helipad-1", "--name", "Power line", "--bearing-deg", "20", "--distance-m",
                "600", "--height-m", "30", "--to-bearing-deg", "60", "--to-distance-m", "500", "--to-height-m", "28", "--sag-m", "6",
                "--date", DAY, "-o", file("c.slopewright"));

        run(1, "card", file("c.slopewright"), "--aid", "approach-aid-1", "--date", DAY, "-o", file("no.html"));
        assertTrue(Files.readString(folder.resolve("no.html")).contains("NOT FOR USE"), "the wire is in the way, and much is not known");

        JsonNode directions = run(1, "directions", file("c.slopewright"), "--helipad", "helipad-1", "--wind", "300/10", "--date", DAY,
                "--json").json().get("directions");
        assertTrue(directions.get(250).get("clearFromDeg").isNull(), "the wire closes it");
        assertTrue(directions.get(300).get("clearFromDeg").asDouble() <= 6 && directions.get(300).get("clearToDeg").asDouble() >= 6);
        run(0, "take", file("c.slopewright"), "--aid", "approach-aid-1", "--bearing-deg", "300", "--slope-deg", "6", "-o",
                file("d.slopewright"));
        run(0, "enter", file("d.slopewright"), "light-unit-1.frangible=true", SHEET, "helipad-1.fatoLengthM=28", "helipad-1.fatoWidthM=28",
                DATED, "-o", file("e.slopewright"));
        assertEquals(Set.of("BOX-08 on a value to confirm", "DATA-65 on a value to confirm", "EQUIP-09 on a value to confirm",
                "EYE-04 on a value to confirm", "OBS-01 on a value to confirm", "RANGE-01 on a value to confirm", "REC-04",
                "SIG-02 on a value to confirm"), open(run(1, "check", file("e.slopewright"), "--json")));

        run(1, "card", file("e.slopewright"), "--aid", "approach-aid-1", "--date", DAY, "-o", file("still-not.html"));
        run(0, "read-back", confirmed(file("e.slopewright")), "--by", "B. Bole", "--date", "2026-11-03", "-o", file("f.slopewright"));
        run(0, "check", file("f.slopewright"));
        run(0, "directions", file("f.slopewright"), "--helipad", "helipad-1", "--date", "2026-11-04");
        run(0, "card", file("f.slopewright"), "--aid", "approach-aid-1", "--date", "2026-11-04", "-o", file("card.html"));
        String card = Files.readString(folder.resolve("card.html"));
        assertFalse(card.contains("NOT FOR USE"));
        assertTrue(card.contains("6.00°"), "the mark of the slope scale, in quarters of a degree");
        run(0, "card", file("f.slopewright"), "--aid", "approach-aid-1", "--date", "2026-11-04", "-o", file("card.pdf"), "--paper", "a5");
        run(0, "briefing", file("f.slopewright"), "--aid", "approach-aid-1", "--date", "2026-11-04", "-o", file("briefing.txt"));
        run(0, "pocket", file("f.slopewright"), "--aid", "approach-aid-1", "--date", "2026-11-04", "-o", file("pocket.pdf"));
    }

    /**
     * What a template assumes, filled in, leaves nothing that is not met, and nothing to clear up but the read-back and values of the rule
     * set that nobody read in a document. The sector units of the other two stay where they are and have no card: a card is of a portable
     * unit.
     */
    @ParameterizedTest
    @ValueSource(strings = {"hospital-pad", "field-site", "floating-deck"})
    void aTemplatePassesItsOwnRulesOnceItIsFilledIn(String template) throws IOException {
        run(0, words(begun(template), "--bearing-deg", "250", "--slope-deg", "6", "--coordinate-epoch-year", "2026.8", "-o",
                file("new.slopewright")));
        Set<String> asked = open(run(1, "check", file("new.slopewright"), "--json"));
        assertTrue(asked.containsAll(Set.of("DATA-56", "EQUIP-13", "REC-04")), asked.toString());
        run(0, "sight", file("new.slopewright"), "--helipad", "helipad-1", "--name", "Shed", "--bearing-deg", "180", "--distance-m", "400",
                "--height-m", "4", "--date", DAY, "-o", file("sighted.slopewright"));
        run(0, "enter", file("sighted.slopewright"), "light-unit-1.frangible=true", SHEET, DATED, "-o",
                file("filled.slopewright"));
        if (!"field-site".equals(template)) {
            measureLight(folder.resolve("filled.slopewright"));
        }
        Set<String> left = open(run(1, "check", file("filled.slopewright"), "--json"));
        assertTrue(left.stream().allMatch(rule -> rule.equals("REC-04") || rule.endsWith("on a value to confirm")), left.toString());
        run(0, "read-back", confirmed(file("filled.slopewright")), "--by", "B. Bole", "--date", "2026-11-03", "-o",
                file("done.slopewright"));
        run(0, "check", file("done.slopewright"));
        run("field-site".equals(template) ? 0 : 2, "card", file("done.slopewright"), "--aid", "approach-aid-1", "--date", "2026-11-04",
                "-o", file("card.html"));
    }

    /** Coordinates on WGS 84 belong to a day; a plane of its own does not move, and a day after that of the layout is none. */
    @Test
    void theEpochIsAskedForWhereTheGroundMoves() {
        List<String> meadow = List.of("new", "--name", "Meadow", "--date", DAY, "-o", file("m.slopewright"), "--force");
        List<String> place = Stream.concat(meadow.stream(), Stream.of("--latitude-deg", "47.3", "--longitude-deg", "-11.9")).toList();
        assertEquals("not-applicable", epoch(words(meadow)));
        assertEquals("to-clear-up", epoch(words(place)));
        assertEquals("met", epoch(words(place, "--coordinate-epoch-year", "2026.8")));
        assertEquals("not-met", epoch(words(place, "--coordinate-epoch-year", "2062.8")));
        run(2, words(place, "--coordinate-epoch-year", "1983"));
        run(2, words(place, "--coordinate-epoch-year", "20268"));
    }

    private String epoch(String... begin) {
        run(0, begin);
        JsonNode checked = Words.run("check", file("m.slopewright"), "--rules", "DATA-67", "--json").json();
        return checked.get("projects").get(0).get("outcomes").get(0).get("verdict").asText();
    }

    /**
     * A sector box on 6 degrees, whose red ends 4 degrees below the setting, 2 degrees above the horizon. Its light is printed down to 10
     * degrees below the setting; that it need not be there below the dark edge is common practice, and has to be confirmed.
     */
    @Test
    void aPortableSectorBoxThatEndsInTheDarkHasACard() throws IOException {
        run(0, words(begun("field-site"), "--kind", "sector-box", "--bearing-deg", "250", "--slope-deg", "6", "-o",
                file("new.slopewright")));
        run(0, "sight", file("new.slopewright"), "--helipad", "helipad-1", "--name", "Shed", "--bearing-deg", "180", "--distance-m", "400",
                "--height-m", "4", "--date", DAY, "-o", file("sighted.slopewright"));
        run(0, "enter", file("sighted.slopewright"), "light-unit-1.frangible=true", SHEET, DATED, "-o", file("filled.slopewright"));
        Path filled = folder.resolve("filled.slopewright");
        measureLight(filled);
        Files.writeString(filled, Files.readString(filled).replaceAll("<intensities [^>]*elevationDeg=\"-(6|8|10)\\.0\"[^>]*/>", "")
                .replaceAll("<measured [^>]*/>", ""));
        assertEquals(Set.of("BOX-03 on a value to confirm", "EYE-04 on a value to confirm", "LIGHT-01 on a value to confirm",
                "OBS-03 on a value to confirm", "REC-04"), open(run(1, "check", filled.toString(), "--json")));
        run(1, "card", filled.toString(), "--aid", "approach-aid-1", "--date", "2026-11-04", "-o", file("not.html"));
        run(0, "read-back", confirmed(filled.toString()), "--by", "B. Bole", "--date", "2026-11-03", "-o", file("done.slopewright"));
        run(0, "card", file("done.slopewright"), "--aid", "approach-aid-1", "--date", "2026-11-04", "-o", file("card.html"));
        assertFalse(Files.readString(folder.resolve("card.html")).contains("NOT FOR USE"));
    }

    /** Measured light, that of the sector box of a demonstration, and the angle that was measured while the deck moved. */
    private static void measureLight(Path file) throws IOException {
        String demo = Files.readString(Words.demo("every-family/every-family.slopewright"));
        String box = demo.substring(demo.indexOf("name=\"Heliport sector box\""));
        String light = box.substring(box.indexOf("<intensities"), box.indexOf("</equipmentTypes>"));
        Files.writeString(file, Files.readString(file).replace("</equipmentTypes>", light + "</equipmentTypes>")
                .replace("</units>", "<measured xmi:id=\"measured-unit-1\" settingDeg=\"6.0\" person=\"O. Penhale (invented)\" "
                        + "date=\"" + DAY + "\" instrument=\"theodolite (invented)\"/></units>"));
    }

    @Test
    void theDirectionsOfAPadShareOneUnitAndItsBattery() throws IOException {
        run(0, words(begun("field-site"), "--bearing-deg", "250,070", "--further-pad", "Upper pad=120,-40,88.5,250,300", "-o",
                file("pads.slopewright")));
        String text = Files.readString(folder.resolve("pads.slopewright"));
        assertTrue(text.contains("aids=\"approach-aid-1 approach-aid-2\"") && text.contains("aids=\"approach-aid-3 approach-aid-4\""),
                text);
        run(0, "check", file("pads.slopewright"), "--rules", "CIRC,DATA-44");
        for (String designator : List.of("H-250", "H-070", "H-300")) {
            assertTrue(text.contains("designator=\"" + designator + "\""), designator);
        }
        JsonNode outcome = run(1, "portable", file("pads.slopewright"), "--aid", "approach-aid-4", "--date", DAY, "--json").json();
        assertTrue(outcome.has("battery"), outcome.toString());
    }

    @Test
    void whatIsThereStaysAndWhatMakesNoSenseIsRefused() {
        run(0, words(begun("hospital-pad"), "-o", file("one.slopewright")));
        run(2, words(begun("hospital-pad"), "-o", file("one.slopewright")));
        run(0, words(begun("hospital-pad"), "-o", file("one.slopewright"), "--force"));
        run(2, words(begun("no-such"), "-o", file("two.slopewright")));
        run(2, words(begun("field-site"), "--bearing-deg", "400", "-o", file("two.slopewright")));
        run(2, words(begun("runway-visual"), "--bearing-deg", "90,270", "-o", file("two.slopewright")));
        run(2, words(begun("field-site"), "--further-pad", "Upper=1,2", "-o", file("two.slopewright")));
        run(2, "new", "--name", "Half a place", "--latitude-deg", "4", "-o", file("two.slopewright"));
        run(2, "enter", file("one.slopewright"), "helipad-1.fatoLengthM=2800", "-o", file("two.slopewright"));
        run(2, "enter", file("one.slopewright"), "helipad-1.colour=red", "-o", file("two.slopewright"));
        run(2, "enter", file("one.slopewright"), "helipad-9.fatoLengthM=28", "-o", file("two.slopewright"));
        assertFalse(Files.exists(folder.resolve("two.slopewright")));
    }

    /** A runway of 2400 m toward 094 begins as 09, and every template can be begun. */
    @Test
    void aRunwayAndEveryTemplateCanBeBegun() throws IOException {
        run(0, "new", "--name", "Long meadow", "--bearing-deg", "94", "--runway-length-m", "2400", "--code", "4", "-o",
                file("runway.slopewright"));
        assertTrue(Files.readString(folder.resolve("runway.slopewright")).contains("designator=\"09\""));
        for (SiteTemplate template : SiteTemplate.values()) {
            run(0, "new", "--template", template.key(), "--name", template.key(), "-o", file(template.key() + ".slopewright"));
        }
    }

    /** One step from a file and a code to a project; what is said of it is to clear up, and the licence stands in it. Invented places. */
    @Test
    void aRunwayEndOfOpenDataIsASiteInOneStep() throws IOException {
        Path data = folder.resolve("runways.csv");
        Files.writeString(data, "id,airport_ident,length_ft,width_ft,surface,closed,le_ident,le_latitude_deg,le_longitude_deg,"
                + "le_elevation_ft,le_heading_degT,le_displaced_threshold_ft,he_ident,he_latitude_deg,he_longitude_deg,he_elevation_ft,"
                + "he_heading_degT,he_displaced_threshold_ft\n1,ZZAL,3652,100,ASP,0,09,0,-11,100,90,,27,0,-10.99,120,270,\n"
                + "2,ZZAL,3652,100,ASP,1,18,0,-11,100,180,,36,-0.01,-11,,0,\n3,ZZAL,3652,100,ASP,0,05,1,-11,,47,,23,1.007,-10.993,,,\n");
        List<String> begin = List.of("new", "--runway-data", data.toString(), "--airport", "zzal", "-o", file("alder.slopewright"));
        assertTrue(run(2, words(begin, "--end", "09")).err().contains("no licence lies beside"));
        String[] all = words(begin, "--licence", "Licence of a case");
        String listed = run(2, all).err();
        assertTrue(listed.contains("09: to 90.0° true, 1113 m long, threshold at 30.5 m") && listed.contains("18: not taken, the data say "
                + "that the runway is closed"), listed);
        assertTrue(run(3, words(List.of(all), "--end", "18")).err().contains("closed"));
        assertTrue(run(2, words(List.of(all), "--end", "05")).err().contains("no elevation of 05; say it with --elevation-m"));
        assertFalse(Files.exists(folder.resolve("alder.slopewright")));
        Words made = run(0, words(List.of(all), "--end", "09", "--date", DAY));
        assertTrue(made.out().contains("licence: Licence of a case"), made.out());
        assertTrue(Files.readString(folder.resolve("alder.slopewright")).contains("openDataLicence=\"Licence of a case\""));
        Set<String> open = open(run(1, "check", file("alder.slopewright"), "--json"));
        assertTrue(open.containsAll(Set.of("DATA-64", "ROW-01 on a value to confirm", "SIG-01 on a value to confirm")), open.toString());
        assertTrue(run(0, "site", file("alder.slopewright"), "--end", "runway-end-1", "--family", "four-unit-row").out()
                .contains("open data that nobody confirmed"));
    }
}
