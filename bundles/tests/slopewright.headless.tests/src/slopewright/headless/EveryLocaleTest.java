package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the command line says to whoever calls it is the same in every locale, to the last byte. */
class EveryLocaleTest {

    private final Locale before = Locale.getDefault();

    @TempDir
    private Path folder;

    @AfterEach
    void goBack() {
        Locale.setDefault(before);
    }

    private static String said(Locale locale, List<String> words) {
        Locale.setDefault(locale);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Start.run(words.toArray(String[]::new), out, err);
        return code + out.toString(StandardCharsets.UTF_8) + err.toString(StandardCharsets.UTF_8);
    }

    /** The reader of XML has words of its own in German and in Japanese. */
    @Test
    void helpFaultsAndProgressAreTheSameInEveryLocale() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.slopewright"), "<a b c='1'/>");
        Path demo = Path.of(System.getProperty("slopewright.root"), "demo-data/harrow-vale/harrow-vale.slopewright");
        for (List<String> words : List.of(List.of("check", "--help"), List.of("check", broken.toString()), List.of("check", "--no-such"),
                List.of("site", "--family", "four-unit-row"), List.of("schedule", demo.toString(), "-o", "-"))) {
            String english = said(Locale.ENGLISH, words);
            assertTrue(english.length() > 20, english);
            for (Locale other : List.of(Locale.GERMANY, Locale.JAPAN, Locale.forLanguageTag("ar-EG"), Locale.forLanguageTag("tr"))) {
                assertEquals(english, said(other, words), other + " " + words);
            }
        }
    }
}
