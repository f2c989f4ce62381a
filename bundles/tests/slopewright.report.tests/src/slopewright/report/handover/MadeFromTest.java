package slopewright.report.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.io.Program;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.report.PaperSize;
import slopewright.testkit.DemoProjects;

/**
 * Every file that can be handed over says by itself what it was made from: program with version, revision, rule set with edition, and the
 * project file by at least twelve digits of its SHA-256, which are worked out here from the bytes of the file. A further kind of file is
 * looked at without a further line here.
 */
class MadeFromTest {

    private static final HandoverOptions OPTIONS = new HandoverOptions(LocalDate.of(2026, 6, 1), PaperSize.A4);
    private static final int DIGITS = 12;
    private static final Set<String> FOR_OTHERS = Set.of("csv", "xlsx", "geojson", "kml", "kmz", "gpkg", "txt", "xml", "aixm");

    @TempDir
    private Path folder;

    /** The demo on a grid, so that there are points for a total station too. */
    private Path onGrid() throws IOException {
        Path file = DemoProjects.copy(DemoProjects.GOOD, folder);
        return Files.writeString(file, Files.readString(file).replace("coordinateReference=\"WGS84\"",
                "coordinateReference=\"EPSG:32629\"").replaceFirst("revision=\"[^\"]*\"", "revision=\"R-17\""));
    }

    private static String digest(Path file) throws Exception {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
    }

    /** Returns what a person or a program reads in a file, in one line. */
    private static String text(HandoverFile file, byte[] bytes) throws IOException {
        String text = switch (file.extension()) {
            case "pdf" -> {
                try (PDDocument document = Loader.loadPDF(bytes)) {
                    yield new PDFTextStripper().getText(document);
                }
            }
            case "xlsx", "kmz" -> archive(bytes).replaceAll("<[^>]*>", " ");
            case "svg", "html" -> new String(bytes, StandardCharsets.UTF_8).replaceAll("(?s)<style>.*?</style>", "")
                    .replaceAll("<[^>]*>", " ");
            default -> new String(bytes, StandardCharsets.UTF_8).replaceAll("<[^>]*>", " $0 ");
        };
        return text.replaceAll("\\s+", " ");
    }

    private static String archive(byte[] bytes) throws IOException {
        StringBuilder all = new StringBuilder();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                all.append(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return all.toString();
    }

    private static void missing(String name, String text, String digest, List<String> without) {
        if (!text.contains(digest.substring(0, DIGITS))) {
            without.add(name + " lacks the digits of the project file");
        }
        if (!text.matches("(?s).*slopewright(\" version=\"| )" + Program.VERSION.replace(".", "\\.") + ".*")) {
            without.add(name + " lacks the program");
        }
        if (!text.contains("R-17")) {
            without.add(name + " lacks the revision");
        }
        if (!text.matches("(?s).*(icao:9th|9th ed|faa:2010|edition key 2010).*")) {
            without.add(name + " lacks the rule set with its edition");
        }
    }

    @Test
    void everyFileSaysWhatItWasMadeFrom() throws Exception {
        Path file = onGrid();
        String digest = digest(file);
        Project project = ProjectFile.load(file);
        HandoverSource source = new HandoverSource(project);
        Set<String> aids = Set.of("", Projects.path(DemoProjects.aid(project, "PAPI 09")), Projects.path(DemoProjects.aid(project,
                "Portable unit, north pad")));
        List<String> without = new ArrayList<>();
        Set<String> kinds = new TreeSet<>();
        for (HandoverFile each : Deliverables.of(project)) {
            if (aids.contains(each.subject().english())) {
                missing(each.fileName(), text(each, each.writer().write(source, OPTIONS)), digest, without);
                kinds.add(each.kind() + " " + each.extension());
            }
        }
        assertEquals(List.of(), without);
        assertTrue(kinds.size() >= 44, kinds.toString());
    }

    /**
     * Who gets a table, a map or points has not seen the report: the file says that something stands against its figures. Here unit B
     * is set half a degree too high, which no tolerance of any rule set allows (Annex 14 Vol I, Fig 5-20 has steps of 20').
     */
    @Test
    void figuresForOthersNeverLeaveWithoutTheVerdict() throws Exception {
        Path file = onGrid();
        Project project = ProjectFile.load(file);
        LightUnit unit = DemoProjects.aid(project, "PAPI 09").getUnits().get(2);
        unit.setSettingDeg(unit.getSettingDeg() + 0.5);
        HandoverSource source = new HandoverSource(project);
        List<String> silent = new ArrayList<>();
        Set<String> kinds = new TreeSet<>();
        for (HandoverFile each : Deliverables.of(project)) {
            if (each.subject().isBlank() && FOR_OTHERS.contains(each.extension())) {
                kinds.add(each.fileName());
                String text = text(each, each.writer().write(source, OPTIONS));
                if (!text.matches("(?s).*Not met: [1-9]\\d* not met.*")) {
                    silent.add(each.fileName());
                }
            }
        }
        assertEquals(List.of(), silent);
        assertTrue(kinds.size() >= 13, kinds.toString());
    }

    /** A picture has no letters that can be read again; it keeps them as text beside. */
    @Test
    void aPictureKeepsItAsText() throws Exception {
        Path file = onGrid();
        Project project = ProjectFile.load(file);
        byte[] picture = Deliverables.of(project).stream().filter(each -> each.kind().equals("drawing-plan")).findFirst().orElseThrow()
                .picture().orElseThrow().write(new HandoverSource(project), OPTIONS);
        List<String> without = new ArrayList<>();
        missing("picture", new String(picture, StandardCharsets.ISO_8859_1), digest(file), without);
        assertEquals(List.of(), without);
    }

    /** Digits of a file that no longer holds the project as it stands would lead to another state: they are those of the project. */
    @Test
    void aChangedProjectIsSaidNotToBeSaved() throws Exception {
        Path file = onGrid();
        Project project = ProjectFile.load(file);
        project.setRevision("R-18");
        HandoverFile schedule = Deliverables.of(project).stream().filter(each -> each.fileName().equals("schedule.csv")).findFirst()
                .orElseThrow();
        String text = text(schedule, schedule.writer().write(new HandoverSource(project), OPTIONS));
        assertTrue(!text.contains(digest(file).substring(0, DIGITS)) && text.contains("not saved as it stands"), text);
    }
}
