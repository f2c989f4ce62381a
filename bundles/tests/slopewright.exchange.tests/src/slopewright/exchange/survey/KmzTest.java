package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.exchange.ExchangeException;

/** KML in an archive: which file of it counts, and archives that are none or more than they seem. */
class KmzTest {

    private static final int A_MEGABYTE = 1 << 20;

    @TempDir
    private Path folder;

    private static String kml(String name) {
        return "<kml><Placemark><name>" + name + "</name><Point><altitudeMode>absolute</altitudeMode><coordinates>-11.9,47.3,100"
                + "</coordinates></Point></Placemark></kml>";
    }

    private Path archive(String... namesAndTexts) throws IOException {
        Path file = folder.resolve("survey.kmz");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (int i = 0; i < namesAndTexts.length; i += 2) {
                zip.putNextEntry(new ZipEntry(namesAndTexts[i]));
                zip.write(namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
            }
        }
        return file;
    }

    private static List<String> names(Path file) throws ExchangeException {
        List<String> found = new ArrayList<>();
        SurveyFile.read(file, shape -> found.add(shape.text(SurveyShape.Fact.NAME).orElse("")));
        return found;
    }

    private static String refusal(Path file) {
        return assertThrows(ExchangeException.class, () -> names(file)).getMessage();
    }

    @Test
    void theFirstFileThatIsKmlCounts() throws Exception {
        assertEquals(List.of("First"), names(archive("pictures/tree.png", "no picture", "Doc.KML", kml("First"), "b.kml", kml("Second"))));
    }

    @Test
    void whatHoldsNoKmlIsRefused() throws IOException {
        assertTrue(refusal(archive("tree.png", "no picture")).contains("holds no file that ends in KML"));
        assertTrue(refusal(Files.writeString(folder.resolve("plain.kmz"), kml("Plain"))).contains("is no ZIP archive"));
        assertTrue(refusal(Files.write(folder.resolve("empty.kmz"), new byte[0])).contains("is no ZIP archive"));
    }

    @Test
    void aDamagedArchiveIsRefused() throws IOException {
        byte[] whole = Files.readAllBytes(archive("doc.kml", kml("Tree")));
        for (int end = 2; end < whole.length / 2; end += 7) {
            Path cut = Files.write(folder.resolve("cut.kmz"), Arrays.copyOf(whole, end));
            assertTrue(refusal(cut).startsWith(cut.toString()), "cut at " + end);
        }
    }

    /** 65 MB of blanks become 65 kB: no size that the archive names is believed. */
    @Test
    void whatSwellsBeyondMeasureIsRefused() throws IOException {
        for (String name : List.of("doc.kml", "tree.png")) {
            Path file = folder.resolve("swelling.kmz");
            try (OutputStream out = Files.newOutputStream(file); ZipOutputStream zip = new ZipOutputStream(out)) {
                zip.putNextEntry(new ZipEntry(name));
                byte[] blanks = new byte[A_MEGABYTE];
                Arrays.fill(blanks, (byte) ' ');
                for (int i = 0; i < 65; i++) {
                    zip.write(blanks);
                }
                zip.putNextEntry(new ZipEntry("more.kml"));
                zip.write(kml("Tree").getBytes(StandardCharsets.UTF_8));
            }
            assertTrue(Files.size(file) < A_MEGABYTE);
            assertTrue(refusal(file).contains("holds more than 64 MB"), name);
        }
    }

    @Test
    void aDocumentTypeIsRefusedAsInKml() throws IOException {
        String hostile = "<!DOCTYPE kml [<!ENTITY a \"b\">]>" + kml("&a;");
        assertTrue(refusal(archive("doc.kml", hostile)).contains("document type"));
    }
}
