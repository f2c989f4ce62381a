package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.model.SurveyBlock;
import slopewright.siting.site.SurveyPoints;

/**
 * Clouds of points. The files are laid out here after ASPRS, LAS 1.4 R15, tables 3 to 14, with numbers as places in bytes.
 */
class LasSurveyTest {

    private static final String DATUM = "Harrow Vale local mean sea level (invented)";
    private static final String GRID = "EPSG:32629";
    /** Class, east, north and elevation of each point; the last one is withheld. */
    private static final double[][] POINTS = {{6, 279000.25, 5242900.5, 117.25}, {2, 279010, 5242910, 101.5}, {5, 279020, 5242920, 112.125},
        {18, 279030, 5242930, 480}, {1, 279040, 5242940, 103.75}, {4, 279050, 5242950, 109}};
    private static final int WITHHELD = 5;
    private static final double STEP_M = 0.125;
    private static final int TRIED = 7;

    @TempDir
    private Path folder;

    private static SurveyOrigin origin(Optional<String> grid, PointClasses classes) {
        return new SurveyOrigin("flight 12", Optional.of("2026-05-20"), grid, OptionalDouble.of(0.5), OptionalDouble.of(0.25),
                SurveyHeights.AS_STATED, Optional.of(DATUM), classes);
    }

    /** Lays out a file of points of format 1 (LAS 1.2) or 6 (LAS 1.4). */
    private static ByteBuffer las(int minor, int format, byte[] record) {
        int head = minor == 4 ? 375 : 227;
        int length = format == 6 ? 30 : 28;
        int begin = head + record.length;
        ByteBuffer out = ByteBuffer.allocate(begin + length * POINTS.length).order(ByteOrder.LITTLE_ENDIAN);
        out.put("LASF".getBytes(StandardCharsets.US_ASCII)).putShort(6, (short) (minor == 4 ? 16 : 0));
        out.put(24, (byte) 1).put(25, (byte) minor).putShort(94, (short) head).putInt(96, begin).putInt(100, record.length == 0 ? 0 : 1);
        out.put(104, (byte) format).putShort(105, (short) length).putInt(107, minor == 4 ? 0 : POINTS.length);
        double[] offset = {279000, 5242000, 0};
        for (int axis = 0; axis < 3; axis++) {
            out.putDouble(131 + 8 * axis, STEP_M).putDouble(155 + 8 * axis, offset[axis]);
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (double[] point : POINTS) {
                least = Math.min(least, point[axis + 1]);
                most = Math.max(most, point[axis + 1]);
            }
            out.putDouble(179 + 16 * axis, most).putDouble(187 + 16 * axis, least);
        }
        if (minor == 4) {
            out.putLong(247, POINTS.length);
        }
        out.put(head, record);
        for (int i = 0; i < POINTS.length; i++) {
            int at = begin + length * i;
            for (int axis = 0; axis < 3; axis++) {
                out.putInt(at + 4 * axis, (int) Math.round((POINTS[i][axis + 1] - offset[axis]) / STEP_M));
            }
            int kind = (int) POINTS[i][0];
            boolean withheld = i == WITHHELD;
            out.put(at + 14, (byte) (format == 6 ? 0x11 : 0x09));
            out.put(at + 15, (byte) (format == 6 ? withheld ? 4 : 0 : kind | (withheld ? 0x80 : 0)));
            if (format == 6) {
                out.put(at + 16, (byte) kind);
            }
        }
        return out;
    }

    private static byte[] record(int kind, byte[] said) {
        ByteBuffer out = ByteBuffer.allocate(54 + said.length).order(ByteOrder.LITTLE_ENDIAN);
        out.position(2).put("LASF_Projection".getBytes(StandardCharsets.US_ASCII));
        out.putShort(18, (short) kind).putShort(20, (short) said.length).put(54, said);
        return out.array();
    }

    /** GeoTIFF keys: a projected model, its grid, its unit (9001 metre, 9003 US survey foot). */
    private static byte[] keys(int grid, int unit) {
        ByteBuffer out = ByteBuffer.allocate(32).order(ByteOrder.LITTLE_ENDIAN);
        for (int each : new int[] {1, 1, 0, 3, 1024, 0, 1, 1, 3072, 0, 1, grid, 3076, 0, 1, unit}) {
            out.putShort((short) each);
        }
        return record(34735, out.array());
    }

    private static byte[] text(String wkt) {
        return record(2112, (wkt + "\0").getBytes(StandardCharsets.UTF_8));
    }

    private static final String UTM = "COMPD_CS[\"both\",PROJCS[\"WGS 84 / UTM zone 29N\",GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID["
            + "\"WGS 84\",6378137,298.257223563]],UNIT[\"degree\",0.0174532925199433],AUTHORITY[\"EPSG\",\"4326\"]],UNIT[\"metre\",1],"
            + "AUTHORITY[\"EPSG\",\"32629\"]],VERT_CS[\"mean sea\",VERT_DATUM[\"mean sea\",2005],UNIT[\"metre\",1]]]";

    private Path write(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private SurveyReading read(Path file, Optional<String> grid, PointClasses classes) throws ExchangeException {
        SurveyReading reading = SurveyReading.of(Demo.project(), file, origin(grid, classes), Optional.empty(),
                SurveyReading.Form.OBSTACLES);
        reading.refuseFaults(false);
        return reading;
    }

    private String fault(Path file) {
        return assertThrows(ExchangeException.class, () -> read(file, Optional.of(GRID), PointClasses.STANDING)).getMessage();
    }

    private void holdsWhatStands(SurveyReading reading) {
        SurveyPoints points = reading.points().orElseThrow();
        assertEquals(3, points.count());
        assertEquals(117.25, points.elevationM()[0], 1e-9);
        assertEquals(112.125, points.elevationM()[1], 1e-9);
        assertEquals(103.75, points.elevationM()[2], 1e-9);
        assertTrue(Surveys.english(reading.notes()).contains("1 point of the class 2 left out"), reading.notes().toString());
        assertTrue(Surveys.english(reading.notes()).contains("1 point of the class 18 left out"), reading.notes().toString());
        assertTrue(Surveys.english(reading.notes()).contains("1 points that are withheld skipped"), reading.notes().toString());
        SurveyBlock block = (SurveyBlock) reading.elements().get(0);
        assertEquals("flight 12 (without points of the classes 2, 18)", block.getSource());
        assertEquals("obstacles", block.getKind());
        assertEquals("2026-05-20", block.getDate());
        assertEquals(0.5, block.getHorizontalAccuracyM());
        assertEquals(0.25, block.getVerticalAccuracyM());
    }

    @ParameterizedTest
    @CsvSource({"0,1", "1,1", "2,1", "3,1", "4,6"})
    void whatStandsIsTakenOfEveryVersion(int minor, int format) throws Exception {
        ByteBuffer las = las(minor == 3 ? 2 : minor, format, keys(32629, 9001));
        if (minor == 3) {
            // 1.3 has eight bytes more in its header, for where waves begin
            ByteBuffer longer = ByteBuffer.allocate(las.capacity() + 8).order(ByteOrder.LITTLE_ENDIAN);
            longer.put(0, las.array(), 0, 227).put(235, las.array(), 227, las.capacity() - 227);
            las = longer.put(25, (byte) 3).putShort(94, (short) 235).putInt(96, longer.getInt(96) + 8);
        }
        holdsWhatStands(read(write("cloud.las", las.array()), Optional.of(GRID), PointClasses.STANDING));
    }

    @Test
    void aPackedCloudIsRefusedWithTheWayToUnpackIt() throws Exception {
        ByteBuffer las = las(4, 6, text(UTM)).put(104, (byte) (6 | 0x80));
        assertTrue(fault(write("cloud.laz", las.array())).contains("pdal translate cloud.laz cloud.las"));
        assertTrue(fault(write("cloud.las", las.array())).contains("laszip -i cloud.laz -o cloud.las"));
    }

    @Test
    void classesAreChosen() throws Exception {
        Path las = write("cloud.las", las(4, 6, text(UTM)).array());
        SurveyPoints ground = read(las, Optional.of(GRID), PointClasses.parse("2")).points().orElseThrow();
        assertEquals(1, ground.count());
        assertEquals(101.5, ground.elevationM()[0], 1e-9);
        assertEquals(5, read(las, Optional.of(GRID), PointClasses.parse("0-5, 6,18")).points().orElseThrow().count());
        for (String wrong : new String[] {"", "a", "6-2", "256", "1,,2", "-3"}) {
            assertThrows(IllegalArgumentException.class, () -> PointClasses.parse(wrong), wrong);
        }
    }

    @Test
    void aCloudWithoutWhatStandsSaysWhatItHolds() throws Exception {
        ByteBuffer las = las(2, 1, keys(32629, 9001));
        for (int i = 0; i < POINTS.length; i++) {
            las.put(las.getInt(96) + 28 * i + 15, (byte) 2);
        }
        assertTrue(fault(write("ground.las", las.array())).contains("6 points of the class 2 left out"));
    }

    @Test
    void whatTheFileSaysOfItsGridIsNotOverruledAndNothingIsGuessed() throws Exception {
        Path las = write("cloud.las", las(4, 6, text(UTM.replace("\"32629\"", "\"32630\""))).array());
        assertTrue(fault(las).contains("says that it is in EPSG:32630, but is taken to be in EPSG:32629"), fault(las));
        Path silent = write("silent.las", las(2, 1, new byte[0]).array());
        assertEquals(3, read(silent, Optional.of(GRID), PointClasses.STANDING).points().orElseThrow().count());
        String said = assertThrows(ExchangeException.class, () -> read(silent, Optional.empty(), PointClasses.STANDING)).getMessage();
        assertTrue(said.contains("does not say in which coordinate reference its metres are"), said);
    }

    @Test
    void feetAndOtherDatumsAreRefused() throws Exception {
        assertTrue(fault(write("feet.las", las(2, 1, keys(32629, 9003)).array())).contains("EPSG:9003"));
        String feet = UTM.replace("2005],UNIT[\"metre\",1]", "2005],UNIT[\"US survey foot\",0.304800609601219]");
        assertTrue(fault(write("mixed.las", las(4, 6, text(feet)).array())).contains("0.304800609601219"));
        String other = "GEOGCS[\"ED50\",DATUM[\"x\",SPHEROID[\"y\",6378388,297]],UNIT[\"degree\",0.0174532925199433]]";
        assertTrue(fault(write("other.las", las(4, 6, text(other)).array())).contains("neither longitude and latitude on WGS 84"));
    }

    @Test
    void nothingOfACloudIsAssumed() throws Exception {
        Path las = write("cloud.las", las(2, 1, keys(32629, 9001)).array());
        SurveyOrigin bare = new SurveyOrigin("flight", Optional.empty(), Optional.of(GRID), OptionalDouble.empty(), OptionalDouble.empty(),
                SurveyHeights.AS_STATED);
        SurveyReading reading = SurveyReading.of(Demo.project(), las, bare, Optional.empty(), SurveyReading.Form.OBSTACLES);
        String said = assertThrows(ExchangeException.class, () -> reading.refuseFaults(true)).getMessage();
        assertTrue(said.contains("--horizontal-accuracy-m, --vertical-accuracy-m, --date and --vertical-datum"), said);
    }

    /** Place, number of bytes and value of what is made wrong in a header: lengths, counts, steps and boxes. */
    @ParameterizedTest
    @CsvSource({"24,1,2", "25,1,9", "94,2,100", "94,2,65535", "96,4,100", "96,4,-1", "100,4,-1", "100,4,40", "104,1,11", "104,1,64",
        "105,2,10", "107,4,-1", "107,4,7", "107,4,5", "107,4,0", "131,8,NaN", "131,8,0", "139,8,-1", "147,8,1e300", "155,8,NaN",
        "163,8,Infinity", "179,8,NaN", "187,8,280000"})
    void aHeaderThatDoesNotFitIsRefused(int at, int bytes, String value) throws Exception {
        ByteBuffer las = las(2, 1, keys(32629, 9001));
        switch (bytes) {
            case 1 -> las.put(at, Byte.parseByte(value));
            case 2 -> las.putShort(at, (short) Integer.parseInt(value));
            case 4 -> las.putInt(at, Integer.parseInt(value));
            default -> las.putDouble(at, Double.parseDouble(value));
        }
        assertTrue(!fault(write("wrong.las", las.array())).isBlank());
    }

    @Test
    void moreThanFourThousandMillionPointsInAFewBytesAreRefused() throws Exception {
        ByteBuffer las = las(4, 6, text(UTM)).putLong(247, Long.MAX_VALUE);
        assertTrue(fault(write("huge.las", las.array())).contains("for which it has no room"));
        assertTrue(fault(write("below.las", las.putLong(247, -1).array())).contains("18446744073709551615 points"));
    }

    @Test
    void aPointOutsideOfTheBoxIsRefusedAloneAndNamed() throws Exception {
        ByteBuffer las = las(2, 1, keys(32629, 9001));
        las.putInt(las.getInt(96) + 2 * 28 + 8, Integer.MIN_VALUE);
        Path file = write("stray.las", las.array());
        SurveyReading reading = SurveyReading.of(Demo.project(), file, origin(Optional.of(GRID), PointClasses.STANDING), Optional.empty(),
                SurveyReading.Form.OBSTACLES);
        reading.refuseFaults(true);
        assertEquals(2, reading.count());
        assertEquals(1, reading.refusedCount());
        assertTrue(reading.refused().get(0).english().contains(":3: lies outside of the box"), reading.refused().get(0).english());
    }

    @Test
    void aCloudCutAnywhereIsRefusedAndOneChangedAnywhereReadOrRefused() throws Exception {
        byte[] whole = las(4, 6, text(UTM)).array();
        for (int i = 0; i < whole.length; i += TRIED) {
            byte[] cut = new byte[i];
            System.arraycopy(whole, 0, cut, 0, i);
            fault(write("cut.las", cut));
            byte[] changed = whole.clone();
            changed[i] ^= (byte) 0xFF;
            readOrRefuse(write("changed.las", changed));
        }
    }

    private void readOrRefuse(Path file) {
        try {
            read(file, Optional.of(GRID), PointClasses.STANDING);
        } catch (ExchangeException e) {
            assertTrue(!e.getMessage().isBlank());
        }
    }
}
