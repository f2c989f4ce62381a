package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;

/** What a survey file would bring, before it does. */
class SurveyReadingTest {

    private static final SurveyOrigin ORIGIN = new SurveyOrigin("survey", Optional.empty(), Optional.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), SurveyHeights.AS_STATED);
    private static final int MANY = 100_000;

    @TempDir
    private Path folder;

    private Path file(String text, Charset encoding) throws IOException {
        return Files.write(folder.resolve("survey.csv"), text.getBytes(encoding));
    }

    private static SurveyReading read(Project project, Path file, SurveyReading.Form form) throws ExchangeException {
        return SurveyReading.of(project, file, ORIGIN, Optional.of(TablePreview.of(file).guess()), form);
    }

    private static List<Obstacle> obstacles(SurveyReading reading) {
        return reading.elements().stream().map(Obstacle.class::cast).toList();
    }

    /** 400 ft are 121.92 m, by the definition of the foot as 0.3048 m. */
    @Test
    void aTableOfSomebodyElseIsReadAsItsColumnsAreTaken() throws Exception {
        Path file = file("Nr;Bezeichnung;Breite;Länge;Oberkante;Farbe\nA1;Mühle;47,3011;-11,9218;400,0;rot\n",
                Charset.forName("windows-1252"));
        TablePreview preview = TablePreview.of(file);
        assertEquals(List.of("Nr", "Bezeichnung", "Breite", "Länge", "Oberkante", "Farbe"), preview.columns());
        assertEquals(List.of("A1", "Mühle", "47,3011", "-11,9218", "400,0", "rot"), preview.rows().get(0));
        TableForm guess = preview.guess();
        assertEquals(';', guess.separator());
        assertTrue(guess.decimalComma());
        assertEquals(Map.of("Nr", "id", "Bezeichnung", "name", "Breite", "latitudeDeg", "Länge", "longitudeDeg", "Oberkante",
                "topElevationM", "Farbe", ""), guess.columns());
        TableForm feet = new TableForm(guess.separator(), true, true, guess.encoding(), guess.columns());
        SurveyReading reading = SurveyReading.of(Demo.project(), file, ORIGIN, Optional.of(feet), SurveyReading.Form.OBSTACLES);
        Obstacle mill = obstacles(reading).get(0);
        assertEquals("Mühle", mill.getName());
        assertEquals(121.92, mill.getTopElevationM(), 1e-9);
        assertEquals(47.3011, mill.getPlaces().get(0).getLatitudeDeg());
        assertEquals(-11.9218, mill.getPlaces().get(0).getLongitudeDeg());
    }

    /** Read as 1025 m, or as 102.5 m: nobody may guess. */
    @Test
    void aPointAmongDecimalCommasIsRefused() throws Exception {
        Path file = file("id;latitudeDeg;longitudeDeg;topElevationM\nA;47,3011;-11,9218;102.5\nB;47,3012;-11,9218;102,5\n",
                StandardCharsets.UTF_8);
        TableForm comma = new TableForm(';', true, false, StandardCharsets.UTF_8, Map.of());
        SurveyReading reading = SurveyReading.of(Demo.project(), file, ORIGIN, Optional.of(comma), SurveyReading.Form.OBSTACLES);
        assertEquals(List.of("B"), obstacles(reading).stream().map(Obstacle::getId).toList());
        assertTrue(reading.refused().get(0).english().contains("'102.5 with a point' is not a number"), reading.refused().toString());
    }

    @Test
    void aBadRowIsNamedAndTheGoodOnesAreKept() throws Exception {
        Path file = file("id,latitudeDeg,longitudeDeg,topElevationM\nA,47.3011,-11.9218,100\nB,47.3012,no,100\nC,47.3013\n"
                + "D,10,20,100\nE,47.3014,-11.9218,101\n", StandardCharsets.UTF_8);
        Project project = Demo.project();
        byte[] before = ProjectFile.bytes(project);
        SurveyReading reading = read(project, file, SurveyReading.Form.OBSTACLES);
        assertEquals(List.of("A", "E"), obstacles(reading).stream().map(Obstacle::getId).toList());
        assertEquals(3, reading.refusedCount());
        assertTrue(reading.refused().get(0).english().contains("survey.csv:3: longitudeDeg: 'no' is not a number"),
                reading.refused().toString());
        assertTrue(reading.refused().get(1).english().contains(":4: the row has 2 fields"), reading.refused().toString());
        assertTrue(reading.refused().get(2).english().contains(":5:")
                && reading.refused().get(2).english().contains("km from the aerodrome"),
                reading.refused().toString());
        assertTrue(reading.ending().isEmpty());
        assertEquals(new String(before, StandardCharsets.UTF_8), new String(ProjectFile.bytes(project), StandardCharsets.UTF_8));
    }

    /** A power line without one of its masts would be another line, and clear what it is not clear of. */
    @Test
    void aLineIsRefusedWholeWhereOneOfItsRowsIs() throws Exception {
        String head = "id,shape,latitudeDeg,longitudeDeg,topElevationM\n";
        String bad = "L,line,47.3012,x,100\n";
        String first = "L,line,47.3011,-11.92,100\n";
        String last = "L,line,47.3013,-11.92,100\n";
        String next = "M,line,47.3021,-11.92,90\nM,line,47.3022,-11.92,90\n";
        for (String text : List.of(first + bad + last + next, bad + first + last + next, first + last + bad + next,
                first + "L,line,47.3012\n" + last + "P,point,47.302,-11.92,90\n" + next)) {
            SurveyReading reading = read(Demo.project(), file(head + text, StandardCharsets.UTF_8), SurveyReading.Form.OBSTACLES);
            assertFalse(obstacles(reading).stream().anyMatch(obstacle -> "L".equals(obstacle.getId())), text);
            assertTrue(reading.refused().stream().anyMatch(line ->
                    line.english().contains("faulty") || line.english().contains("left out")), text);
        }
    }

    @Test
    void veryManyPointsBecomeABlock() throws Exception {
        StringBuilder text = new StringBuilder("latitudeDeg,longitudeDeg,topElevationM\n");
        for (int i = 0; i < MANY; i++) {
            text.append(47.25 + i % 1000 * 1e-4).append(',').append(-11.95 + i / 1000 * 1e-3).append(",95.5\n");
        }
        text.append("47.3,-11.9,high\n");
        Path file = file(text.toString(), StandardCharsets.UTF_8);
        SurveyReading reading = read(Demo.project(), file, SurveyReading.Form.OBSTACLES);
        assertEquals(MANY, reading.count());
        SurveyBlock block = (SurveyBlock) reading.elements().get(0);
        assertEquals(MANY, block.getPointCount());
        assertEquals(1, reading.elements().size());
        assertTrue(reading.blockBytes().isPresent());
        assertEquals(1, reading.refusedCount());
    }

    @Test
    void aFileThatIsCutSaysThatItWasNotReadToItsEnd() throws Exception {
        Path whole = Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "survey", "obstacles.kml");
        String text = Files.readString(whole);
        Path cut = Files.writeString(folder.resolve("cut.kml"), text.substring(0, text.length() * 2 / 3));
        SurveyReading reading = SurveyReading.of(Demo.project(), cut, ORIGIN, Optional.empty(), SurveyReading.Form.OBSTACLES);
        assertTrue(reading.ending().isPresent());
        assertTrue(reading.refusedCount() > 0);
    }
}
