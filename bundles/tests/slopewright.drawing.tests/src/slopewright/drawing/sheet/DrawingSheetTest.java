package slopewright.drawing.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.drawing.DemoAids;
import slopewright.drawing.View;
import slopewright.drawing.paint.DxfPainter;
import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.pilot.PilotScene;
import slopewright.drawing.plan.GridPlacement;
import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.TextWidth;
import slopewright.drawing.signal.SignalScene;
import slopewright.evaluation.MadeFrom;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;
import slopewright.model.Project;

/** Drawing paper: every view of every family, with all that the title block has to say, and no text on another. */
class DrawingSheetTest {

    private static final MessageRenderer ENGLISH = MessageRenderer.of(Locale.ENGLISH);
    private static final List<String> NAMES = List.of("Drawing", "Document number", "Revision", "Project", "Aerodrome", "Client",
            "Organisation", "Drawn by", "Checked by", "Approved by", "Date", "Scale", "Sheet", "Coordinates and vertical datum", "Rule set",
            "Caution");

    private static Stream<DrawnAid> aids() {
        return Stream.concat(DemoAids.everyFamily().stream(), Stream.of("PAPI 09", "PAPI 27", "APAPI 03").map(DemoAids::drawn));
    }

    private static List<Sheet> sheets(DrawnAid drawn, SheetFormat format) {
        List<Sheet> sheets = new ArrayList<>();
        for (View view : View.values()) {
            if (view.fits(drawn.aid()) && (view != View.SIGNALS || SignalScene.fits(drawn.siting()))) {
                Scene scene = view.scene(drawn, format.area(0), PilotScene.eyeOnSlope(drawn, 900), Daylight.NIGHT);
                sheets.add(Sheet.onPaper(scene, block(drawn.project(), scene.title()), format));
            }
        }
        return sheets;
    }

    private static final MadeFrom MADE = new MadeFrom("P", "B", "2026-06-01", Optional.empty(), Words.name("A rule set of an edition"),
            "rules:1st", Optional.empty());

    private static TitleBlock block(Project project, String title) {
        return TitleBlock.of(project, title, MADE, "2026-06-01", ENGLISH)
                .with(TitleBlock.Field.DATUM, TitleBlock.datum(project, ENGLISH)).with(TitleBlock.Field.CAUTION, "A design aid.");
    }

    /** A sheet says what a check found, and that nobody checked where nobody did; never nothing. */
    @Test
    void theVerdictStandsInTheTitleBlock() {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        Scene scene = View.PLAN.scene(drawn, SheetFormat.A4.area(0), PilotScene.eyeOnSlope(drawn, 900), Daylight.NIGHT);
        TitleBlock block = block(drawn.project(), "t");
        String said = "Not met: 1234 not met, 5678 to clear up";
        assertEquals(1, count(block, scene, "Not checked"));
        assertEquals(0, count(block.with(TitleBlock.Field.VERDICT, said), scene, "Not checked"));
        assertEquals(1, count(block.with(TitleBlock.Field.VERDICT, said), scene, said));
    }

    private static long count(TitleBlock block, Scene scene, String text) {
        return labels(Sheet.onPaper(scene, block, SheetFormat.A4).below()).stream().filter(label -> label.text().equals(text)).count();
    }

    /** Notes that do not fit are counted on the sheet; what is written stays above the border, 10 mm from the edge of the paper. */
    @Test
    void notesWithoutRoomAreCounted() {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        Scene scene = View.PLAN.scene(drawn, SheetFormat.A4.area(0), PilotScene.eyeOnSlope(drawn, 900), Daylight.NIGHT);
        for (int i = 0; i < 40; i++) {
            scene = scene.with("note " + i);
        }
        List<Mark.Label> written = labels(Sheet.onPaper(scene, block(drawn.project(), "t"), SheetFormat.A4).below());
        long notes = written.stream().filter(label -> label.text().startsWith("note ")).count();
        assertTrue(written.stream().allMatch(label -> label.at().y() <= 200), "within the border");
        assertTrue(notes > 3 && notes < 40, notes + " notes");
        assertTrue(written.stream().anyMatch(label -> label.text().equals(40 - notes + " more lines have no room on this paper; a larger "
                + "sheet holds them.")), written.toString());
    }

    private static List<Mark.Label> labels(List<Mark> marks) {
        return marks.stream().filter(Mark.Label.class::isInstance).map(Mark.Label.class::cast).toList();
    }

    @ParameterizedTest
    @MethodSource("aids")
    void noTextLiesOnAnotherOrLeavesThePaper(DrawnAid drawn) {
        for (SheetFormat format : List.of(SheetFormat.A4, SheetFormat.A2)) {
            for (Sheet sheet : sheets(drawn, format)) {
                List<Mark.Label> all = new ArrayList<>(labels(sheet.inside()));
                all.addAll(labels(sheet.below()));
                for (int i = 0; i < all.size(); i++) {
                    assertInside(sheet, all.get(i));
                    for (int j = i + 1; j < all.size(); j++) {
                        assertApart(sheet, all.get(i), all.get(j));
                    }
                }
            }
        }
    }

    private static void assertInside(Sheet sheet, Mark.Label label) {
        assertTrue(left(label) > SheetFormat.LEFT_MM - 0.1 && right(label) < sheet.widthMm() - SheetFormat.OTHER_MM + 0.1 && label.at().y()
                < sheet.heightMm() - SheetFormat.OTHER_MM, sheet.title() + ": '" + label.text() + "' leaves the paper");
    }

    private static void assertApart(Sheet sheet, Mark.Label one, Mark.Label other) {
        double wide = Math.min(right(one), right(other)) - Math.max(left(one), left(other));
        double tall = Math.min(one.at().y(), other.at().y()) - Math.max(one.at().y() - one.sizeMm(), other.at().y() - other.sizeMm());
        assertFalse(wide > 0.3 && tall > 0.3, sheet.title() + ": '" + one.text() + "' lies on '" + other.text() + "'");
    }

    private static double left(Mark.Label label) {
        double width = TextWidth.mm(label.text(), label.sizeMm());
        return label.anchor() == Mark.Anchor.START ? label.at().x()
                : label.anchor() == Mark.Anchor.END ? label.at().x() - width : label.at().x() - width / 2;
    }

    private static double right(Mark.Label label) {
        return left(label) + TextWidth.mm(label.text(), label.sizeMm());
    }

    /** No letter is smaller than 1.8 mm on any paper, and every note stands above the border at the foot. */
    @Test
    void everyLetterCanBeReadOnPaper() {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        for (SheetFormat format : SheetFormat.values()) {
            for (Sheet sheet : sheets(drawn, format)) {
                for (Mark.Label label : labels(sheet.below())) {
                    assertTrue(label.sizeMm() >= 1.8, format + " " + sheet.title() + ": " + label);
                    assertTrue(label.at().y() <= sheet.heightMm() - 10, format + " " + sheet.title() + ": " + label);
                }
                labels(sheet.inside()).forEach(label -> assertTrue(label.sizeMm() >= 1.8, format + " " + sheet.title() + ": " + label));
            }
        }
    }

    @Test
    void everySheetHasAWholeTitleBlock() {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        for (Sheet sheet : sheets(drawn, SheetFormat.A4)) {
            List<String> texts = labels(sheet.below()).stream().map(Mark.Label::text).toList();
            assertTrue(texts.containsAll(NAMES), sheet.title() + texts);
            assertTrue(texts.containsAll(List.of("Harrow Vale", "A", "R. Tamsin", "2026-06-01", "A4", "A design aid.", sheet.title())),
                    sheet.title() + texts);
        }
    }

    /** Border, key and title block on a layer of their own in the layout of paper, millimetres from its foot: 20 mm from the left. */
    @Test
    void aDrawingFileHoldsTheSheetOnALayerOfItsOwn() {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        Scene scene = PlanScene.layout(drawn, SheetFormat.A4.area(0));
        Sheet sheet = Sheet.onPaper(scene, block(drawn.project(), scene.title()), SheetFormat.A4);
        String dxf = DxfPainter.paint(sheet, GridPlacement.none(), List.of(), List.of());
        assertTrue(dxf.matches("(?s).*  0\nLAYER\n  5\n\\w+\n330\n2\n100\nAcDbSymbolTableRecord\n"
                + "100\nAcDbLayerTableRecord\n  2\nSHEET\n.*"));
        assertTrue(dxf.contains("  1\nHarrow Vale\n"), dxf);
        assertTrue(dxf.contains(" 67\n1\n  8\nSHEET\n 62\n7\n100\nAcDbPolyline\n 90\n4\n 70\n1\n 10\n20.000000\n"
                + " 20\n200.000000\n"), dxf);
    }

    /** The aerodrome reference point of the demo is the threshold of runway 09, whose landing direction is 92 degrees. */
    @Test
    void withoutAGridCoordinatesCountFromTheReferencePoint() {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        GridPlacement placement = GridPlacement.of(drawn);
        ScenePoint placed = placement.place().apply(new ScenePoint(1000, 20));
        double angle = Math.toRadians(92);
        assertEquals(1000 * Math.sin(angle) + 20 * Math.sin(angle - Math.PI / 2), placed.x(), 1e-4);
        assertEquals(1000 * Math.cos(angle) + 20 * Math.cos(angle - Math.PI / 2), placed.y(), 1e-4);
        assertEquals(-2, placement.turnDeg(), 1e-5);
        assertTrue(GridPlacement.words(drawn).contains("47.30000000, -11.90000000"), GridPlacement.words(drawn));
    }
}
