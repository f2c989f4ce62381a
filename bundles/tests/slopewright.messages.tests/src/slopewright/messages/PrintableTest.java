package slopewright.messages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** Text of somebody else, in one line that steers nothing; letters by the Unicode data of the platform. */
class PrintableTest {

    @Test
    void aRunOfWhatSteersIsOneSpace() {
        assertEquals("a b c d", Printable.of("a\r\n\tb\u009b\u202ec\u2028d"));
        assertEquals(" Prüfung \ud83d\ude00 שלום", Printable.of("\u200fPrüfung \ud83d\ude00 שלום"));
    }

    /** Controls and separators by category; the marks of direction are those that the platform gives a direction of their own. */
    @Test
    void whatSteersIsWhatUnicodeSays() {
        IntStream.range(0, 0xFFFF).filter(letter -> !Character.isSurrogate((char) letter)).forEach(letter -> {
            int category = Character.getType(letter);
            byte direction = Character.getDirectionality(letter);
            boolean isMark = category == Character.FORMAT && (direction >= Character.DIRECTIONALITY_LEFT_TO_RIGHT_EMBEDDING
                    || letter >= 0x200E && letter <= 0x200F || letter == 0x61C);
            boolean steers = category == Character.CONTROL || category == Character.LINE_SEPARATOR
                    || category == Character.PARAGRAPH_SEPARATOR || isMark;
            assertEquals(steers, Printable.isSteering(letter), Integer.toHexString(letter));
            assertTrue(steers == Printable.of("x" + (char) letter + "y").equals("x y") || letter == ' ', Integer.toHexString(letter));
        });
    }
}
