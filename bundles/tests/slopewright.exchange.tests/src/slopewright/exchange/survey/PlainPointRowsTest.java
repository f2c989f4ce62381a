package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.model.SurveyBlock;
import slopewright.siting.site.SurveyPoints;

/**
 * Plain tables of points are read in another way than all others; both must say the same. The other way is taken where a field is quoted,
 * which changes nothing of what a table says (RFC 4180, 2.5 and 2.7).
 */
class PlainPointRowsTest {

    private static final String HEADER = "id,latitudeDeg,longitudeDeg,topElevationM,horizontalAccuracyM,verticalAccuracyM";

    @TempDir
    private Path folder;

    private SurveyReading read(String text, OptionalDouble accuracyM) throws IOException, ExchangeException {
        SurveyOrigin origin = new SurveyOrigin("survey", Optional.empty(), Optional.empty(), accuracyM, accuracyM,
                SurveyHeights.AS_STATED);
        return SurveyReading.of(Demo.project(), Files.writeString(folder.resolve("points.csv"), text), origin, Optional.empty(),
                SurveyReading.Form.BLOCK);
    }

    /** The first name of the header in quotes: the same table. */
    private static String quoted(String text) {
        int end = text.indexOf(',');
        return '"' + text.substring(0, end) + '"' + text.substring(end);
    }

    private void same(String text, OptionalDouble accuracyM) throws IOException, ExchangeException {
        SurveyReading plain = read(text, accuracyM);
        SurveyReading other = read(quoted(text), accuracyM);
        assertEquals(other.refused(), plain.refused());
        assertEquals(other.notes(), plain.notes());
        assertEquals(other.count(), plain.count());
        assertEquals(other.ending(), plain.ending());
        assertEquals(other.points().isPresent(), plain.points().isPresent());
        if (plain.points().isPresent()) {
            SurveyPoints points = plain.points().get();
            assertArrayEquals(other.points().get().north(), points.north());
            assertArrayEquals(other.points().get().east(), points.east());
            assertArrayEquals(other.points().get().elevationM(), points.elevationM());
            assertEquals(other.points().get().ids(), points.ids());
            assertArrayEquals(other.blockBytes().get(), plain.blockBytes().get());
            SurveyBlock expected = (SurveyBlock) other.elements().get(0);
            SurveyBlock block = (SurveyBlock) plain.elements().get(0);
            assertEquals(expected.getHorizontalAccuracyM(), block.getHorizontalAccuracyM());
            assertEquals(expected.getVerticalAccuracyM(), block.getVerticalAccuracyM());
        }
    }

    @Test
    void theNumbersAreThoseOfTheTable() throws IOException, ExchangeException {
        SurveyReading reading = read(HEADER + "\nM1,47.25,-11.875,86.5,0.4,0.25\r\n\nH\u00f6he,47.3,-12,-3,,0.5", OptionalDouble.of(2));
        assertTrue(reading.refused().isEmpty(), reading.refused().toString());
        SurveyPoints points = reading.points().orElseThrow();
        assertArrayEquals(new double[] {47.25, 47.3}, points.north());
        assertArrayEquals(new double[] {-11.875, -12}, points.east());
        assertArrayEquals(new double[] {86.5, -3}, points.elevationM());
        assertEquals(List.of("M1", "H\u00f6he"), points.ids());
        SurveyBlock block = (SurveyBlock) reading.elements().get(0);
        assertEquals(2, block.getHorizontalAccuracyM());
        assertEquals(0.5, block.getVerticalAccuracyM());
    }

    /** Twelve thousand rows, so that more than one block of bytes is read; numbers of every length. */
    @Test
    void aLongTableSaysTheSameBothWays() throws IOException, ExchangeException {
        Random random = new Random(20261130);
        StringBuilder text = new StringBuilder(HEADER).append(",remark\n");
        for (int i = 0; i < 12_000; i++) {
            String form = "%." + random.nextInt(17) + "f";
            text.append(i % 7 == 0 ? "" : "P\u00e4" + i).append(",")
                    .append(String.format(Locale.ROOT, form, 47 + 0.4 * random.nextDouble()))
                    .append(',').append(String.format(Locale.ROOT, form, -12.1 + 0.4 * random.nextDouble())).append(',')
                    .append(String.format(Locale.ROOT, form, 60.01 + 200 * random.nextDouble())).append(',')
                    .append(i % 5 == 0 ? "" : random.nextInt(9)).append(',').append(random.nextInt(5)).append(",some words of a remark ")
                    .append("x".repeat(60)).append('\n');
        }
        assertTrue(text.length() > 1 << 20);
        same(text.toString(), OptionalDouble.of(1));
        same(text.toString(), OptionalDouble.empty());
    }

    /** Whatever is wrong, odd or not plain is said as ever, line by line. */
    @ParameterizedTest
    @ValueSource(strings = {"M,47.3,-11.9,NaN,1,1", "M,91,-11.9,80,1,1", "M,47.3,-191.9,80,1,1", "M,-11.9,47.3,80,1,1",
        "M,47.3,-11.9,0,1,1", "M,47.3,-11.9,,1,1", "M,47.3,-11.9,9500,1,1", "M,47.3,-11.9,80,-1,1", "M,47.3,-11.9,80,1",
        "M,47.3,-11.9,80,1,1,1", "  ", "M",
        " M ,47.3,-11.9,80,1,1", "\u2003M,47.3,-11.9,80,1,1", "M\u0085,47.3,-11.9,80,1,1", "M\t,47.3,-11.9,80,1,1",
        "M\r,47.3,-11.9,80,1,1",
        "M, 47.3 ,-11.9, 80 , ,1", "M,4.73e1,-1.19E+1,+80,1,1", "\"M, the mast\",47.3,-11.9,80,1,1", "M,47.3,-11.9,80,\"1\",1",
        "M,47.3,-11.9,80,1,1\"", "M,0x47,-11.9,80,1,1", "M,47.3,-11.9,80d,1,1", "M,1e400,-11.9,80,1,1", "\u0000,47.3,-11.9,80,1,1"})
    void whatIsNotPlainIsSaidAsEver(String row) throws IOException, ExchangeException {
        same(HEADER + "\nA,47.31,-11.91,90,1,1\n" + row + "\nZ,47.32,-11.92,95,1,1\n", OptionalDouble.of(1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"id,latitudeDeg,longitudeDeg,elevationM", "name,latitudeDeg,longitudeDeg,topElevationM",
        "id,latitudeDeg,longitudeDeg,topElevationM,elevationM", "id,latitudeDeg,longitudeDeg,heightM",
        "id,latitudeDeg,longitudeDeg,other",
        "id,latitudeDeg,longitudeDeg,topElevationM,topElevationM", "id,latitudeDeg,longitudeDeg,topElevationM,",
        "id,latitudeDeg,longitudeDeg,topElevationM,name", "id,eastM,northM,topElevationM",
        "id,latitudeDeg,longitudeDeg,topElevationM,shape", "id,latitudeDeg,longitudeDeg,topElevationM,date",
        "other,latitudeDeg,longitudeDeg,topElevationM"})
    void everyHeaderMeansWhatItMeant(String header) throws IOException, ExchangeException {
        List<String> rows = new ArrayList<>(List.of(header));
        for (int i = 1; i <= 3; i++) {
            rows.add("A" + i + ",47.3" + i + ",-11.9" + i + ",8" + i + ",9".repeat(header.split(",", -1).length - 4));
        }
        same(String.join("\n", rows), OptionalDouble.of(1));
    }

    /** A file that is no text in UTF-8 is refused, wherever the letter stands. */
    @Test
    void anotherEncodingIsRefused() throws IOException, ExchangeException {
        byte[] text = (HEADER + ",remark\nM,47.3,-11.9,80,1,1,h\u00f6he\n").getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
        SurveyOrigin origin = new SurveyOrigin("survey", Optional.empty(), Optional.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), SurveyHeights.AS_STATED);
        SurveyReading reading = SurveyReading.of(Demo.project(), Files.write(folder.resolve("latin.csv"), text), origin, Optional.empty(),
                SurveyReading.Form.BLOCK);
        assertTrue(reading.ending().orElseThrow().english().contains("is not written in UTF-8"), reading.ending().toString());
        assertEquals(0, reading.count());
    }
}
