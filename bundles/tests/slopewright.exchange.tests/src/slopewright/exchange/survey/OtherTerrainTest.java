package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.zip.GZIPInputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.messages.Message;
import slopewright.model.Project;
import slopewright.siting.site.SurveyPoints;

/** Terrain in files that GDAL wrote, see the note beside them. */
class OtherTerrainTest {

    private static final Path OTHERS = Path.of(System.getProperty("slopewright.root"), "bundles", "tests",
            "slopewright.exchange.tests", "src", "others");
    private static final Path GRID = Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "survey",
            "terrain-utm29.asc");
    private static final String DATUM = "Harrow Vale local mean sea level (invented)";

    private static final int STEP = 3;

    private final Project project = Demo.project();

    @TempDir
    private Path folder;

    private static SurveyOrigin origin(Optional<String> grid) {
        return new SurveyOrigin("height model", Optional.of("2026-05-20"), grid, OptionalDouble.of(2), OptionalDouble.of(1.5),
                SurveyHeights.AS_STATED, Optional.of(DATUM));
    }

    private static SurveyReading read(Path file, String grid) throws ExchangeException {
        SurveyReading reading = SurveyReading.of(Demo.project(), file, origin(Optional.ofNullable(grid)), Optional.empty(),
                SurveyReading.Form.OBSTACLES);
        assertEquals("", reading.ending().map(Message::english).orElse(""));
        return reading;
    }

    private static String fault(Path file, String grid) {
        return assertThrows(ExchangeException.class, () -> Surveys.block(Demo.project(), file, origin(Optional.ofNullable(grid))))
                .getMessage();
    }

    @ParameterizedTest
    @ValueSource(strings = {"float-plain.tif", "float-deflate-tiled.tif", "int16-lzw.tif", "float-predictor3.tif", "int16-predictor2.tif",
        "float-bigtiff-predictor3.tif", "float64-lzw-predictor3.tif", "int16-bigendian-predictor2.tif", "int32-packbits.tif",
        "byte-bigtiff-predictor2.tif"})
    void aGeoTiffHoldsWhatTheGridHeldOfWhichItWasMade(String name) throws Exception {
        SurveyPoints grid = read(GRID, "EPSG:32629").points().orElseThrow();
        SurveyPoints found = read(OTHERS.resolve(name), "EPSG:32629").points().orElseThrow();
        assertEquals(30, found.count());
        assertArrayEquals(grid.north(), found.north(), 1e-11);
        assertArrayEquals(grid.east(), found.east(), 1e-11);
        // single precision holds them to 4e-6 m; whole metres are rounded
        assertArrayEquals(grid.elevationM(), found.elevationM(), name.startsWith("float") ? 4e-6 : 0.5);
    }

    @Test
    void whatAGeoTiffSaysOfItsGridIsNotOverruled() {
        String said = fault(OTHERS.resolve("float-plain.tif"), "EPSG:32630");
        assertTrue(said.contains("says that it is in EPSG:32629, but is taken to be in EPSG:32630"), said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"float-deflate-tiled.tif", "float-bigtiff-predictor3.tif", "int16-bigendian-predictor2.tif",
        "int32-packbits.tif"})
    void aGeoTiffCutOrChangedAnywhereIsReadOrRefused(String name) throws IOException {
        byte[] whole = Files.readAllBytes(OTHERS.resolve(name));
        for (int i = 0; i < whole.length; i += STEP) {
            readOrRefuse(Arrays.copyOf(whole, i));
            byte[] changed = whole.clone();
            changed[i] ^= (byte) 0xFF;
            readOrRefuse(changed);
        }
    }

    /** The bytes of a tile (325), its width (322) and its length (323), as the file says them, are no reason to make such room. */
    @ParameterizedTest
    @ValueSource(ints = {325, 322, 323})
    void noRoomIsMadeForWhatAGeoTiffOnlySays(int tag) throws IOException {
        ByteBuffer tiff = ByteBuffer.wrap(Files.readAllBytes(OTHERS.resolve("float-deflate-tiled.tif"))).order(ByteOrder.LITTLE_ENDIAN);
        int directory = tiff.getInt(4);
        for (int i = 0; i < tiff.getShort(directory); i++) {
            int entry = directory + 2 + 12 * i;
            if (tiff.getShort(entry) == tag) {
                tiff.putShort(entry + 2, (short) 4).putInt(entry + 8, 0x7FFF_FFF0);
            }
        }
        String said = fault(Files.write(folder.resolve("huge.tif"), tiff.array()), "EPSG:32629");
        assertTrue(said.contains("is no TIFF that can be read: a ") && said.contains("huge.tif"), said);
    }

    /** Numbers of 28 bits would lie across bytes. */
    @Test
    void elevationsOfAnOddNumberOfBitsAreRefused() throws IOException {
        ByteBuffer tiff = ByteBuffer.wrap(Files.readAllBytes(OTHERS.resolve("int16-lzw.tif"))).order(ByteOrder.LITTLE_ENDIAN);
        int bits = tiff.getInt(4) + 2 + 12 * 2;
        assertEquals(258, tiff.getShort(bits));
        tiff.putShort(bits + 8, (short) 28);
        String said = fault(Files.write(folder.resolve("odd.tif"), tiff.array()), "EPSG:32629");
        assertTrue(said.contains("elevations of 28 bits"), said);
    }

    private void readOrRefuse(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("broken.tif"), bytes);
        try {
            SurveyReading.of(project, file, origin(Optional.of("EPSG:32629")), Optional.empty(), SurveyReading.Form.BLOCK);
        } catch (ExchangeException e) {
            assertTrue(e.getMessage().contains("broken.tif"), e.getMessage());
        }
    }

    /** The heights were interpolated by GDAL between the corners: 100 + 100 (longitude + 12) + 200 (48 - latitude), in whole metres. */
    @Test
    void aTileOfTheShuttleMissionLiesWhereItsNameSays() throws Exception {
        Path tile = folder.resolve("N47W012.hgt");
        try (InputStream packed = new GZIPInputStream(Files.newInputStream(OTHERS.resolve("N47W012.hgt.gz")))) {
            Files.copy(packed, tile);
        }
        SurveyReading reading = read(tile, null);
        SurveyPoints points = reading.points().orElseThrow();
        assertTrue(points.count() > 1_000_000, "cells within 100 km of the aerodrome");
        assertTrue(points.count() < 1201 * 1201, "cells farther away are left out");
        assertTrue(reading.notes().toString().contains("too far from the aerodrome"), reading.notes().toString());
        for (int i = 0; i < points.count(); i += 997) {
            double expected = 100 + 100 * (points.east()[i] + 12) + 200 * (48 - points.north()[i]);
            assertEquals(expected, points.elevationM()[i], 0.51);
            assertEquals(Math.rint(points.north()[i] * 1200), points.north()[i] * 1200, 1e-6, "places lie on multiples of 3 seconds");
        }
        Path elsewhere = Files.copy(tile, folder.resolve("S47E012.hgt"));
        assertTrue(fault(elsewhere, null).contains("holds nothing to import"), fault(elsewhere, null));
        assertTrue(fault(Files.copy(tile, folder.resolve("tile.hgt")), null).contains("by its name"));
        assertTrue(fault(Files.write(folder.resolve("N48W012.hgt"), new byte[99]), null).contains("has 99 bytes"));
    }
}
