package slopewright.drawing.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;

import slopewright.drawing.DemoAids;
import slopewright.drawing.pilot.PilotScene;
import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.section.SectionScene;
import slopewright.drawing.sheet.Paper;
import slopewright.drawing.signal.SignalScene;

/** Painted files: the expected ones stand beside the tests; the system property {@code slopewright.refresh} writes them anew. */
class PaintersTest {

    private static final Path EXPECTED = Path.of(System.getProperty("slopewright.root"),
            "bundles/tests/slopewright.drawing.tests/src/expected");

    private static Scene scene(String view) {
        DrawnAid drawn = DemoAids.drawn("PAPI 27");
        return switch (view) {
            case "plan" -> PlanScene.layout(drawn);
            case "surface" -> PlanScene.surface(drawn);
            case "section" -> SectionScene.of(drawn);
            case "near" -> SectionScene.near(drawn);
            case "detail" -> PlanScene.detail(drawn);
            case "signals" -> SignalScene.of(drawn);
            default -> PilotScene.of(drawn, PilotScene.eyeOnSlope(drawn, 1500));
        };
    }

    private static void compare(String name, String painted) throws IOException {
        Path file = EXPECTED.resolve(name);
        if (Boolean.getBoolean("slopewright.refresh")) {
            Files.createDirectories(EXPECTED);
            Files.writeString(file, painted);
        }
        assertEquals(Files.readString(file), painted);
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "detail", "surface", "section", "near", "signals", "pilot"})
    void vectorGraphicsAreAsExpectedAndWellFormed(String view) throws IOException, ParserConfigurationException, SAXException {
        String svg = SvgPainter.paint(scene(view), 277, 190);
        Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        assertEquals("svg", document.getDocumentElement().getNodeName());
        compare(view + ".svg", svg);
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "section"})
    void drawingFilesAreAsExpected(String view) throws IOException {
        compare(view + ".dxf", DxfPainter.paint(scene(view), 277));
    }

    /** The structure that every reader relies on: pairs, balanced sections, every layer declared, every handle once, every owner there. */
    @Test
    void drawingFilesAreSound() {
        List<String> lines = DxfPainter.paint(scene("plan"), 277).lines().toList();
        assertEquals(0, lines.size() % 2);
        int open = 0;
        Set<String> declared = new HashSet<>();
        Set<String> used = new HashSet<>();
        List<String> handles = new ArrayList<>();
        Set<String> owners = new HashSet<>();
        String entity = "";
        String section = "";
        for (int i = 0; i < lines.size(); i += 2) {
            int code = Integer.parseInt(lines.get(i).strip());
            String value = lines.get(i + 1);
            if (code == 0) {
                open += value.equals("SECTION") ? 1 : value.equals("ENDSEC") ? -1 : 0;
                entity = value;
                section = value.equals("SECTION") ? lines.get(i + 3) : section;
            } else if (!section.equals("HEADER") && (code == 5 || code == 105)) {
                handles.add(value);
            } else if (code == 330) {
                owners.add(value);
            } else if (code == 2 && entity.equals("LAYER")) {
                declared.add(value);
            } else if (code == 8) {
                used.add(value);
            }
        }
        assertEquals(0, open);
        assertEquals("EOF", lines.get(lines.size() - 1));
        assertTrue(declared.containsAll(used), used + " against " + declared);
        assertEquals(handles.size(), new HashSet<>(handles).size(), "every handle once");
        owners.removeAll(handles);
        assertEquals(Set.of("0"), owners, "every owner is there");
    }

    @Test
    void textIsEscaped() {
        Scene scene = new Scene("a < b & c", 0, 0, 10, 10, 1,
                List.of(new Mark.Label(new ScenePoint(1, 1), "1 < 2 & 3°", Mark.Anchor.START, 2, 0,
                        Ink.TEXT, "")), List.of());
        assertTrue(SvgPainter.paint(scene, 100, 100).contains("1 &lt; 2 &amp; 3°"));
        assertTrue(DxfPainter.paint(scene, 100).contains("1 < 2 & 3°"));
    }

    /** UTF-8 as it is; what a reader would take for a command of its own is parted. */
    @Test
    void lettersOfEveryAlphabetStandInADrawingFileAsTheyAre() {
        Scene scene = new Scene("t", 0, 0, 10, 10, 1,
                List.of(new Mark.Label(new ScenePoint(1, 1),
                        "Hindernisfl\u00e4che, \u00c9vora, \u03a9, \u22123, %%u \n0", Mark.Anchor.START, 2,
                        0, Ink.TEXT, "")), List.of());
        String dxf = DxfPainter.paint(scene, 100);
        assertTrue(dxf.contains("\n  1\nHindernisfl\u00e4che, \u00c9vora, \u03a9, \u22123, % %u  0\n"), dxf);
        assertTrue(dxf.contains("AC1021"));
    }

    @Test
    void paperKeepsTheProportionsOfTheScene() {
        Scene scene = new Scene("t", -100, -10, 100, 30, 2, List.of(), List.of());
        Paper paper = new Paper(scene, 220, 500, 10);
        assertEquals(1, paper.scale(), 1e-9);
        assertEquals(10, paper.x(new ScenePoint(-100, 0)), 1e-9);
        assertEquals(210, paper.x(new ScenePoint(100, 0)), 1e-9);
        assertEquals(10, paper.y(new ScenePoint(0, 30)), 1e-9);
        assertEquals(90, paper.y(new ScenePoint(0, -10)), 1e-9);
    }
}
