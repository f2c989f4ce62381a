package slopewright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.drawing.pilot.PilotScene;
import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.TextWidth;
import slopewright.drawing.section.SectionScene;
import slopewright.drawing.sheet.Sheet;
import slopewright.drawing.signal.SignalScene;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.UnitPlan;

/** Every family draws in every view: finite marks, each unit shown and named, no text on another. */
class EveryFamilyContractTest {

    private static final double WIDTH_MM = 178;
    private static final double HEIGHT_MM = 106;

    private static Stream<DrawnAid> aids() {
        return DemoAids.everyFamily().stream();
    }

    private static List<Scene> scenes(DrawnAid drawn) {
        List<Scene> scenes = new ArrayList<>(List.of(PlanScene.layout(drawn), PlanScene.detail(drawn), PlanScene.surface(drawn),
                SectionScene.of(drawn), SectionScene.near(drawn), PilotScene.of(drawn, PilotScene.eyeOnSlope(drawn, 900))));
        if (SignalScene.fits(drawn.siting())) {
            scenes.add(SignalScene.of(drawn));
        }
        return scenes;
    }

    @Test
    void theDemoHasAllFamilies() {
        Set<String> drawn = aids().map(aid -> aid.siting().family()).collect(Collectors.toSet());
        assertEquals(Families.all().stream().map(IndicatorFamily::key).collect(Collectors.toSet()), drawn);
    }

    @ParameterizedTest
    @MethodSource("aids")
    void marksAreFiniteAndInsideTheDocument(DrawnAid drawn) {
        for (Scene scene : scenes(drawn)) {
            assertFalse(scene.marks().isEmpty(), scene.title());
            for (Mark mark : scene.marks()) {
                List<ScenePoint> points = mark instanceof Mark.Path path ? path.points()
                        : mark instanceof Mark.Disc disc ? List.of(disc.centre()) : List.of(((Mark.Label) mark).at());
                assertTrue(points.stream().allMatch(point -> Double.isFinite(point.x()) && Double.isFinite(point.y())), scene.title());
            }
            Sheet sheet = Sheet.of(scene, WIDTH_MM, HEIGHT_MM);
            assertTrue(sheet.heightMm() <= HEIGHT_MM + 0.01, scene.title() + " is " + sheet.heightMm() + " mm high");
            assertTrue(sheet.frame().get(1).y() > 40, scene.title());
        }
    }

    @ParameterizedTest
    @MethodSource("aids")
    void thePlanNamesEveryUnit(DrawnAid drawn) {
        List<String> texts = PlanScene.layout(drawn).marks().stream().filter(Mark.Label.class::isInstance)
                .map(mark -> ((Mark.Label) mark).text()).toList();
        for (UnitPlan unit : drawn.siting().units()) {
            assertTrue(texts.stream().anyMatch(text -> text.equals(unit.id()) || text.startsWith(unit.id() + "  ")), unit.id() + texts);
        }
    }

    /** A text as wide and high as its letters, on a drawing of the usual size; letters of two texts must not lie on each other. */
    @ParameterizedTest
    @MethodSource("aids")
    void noTextLiesOnAnother(DrawnAid drawn) {
        for (Scene scene : scenes(drawn)) {
            List<Mark.Label> labels = Sheet.of(scene, WIDTH_MM, HEIGHT_MM).inside().stream().filter(Mark.Label.class::isInstance)
                    .map(Mark.Label.class::cast).toList();
            for (int i = 0; i < labels.size(); i++) {
                for (int j = i + 1; j < labels.size(); j++) {
                    double wide = Math.min(right(labels.get(i)), right(labels.get(j))) - Math.max(left(labels.get(i)), left(labels.get(j)));
                    double tall = Math.min(labels.get(i).at().y(), labels.get(j).at().y()) - Math.max(labels.get(i).at().y() - labels.get(i)
                            .sizeMm(), labels.get(j).at().y() - labels.get(j).sizeMm());
                    assertFalse(wide > 0.3 && tall > 0.3, scene.title() + ": '" + labels.get(i).text() + "' lies on '" + labels.get(j)
                            .text() + "'");
                }
            }
        }
    }

    private static double left(Mark.Label label) {
        double width = TextWidth.mm(label.text(), label.sizeMm());
        return switch (label.anchor()) {
            case START -> label.at().x();
            case MIDDLE -> label.at().x() - width / 2;
            case END -> label.at().x() - width;
        };
    }

    private static double right(Mark.Label label) {
        return left(label) + TextWidth.mm(label.text(), label.sizeMm());
    }

    /** The chart has a column for each unit with lights, whose boxes join without a gap from bottom to top. */
    @ParameterizedTest
    @MethodSource("aids")
    void theChartOfSignalsIsWithoutGaps(DrawnAid drawn) {
        if (!SignalScene.fits(drawn.siting())) {
            assertThrows(IllegalArgumentException.class, () -> SignalScene.of(drawn));
            return;
        }
        List<Mark.Path> boxes = SignalScene.of(drawn).marks().stream().filter(Mark.Path.class::isInstance).map(Mark.Path.class::cast)
                .filter(Mark.Path::closed).toList();
        var columns = boxes.stream().collect(Collectors.groupingBy(box -> box.points().get(0).x()));
        assertEquals(drawn.siting().units().stream().filter(unit -> !unit.edges().isEmpty()).count(), columns.size());
        for (List<Mark.Path> column : columns.values()) {
            for (int i = 1; i < column.size(); i++) {
                assertEquals(column.get(i - 1).points().get(2).y(), column.get(i).points().get(0).y(), 1e-12);
            }
        }
    }
}
