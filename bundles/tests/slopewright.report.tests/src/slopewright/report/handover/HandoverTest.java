package slopewright.report.handover;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.checks.Checks;
import slopewright.checks.Standing;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.settingout.SettingOutSchedule;
import slopewright.exchange.sheet.SheetFile;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.report.PaperSize;

/** Everything a project can be handed over as: the list, the bytes, and a folder in which nothing is lost. */
class HandoverTest {

    private static final HandoverOptions OPTIONS = new HandoverOptions(LocalDate.of(2026, 6, 1), PaperSize.A4);

    @TempDir
    private Path folder;
    private Project project;

    @BeforeEach
    void load() throws Exception {
        project = ProjectFile.load(Path.of(System.getProperty("slopewright.root"), "demo-data/harrow-vale/harrow-vale.slopewright"));
    }

    private HandoverFile find(String fileName) {
        return Deliverables.of(project).stream().filter(file -> file.fileName().equals(fileName)).findFirst().orElseThrow();
    }

    @Test
    void everyFileHasAKeyAndANameOfItsOwn() {
        List<HandoverFile> all = Deliverables.of(project);
        assertEquals(all.size(), all.stream().map(HandoverFile::key).distinct().count());
        assertEquals(all.size(), all.stream().map(HandoverFile::fileName).distinct().count());
        long drawings = all.stream().filter(file -> file.kind().startsWith("drawing-")
                && !file.kind().equals("drawing-set")).count();
        long atHelipads = Projects.aids(project).stream().filter(aid -> Projects.helipad(Projects.host(aid).orElseThrow()).isPresent())
                .count();
        assertEquals((Projects.aids(project).size() * 11 + atHelipads) * 3, drawings,
                "eleven views in three forms of every aid, all of which a circuit feeds, and the landing directions at a helipad");
        assertTrue(all.stream().allMatch(file -> file.fileName().matches("[\\p{L}\\p{N}-]+\\.[a-z]+")), "names that every system takes");
    }

    /** Each kind is one service with a place of its own, and each file has a name for people in both languages. */
    @Test
    void kindsAreServicesWithNames() {
        assertEquals(13, Deliverables.kinds().size());
        assertEquals(13, Deliverables.kinds().stream().map(Deliverable::order).distinct().count());
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            MessageRenderer words = MessageRenderer.of(language);
            Deliverables.of(project).forEach(file -> assertTrue(words.keys().contains(file.label().key()), file.label().key()));
        }
        HandoverFile plan = find("papi-09-plan.pdf");
        assertEquals("Drawing: plan", OPTIONS.inMetres().render(plan.label()));
        assertEquals("Zeichnung: Lageplan", MessageRenderer.of(Locale.GERMAN).render(plan.label()));
    }

    /** What a file begins with tells its form: PDF 1.x, PNG and OOXML and KMZ (both a ZIP) by their published signatures. */
    @Test
    void theBytesAreOfTheFormThatTheNameSays() throws Exception {
        String aid = Projects.path(Projects.aids(project).get(0));
        for (HandoverFile file : Deliverables.of(project)) {
            boolean about = file.subject().isBlank() || file.subject().english().equals(aid);
            if (about && (file.usual() || file.kind().equals("map"))) {
                String start = new String(file.writer().write(new HandoverSource(project), OPTIONS), 0, 8, StandardCharsets.ISO_8859_1);
                String expected = switch (file.extension()) {
                    case "pdf" -> "%PDF-";
                    case "xlsx", "kmz" -> "PK";
                    case "csv" -> "runway";
                    case "geojson" -> "{";
                    case "gpkg" -> "SQLite";
                    default -> "<?xml";
                };
                assertTrue(start.startsWith(expected), file.fileName() + " begins with " + start);
            }
        }
        byte[] picture = Deliverables.of(project).stream().flatMap(file -> file.picture().stream()).findFirst().orElseThrow()
                .write(new HandoverSource(project), OPTIONS);
        assertEquals("PNG", new String(picture, 1, 3, StandardCharsets.ISO_8859_1));
    }

    @Test
    void whatIsThereStaysUnlessItMayBeReplaced() throws Exception {
        Files.writeString(folder.resolve("schedule.csv"), "mine");
        List<HandoverFile> wanted = List.of(find("schedule.csv"), find("schedule.xlsx"));
        List<Handover.Entry> entries = Handover.write(project, wanted, folder, OPTIONS, Set.of(), next -> true);
        assertEquals(List.of(Handover.State.KEPT, Handover.State.WRITTEN), entries.stream().map(Handover.Entry::state).toList());
        assertEquals("mine", Files.readString(folder.resolve("schedule.csv")));
        Handover.write(project, wanted, folder, OPTIONS, Set.of("schedule.csv"), next -> true);
        ProjectEvaluation evaluation = ProjectEvaluation.of(project, Optional.empty());
        MadeFrom made = MadeFrom.of(evaluation).judged(Standing.of(Checks.run(evaluation, rule -> true)).words());
        assertArrayEquals(SheetFile.csv(SettingOutSchedule.of(evaluation, OPTIONS.date()).sheet(OPTIONS.inMetres()).from(made)),
                Files.readAllBytes(folder.resolve("schedule.csv")));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(2, files.count(), "nothing is left over");
        }
    }

    @Test
    void whatCanNotBeMadeIsSaidAndTheRestIsWritten() throws Exception {
        HandoverFile drawing = Deliverables.of(project).stream().filter(file -> file.kind().equals("drawing-plan")).findFirst()
                .orElseThrow();
        Projects.aids(project).forEach(aid -> aid.getUnits().clear());
        List<Handover.Entry> entries = Handover.write(project, List.of(drawing, find("schedule.csv")), folder.resolve("new/deep"), OPTIONS,
                Set.of(), next -> true);
        assertEquals(Handover.State.FAILED, entries.get(0).state());
        String reason = entries.get(0).reason().map(Message::english).orElse("");
        assertTrue(reason.contains("no light units"), reason);
        assertEquals(Handover.State.WRITTEN, entries.get(1).state());
    }

    @Test
    void itEndsWhereNothingMoreIsWanted() throws Exception {
        List<Handover.Entry> entries = Handover.write(project, List.of(find("schedule.csv"), find("schedule.xlsx")), folder, OPTIONS,
                Set.of(), next -> next.fileName().equals("schedule.csv"));
        assertEquals(1, entries.size());
    }
}
