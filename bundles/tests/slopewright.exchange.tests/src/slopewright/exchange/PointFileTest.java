package slopewright.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.exchange.internal.FastDecimals;

/** Point files in blocks of flat arrays. */
class PointFileTest {

    @TempDir
    private Path folder;

    /** The oracle is the platform's own reader of decimal numbers. */
    @Test
    void readsNumbersAsThePlatformDoes() {
        SplittableRandom random = new SplittableRandom(20260601);
        for (int i = 0; i < 200_000; i++) {
            String text = number(random);
            byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
            assertEquals(Double.parseDouble(text), FastDecimals.parse(bytes, 0, bytes.length), 0.0, text);
        }
    }

    private static String number(SplittableRandom random) {
        String text = String.valueOf(random.nextInt(5) == 0 ? random.nextLong() : random.nextInt(1_000_000));
        if (random.nextBoolean()) {
            text += "." + random.nextLong(1, 1_000_000_000_000L);
        }
        return random.nextInt(50) == 0 ? text + "e-3" : text;
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", ".", "1.2.3", "1 2", "NaN", "Infinity", "0x10", "1d", "--1"})
    void refusesWhatIsNoNumber(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
        assertTrue(Double.isNaN(FastDecimals.parse(bytes, 0, bytes.length)), text);
    }

    /** A block of eight megabytes with the numbers of its lines would be 55 MB for a file of two lines. */
    @Test
    void takesLittleMemoryForASmallFile() throws IOException, ExchangeException {
        Path file = Files.writeString(folder.resolve("small.csv"), PointFile.HEADER + "\np1,-1200,12.5,40\n");
        PointFile.read(file, (block, count, firstLine) -> {
            assertEquals(1, count);
            assertTrue(block.text().length + 32 * block.alongM().length < 500_000, "block of " + block.text().length);
        });
    }

    @Test
    void keepsIdsLinesAndOrderAcrossBlocks() throws IOException, ExchangeException {
        int many = 700_000;
        StringBuilder text = new StringBuilder(PointFile.HEADER).append("\r\n");
        for (int i = 0; i < many; i++) {
            text.append("point ").append(i).append(',').append(i).append(",-0.5,").append(i % 7).append(".25\r\n");
        }
        Path file = Files.writeString(folder.resolve("many.csv"), text);
        List<String> faults = new ArrayList<>();
        long[] seen = {0, 0};
        PointFile.read(file, (block, count, firstLine) -> {
            seen[1]++;
            for (int i = 0; i < count; i++) {
                long number = seen[0]++;
                boolean right = block.id(i).equals("point " + number) && block.alongM()[i] == number && block.rightM()[i] == -0.5
                        && block.heightM()[i] == number % 7 + 0.25 && firstLine + i == number + 2;
                if (!right) {
                    faults.add(block.id(i));
                }
            }
        });
        assertEquals(many, seen[0]);
        assertTrue(seen[1] > 1);
        assertEquals(List.of(), faults);
    }

    @Test
    void namesTheFileThatIsNotThere() {
        ExchangeException thrown = assertThrows(ExchangeException.class,
                () -> PointFile.read(folder.resolve("none.csv"), (block, count, firstLine) -> block.id(0)));
        assertTrue(thrown.getMessage().contains("none.csv: there is no such file"), thrown.getMessage());
    }
}
