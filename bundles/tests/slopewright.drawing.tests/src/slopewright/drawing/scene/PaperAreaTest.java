package slopewright.drawing.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import slopewright.drawing.DemoAids;
import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.sheet.Sheet;
import slopewright.drawing.sheet.SheetFormat;
import slopewright.drawing.sheet.TitleBlock;
import slopewright.messages.MessageRenderer;

/** Scales and paper. */
class PaperAreaTest {

    private static final MessageRenderer ENGLISH = MessageRenderer.of(Locale.ENGLISH);
    private static final PaperArea AREA = new PaperArea(200, 100, 1, 0);

    /** 200 by 100 mm at 1:N show 0.2 N by 0.1 N metres; the next N of the series 1, 1.25, 1.5, 2, 2.5, 4, 5, 7.5. */
    @ParameterizedTest
    @CsvSource({"100, 50, 500", "101, 10, 750", "10, 101, 1250", "300, 10, 1500", "400, 10, 2000", "401, 10, 2500", "501, 10, 4000",
        "1501, 10, 10000"})
    void aPlanTakesTheLargestUsualScaleThatFits(double widthM, double heightM, double scale) {
        Frame frame = AREA.plan(new Frame(-widthM, 5, 0, 5 + heightM));
        assertEquals(0.2 * scale, frame.width(), 1e-9);
        assertEquals(0.1 * scale, frame.height(), 1e-9);
        assertEquals(-widthM / 2, (frame.minX() + frame.maxX()) / 2, 1e-9);
        Scene scene = new Scene("t", frame.minX(), frame.minY(), frame.maxX(), frame.maxY(), 1, List.of(), List.of());
        assertEquals("1:" + Math.round(scale), scene.scale(200, ENGLISH));
    }

    @Test
    void aScaleThatIsTooLargeIsRefusedWithOneThatDoes() {
        PaperArea area = new PaperArea(200, 100, 1, 500);
        assertEquals(100, area.plan(new Frame(0, 0, 90, 10)).width(), 1e-9);
        String message = assertThrows(IllegalArgumentException.class, () -> area.plan(new Frame(0, 0, 120, 10))).getMessage();
        assertTrue(message.contains("1:500") && message.contains("1:750"), message);
    }

    /** 1900 m over 200 mm need 1:10000; 40 m over 100 mm need 1:400, and 10000 / 400 is 25 times. */
    @Test
    void aSectionHasHeightsToAScaleOfTheirOwn() {
        PaperArea.Fit fit = AREA.section(new Frame(-1800, -4, 100, 36));
        assertEquals(25, fit.exaggeration(), 1e-9);
        assertEquals(2000, fit.frame().width(), 1e-9);
        assertEquals(40, fit.frame().height(), 1e-9);
        assertEquals(-4, fit.frame().minY(), 1e-12);
        Scene scene = new Scene("t", fit.frame().minX(), -4, fit.frame().maxX(), fit.frame().maxY(), 25, List.of(), List.of());
        assertEquals("1:10000, heights 1:400", scene.scale(200, ENGLISH));
    }

    @Test
    void aSectionThatIsHigherThanWideIsNotExaggerated() {
        PaperArea.Fit fit = AREA.section(new Frame(0, 0, 50, 50));
        assertEquals(1, fit.exaggeration(), 1e-9);
        assertEquals(100, fit.frame().width(), 1e-9);
    }

    /** The scale printed in the title block, measured on the paper: the distance of two units in millimetres times the scale. */
    @ParameterizedTest
    @EnumSource(SheetFormat.class)
    void thePaperBearsTheScaleThatItSays(SheetFormat format) {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        Scene scene = PlanScene.layout(drawn, format.area(0));
        Sheet sheet = Sheet.onPaper(scene, TitleBlock.none(ENGLISH), format);
        List<ScenePoint> threshold = sheet.inside().stream().filter(Mark.Path.class::isInstance).map(Mark.Path.class::cast)
                .filter(path -> path.style().line() == Ink.TEXT && !path.closed() && path.points().size() == 2).map(Mark.Path::points)
                .filter(points -> points.get(0).x() == points.get(1).x()).findFirst().orElseThrow();
        double widthMm = Math.abs(threshold.get(0).y() - threshold.get(1).y());
        String scale = sheet.below().stream().filter(Mark.Label.class::isInstance).map(mark -> ((Mark.Label) mark).text())
                .filter(text -> text.matches("1:[0-9]+")).findFirst().orElseThrow();
        assertEquals(45, widthMm / 1000 * Integer.parseInt(scale.substring(2)), 1e-6);
        assertEquals(format.widthMm(), sheet.widthMm());
        assertTrue(sheet.isBordered());
    }
}
