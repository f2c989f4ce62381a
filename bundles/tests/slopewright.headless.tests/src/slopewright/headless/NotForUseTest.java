package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever must keep a portable unit from use does so at both doors: {@code card} is not for use, has no step to follow and says why first,
 * {@code portable} is not ready, and both exit 1. Each case spoils one thing of a demo against which nothing stands.
 */
class NotForUseTest {
    private static final String AID = "approach-aid-4";
    private static final String DAY = "2026-06-01";

    @TempDir
    private Path folder;

    /** One thing that is wrong, and a part of the reason that is given for it. */
    private record Spoilt(String what, UnaryOperator<String> change, String reason) {
        @Override
        public String toString() {
            return what;
        }
    }

    private static Spoilt set(String what, String from, String to, String reason) {
        return new Spoilt(what, text -> text.replace(from, to), reason);
    }

    private static String without(String text, String element) {
        return text.replaceAll("(?s)<" + element + " [^>]*/>|<" + element + " .*?</" + element + ">", "");
    }

    static Stream<Spoilt> spoilt() {
        return Stream.of(
                new Spoilt("no obstacles entered", text -> without(without(without(text, "obstacles"), "obstacleSurveys"), "surveyBlocks"),
                        "No obstacle is entered"),
                set("the unit inside the FATO, 24 m long", "alongM=\"26.722\"", "alongM=\"5.0\"", "FIELD-01"),
                set("the unit in the safety area, 18 m from the middle", "alongM=\"26.722\"", "alongM=\"17.0\"", "FIELD-01"),
                set("13 degrees on a unit of 1 to 12", "settingDeg=\"7.04\"", "settingDeg=\"13.0\"", "UNIT-03"),
                new Spoilt("no dark edge", text -> text.replaceAll("<(sectors|transitions) [^>]*offsetDeg=\"-4.0\"[^>]*/>", ""),
                        "the lower edge of the red sector could not be drawn"),
                set("set 4.04 degrees off the planned descent", "settingDeg=\"7.04\"", "settingDeg=\"3.0\"", "FIELD-04"),
                new Spoilt("the lower edge of the red below the horizon", text -> text.replace("offsetDeg=\"-4.0\"", "offsetDeg=\"-7.5\""),
                        "is below the horizon"),
                new Spoilt("a tilt of 30 minutes beside a margin as set of some decimetres", text -> shed(text).replace(
                        "bubbleAccuracyMinutes=", "tiltCutOffDeg=\"0.5\" bubbleAccuracyMinutes="), "when the unit is"),
                set("the unit 10 m before the hover point", "alongM=\"26.722\"", "alongM=\"-10.0\"", "FIELD-02"),
                set("the unit 200 m past the hover point", "alongM=\"26.722\"", "alongM=\"200.0\"", "EYE-04"),
                set("air speed, wind and ground speed contradict each other", "groundSpeedKt=\"80.0\"",
                        "groundSpeedKt=\"80.0\" airSpeedKt=\"80.0\" windKt=\"20.0\"", "FIELD-03"),
                set("the eye outside the beam of 8 degrees to each side", "portable=\"true\"", "portable=\"true\" axisTurnDeg=\"14.0\"",
                        "FIELD-05"),
                set("the bubble is not described", "bubbleAccuracyMinutes=\"5.0\"", "", "EQUIP-14"),
                set("no mark near the setting", "slopeScaleStepDeg=\"0.25\"", "slopeScaleStepDeg=\"0.4\"", "cannot be set to"),
                set("nobody says that it is portable", " portable=\"true\"", "", "not marked as portable"),
                new Spoilt("a deck of unknown motion", NotForUseTest::afloat, "FIELD-06"),
                set("motion of a deck that is said not to float", "floating=\"false\"",
                        "floating=\"false\" deckPitchDeg=\"0.1\" deckRollDeg=\"0.1\" deckHeadingDeg=\"1.0\"", "FIELD-06"),
                set("motion of a deck, and nobody says that it floats", "floating=\"false\"",
                        "deckPitchDeg=\"0.1\" deckRollDeg=\"0.1\" deckHeadingDeg=\"1.0\"", "FIELD-06"),
                set("sectors of another unit", "<sectors xmi:id=\"transition-15\" offsetDeg=\"-0.5\"",
                        "<sectors xmi:id=\"transition-15\" offsetDeg=\"-0.4\"", "The sectors of the unit in the layout"),
                set("a battery whose supply does not fit", "minVoltageV=\"22.0\"", "minVoltageV=\"23.5\"", "BOX-08"));
    }

    /** The shed 5.5 m higher: 6.99 - 5.5 = 1.49 m clear as the unit is set. */
    private static String shed(String text) {
        return text.replace("topElevationM=\"91.6\"", "topElevationM=\"97.1\"").replace("elevationM=\"91.6\"", "elevationM=\"97.1\"");
    }

    private static String afloat(String text) {
        int pad = text.indexOf("<helipads ");
        return text.substring(0, pad) + text.substring(pad).replaceFirst("floating=\"false\"", "floating=\"true\"");
    }

    private String project(UnaryOperator<String> change) throws IOException {
        Path demo = Words.demo("harrow-vale/harrow-vale.slopewright");
        try (Stream<Path> files = Files.walk(demo.getParent())) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(demo.getParent().relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        Path copy = folder.resolve(demo.getFileName().toString());
        String before = Files.readString(copy);
        Files.writeString(copy, change.apply(before));
        return copy.toString();
    }

    private Words card(String project, Path file) {
        return Words.run("card", project, "--aid", AID, "--date", DAY, "-o", file.toString());
    }

    private static List<String> blockers(Words words) {
        return StreamSupport.stream(words.json().get("blockers").spliterator(), false).map(JsonNode::asText).toList();
    }

    @Test
    void nothingStandsAgainstTheDemo() throws IOException {
        String project = project(UnaryOperator.identity());
        Words set = Words.run("portable", project, "--aid", AID, "--date", DAY, "--json");
        assertEquals(List.of(), blockers(set));
        assertEquals(0, set.code(), set.err());
        Path file = folder.resolve("card.html");
        assertEquals(0, card(project, file).code());
        String text = Files.readString(file);
        assertFalse(text.contains("NOT FOR USE"));
        assertTrue(text.contains("class=\"tick\""), "steps to follow");
    }

    @ParameterizedTest
    @MethodSource("spoilt")
    void aCardIsNotForUse(Spoilt spoilt) throws IOException {
        String project = project(spoilt.change());
        assertNotEquals(Files.readString(Words.demo("harrow-vale/harrow-vale.slopewright")), Files.readString(Path.of(project)),
                "something is spoilt");
        Words set = Words.run("portable", project, "--aid", AID, "--date", DAY, "--json");
        assertEquals(1, set.code(), set.err());
        assertFalse(set.json().get("ready").asBoolean());
        assertTrue(blockers(set).stream().anyMatch(reason -> reason.contains(spoilt.reason())), blockers(set).toString());
        Path file = folder.resolve("card.html");
        assertEquals(1, card(project, file).code());
        String body = Files.readString(file).replaceAll("(?s)^.*<body", "<body");
        assertTrue(body.contains("NOT FOR USE"));
        assertFalse(body.contains("class=\"tick\""), "no step to follow");
        assertTrue(body.indexOf("NOT FOR USE") < body.indexOf("<h1") && body.indexOf(spoilt.reason()) < body.indexOf("<h1"), "first");
        Words text = Words.run("portable", project, "--aid", AID, "--date", DAY);
        assertEquals(1, text.code());
        assertTrue(text.out().lines().anyMatch(line -> line.startsWith("Not for use: ") && line.contains(spoilt.reason())), text.out());
    }

    /** PAPI 27 of the faulty demo looks through Cold Barrow hill, and no top of Windle mast before PAPI 09 is known: see its findings. */
    @ParameterizedTest
    @CsvSource({"approach-aid-2,Cold Barrow hill", "approach-aid-1,Windle mast"})
    void theBriefingOfAFixedIndicatorIsNotForUse(String aid, String obstacle) throws IOException {
        Path file = folder.resolve("briefing.txt");
        Words words = Words.run("briefing", Words.demo("harrow-vale-faults/harrow-vale-faults.slopewright").toString(), "--aid", aid,
                "--date", DAY, "-o", file.toString());
        assertEquals(1, words.code(), words.err());
        String text = Files.readString(file);
        assertTrue(text.startsWith("NOT FOR USE\n- "), text);
        assertTrue(text.lines().anyMatch(line -> line.startsWith("- ") && line.contains("OBS-01") && line.contains(obstacle)), text);
        assertTrue(text.contains("Not compared: the top elevation of obstacle Windle mast is missing."), text);
        assertFalse(text.contains("| -"), "what stands above the surface is not below it by a negative height");
    }

    @ParameterizedTest
    @CsvSource({"harrow-vale,approach-aid-4", "every-family,approach-aid-1", "every-family,approach-aid-2", "every-family,approach-aid-11"})
    void nothingStandsAgainstTheBriefingsOfTheDemos(String demo, String aid) throws IOException {
        Path file = folder.resolve("briefing.txt");
        Words words = Words.run("briefing", Words.demo(demo + "/" + demo + ".slopewright").toString(), "--aid", aid, "--date", DAY, "-o",
                file.toString());
        assertEquals(0, words.code(), words.err());
        assertFalse(Files.readString(file).contains("NOT FOR USE"));
    }

    /** It is being set up: nobody has measured an angle of it, and nobody has flown it. */
    @ParameterizedTest
    @ValueSource(strings = {"approach-aid-1", "approach-aid-2", "approach-aid-3"})
    void aFixedIndicatorThatIsNotInUseYetIsNotForUse(String aid) throws IOException {
        Path file = folder.resolve("briefing.txt");
        assertEquals(1, Words.run("briefing", Words.demo("harrow-vale/harrow-vale.slopewright").toString(), "--aid", aid, "--date", DAY,
                "-o", file.toString()).code());
        assertTrue(Files.readString(file).startsWith("NOT FOR USE\n- The project stands at the stage of set-up"), Files.readString(file));
    }

    /** The same shed beside a bubble alone leaves 0.72 m with the unit off by 12.4 minutes: the tilt is what blocks, not the shed. */
    @Test
    void theShedAloneDoesNotBlock() throws IOException {
        Words set = Words.run("portable", project(NotForUseTest::shed), "--aid", AID, "--date", DAY, "--json");
        assertTrue(blockers(set).stream().noneMatch(reason -> reason.contains("when the unit is")), blockers(set).toString());
        assertTrue(set.json().get("sightClear").asBoolean());
    }
}
