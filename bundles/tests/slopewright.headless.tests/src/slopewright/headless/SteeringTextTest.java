package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Names, remarks and sources of a project hold marks of direction, ends of lines and controls, those of the upper half too: nothing that is
 * printed, drawn, mapped or tabulated carries them on. What steers is listed here by the Unicode Character Database: categories Cc, Zl
 * and Zp, and Bidi_Control by its letters.
 */
class SteeringTextTest {

    private static final String HOSTILE = "&#x202e;GNP&#x2028;S&#x9b;31m&#x85;C&#10;&#13;T&#x200f;&#x2066;=1+1&#x7f;";
    private static final Pattern TEXTS = Pattern.compile("(\\b(?:name|source|remarks|surface|verticalDatum)=\")([^\"]*)\"");
    private static final Pattern STEERING = Pattern.compile(
            "[\\p{gc=Cc}\\p{gc=Zl}\\p{gc=Zp}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069&&[^\\n\\r\\t]]");

    @TempDir
    private Path folder;

    private Path project() throws IOException {
        String text = Files.readString(Words.demo("harrow-vale-faults/harrow-vale-faults.slopewright"));
        return Files.writeString(folder.resolve("p.slopewright"), TEXTS.matcher(text).replaceAll("$1$2" + HOSTILE + "\""));
    }

    private static void assertPlain(String what, String text) {
        Matcher found = STEERING.matcher(text);
        assertTrue(!found.find(), () -> what + ": " + Integer.toHexString(found.group().charAt(0)) + " behind "
                + text.substring(Math.max(0, found.start() - 60), found.start()));
        assertTrue(text.contains("GNP"), what + " does not hold the texts");
    }

    @ParameterizedTest
    @CsvSource({"report, html, --date 2026-06-01", "export, kml,", "export, geojson,", "schedule, csv,",
        "draw, svg, --aid approach-aid-1 --view plan",
        "draw, svg, --aid approach-aid-1 --view section", "draw, dxf, --aid approach-aid-1 --view plan"})
    void nothingThatIsWrittenCarriesItOn(String command, String ending, String more) throws IOException {
        Path file = folder.resolve("out." + ending);
        List<String> words = new ArrayList<>(List.of(command, project().toString(), "-o", file.toString()));
        if (more != null) {
            words.addAll(Arrays.asList(more.split(" ")));
        }
        Words said = Words.run(words.toArray(String[]::new));
        assertTrue(Files.exists(file), said.err());
        assertPlain(command + " " + ending, Files.readString(file));
    }

    @Test
    void nothingThatIsSaidCarriesItOn() throws IOException {
        assertPlain("check", Words.run("check", project().toString(), "--all").out());
        assertPlain("compare", Words.run("compare", project().toString(), "--end", "09").out());
    }

    /** A program that reads the document gets what the project holds. */
    @Test
    void aDocumentForProgramsWritesItByNumber() throws IOException {
        Words said = Words.run("check", project().toString(), "--json", "--all");
        assertPlain("check --json", said.out());
        assertTrue(said.json().toString().contains("\u202e"), "the mark is not read back");
    }
}
