package slopewright.drawing.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.drawing.DemoAids;
import slopewright.drawing.paint.SvgPainter;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.TextWidth;
import slopewright.evaluation.AidRequests;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.model.AeroplaneGroup;
import slopewright.model.Obstacle;
import slopewright.siting.SectorEdge;

/** The section for a window: what it shows of the demo and of every family, and that its size is bounded whatever there is to show. */
class SectionLiveTest {

    private static final Path EXPECTED = Path.of(System.getProperty("slopewright.root"),
            "bundles/tests/slopewright.drawing.tests/src/expected");
    private static final double WIDTH_MM = 240;
    private static final double HEIGHT_MM = 110;

    private static Stream<DrawnAid> aids() {
        return DemoAids.everyFamily().stream();
    }

    private static SectionLive live(DrawnAid drawn) {
        return new SectionLive(drawn, SectionObstacles.of(drawn), AidRequests.mostDemanding(drawn.host()), SectionWords.english());
    }

    private static List<String> texts(List<Mark> marks) {
        return marks.stream().filter(Mark.Label.class::isInstance).map(mark -> ((Mark.Label) mark).text()).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"whole", "near"})
    void theSceneOfTheDemoIsAsExpected(String extent) throws IOException {
        SectionLive live = live(DemoAids.drawn("PAPI 09"));
        SectionWindow window = extent.equals("whole") ? live.whole(WIDTH_MM, HEIGHT_MM) : live.near(WIDTH_MM, HEIGHT_MM);
        String svg = SvgPainter.paint(live.scene(window), 277, 190);
        Path file = EXPECTED.resolve("section-live-" + extent + ".svg");
        if (Boolean.getBoolean("slopewright.refresh")) {
            Files.writeString(file, svg);
        }
        assertEquals(Files.readString(file), svg);
    }

    @ParameterizedTest
    @MethodSource("aids")
    void everyFamilyShowsItsEdgesUnitsAndSurface(DrawnAid drawn) {
        SectionLive live = live(drawn);
        SectionWindow window = live.whole(WIDTH_MM, HEIGHT_MM);
        List<Mark> marks = live.marks(window);
        drawn.siting().units().forEach(unit -> assertTrue(window.holds(unit.place().alongM(), unit.place().heightM()), unit.id()));
        for (BeamEdge edge : live.edges()) {
            assertFalse(live.unitsOf(edge).isEmpty());
            assertTrue(marks.stream().anyMatch(mark -> endsAt(mark, edge.unit().place(), edge)), drawn.siting().family() + " " + edge);
        }
        Set<Double> shown = live.edges().stream().map(BeamEdge::angleDeg).collect(Collectors.toSet());
        drawn.siting().units().stream().flatMap(unit -> unit.edges().stream()).map(SectorEdge::angleDeg)
                .filter(angle -> angle < drawn.siting().slopeDeg() + 2.5)
                .forEach(angle -> assertTrue(shown.stream().anyMatch(one -> Math.abs(one - angle) < 1e-6), "edge at " + angle));
        drawn.siting().surface().ifPresent(plan -> assertTrue(texts(marks).stream().anyMatch(text -> text.startsWith("obstacle surface"))));
    }

    private static boolean endsAt(Mark mark, FramePoint lens, BeamEdge edge) {
        if (!(mark instanceof Mark.Path path) || path.closed() || path.style().line() != Ink.UNIT) {
            return false;
        }
        ScenePoint start = path.points().get(0);
        return Math.abs(path.points().get(1).x() - lens.alongM()) < 0.01 && Math.abs(start.y() - edge.heightM(start.x())) < 0.01;
    }

    @ParameterizedTest
    @MethodSource("aids")
    void noTextLiesOnAnother(DrawnAid drawn) {
        SectionLive live = live(drawn);
        for (SectionWindow window : List.of(live.whole(WIDTH_MM, HEIGHT_MM), live.near(WIDTH_MM, HEIGHT_MM), live.whole(190, 38))) {
            List<double[]> boxes = new ArrayList<>();
            for (Mark mark : live.marks(window)) {
                if (mark instanceof Mark.Label label) {
                    double[] box = box(window, label);
                    assertTrue(box[0] >= 0 && box[2] <= window.widthMm() && box[1] >= 0 && box[3] <= window.heightMm(), label.text());
                    assertTrue(boxes.stream().noneMatch(one -> one[0] < box[2] && box[0] < one[2] && one[1] < box[3] && box[1] < one[3]),
                            label.text());
                    boxes.add(box);
                }
            }
        }
    }

    private static double[] box(SectionWindow window, Mark.Label label) {
        double width = TextWidth.mm(label.text(), label.sizeMm());
        double x = window.xMm(label.at().x());
        double left = switch (label.anchor()) {
            case START -> x;
            case MIDDLE -> x - width / 2;
            case END -> x - width;
        };
        double middle = window.yMm(label.at().y());
        return new double[] {left, middle - label.sizeMm() / 2, left + width, middle + label.sizeMm() / 2};
    }

    @Test
    void theWheelsAreAsFarBelowTheEyeAsTheGroupSays() {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        AeroplaneGroup group = drawn.host().getRegularGroups().get(0);
        SectionLive live = new SectionLive(drawn, SectionObstacles.of(drawn), Optional.of(group), SectionWords.english());
        assertEquals(drawn.siting().eyeHeightM() - group.getEyeToWheelM(), live.wheelHeightM().orElseThrow(), 1e-9);
        SectionLive most = live(drawn);
        assertEquals(drawn.siting().wheelClearanceM().orElseThrow(), most.wheelHeightM().orElseThrow(), 1e-9);
    }

    @Test
    void obstaclesStandAgainstTheSurfaceAsTheRulesCompareThem() {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        SectionObstacles obstacles = SectionObstacles.of(drawn);
        for (SectionObstacle one : obstacles.worstFirst()) {
            Obstacle obstacle = drawn.obstacles().stream().filter(each -> each.getId().equals(one.id())).findFirst().orElseThrow();
            Optional<Penetration> expected = SurveyedShape.of(obstacle, drawn.frame()).compare(drawn.siting().surface().orElseThrow()
                    .geometry());
            assertEquals(expected, one.compared());
        }
        List<Double> excess = obstacles.worstFirst().stream().map(SectionObstacle::excessM).toList();
        assertEquals(excess.stream().sorted((one, other) -> Double.compare(other, one)).toList(), excess);
    }

    /** A mast of 40 m stands through the surface of PAPI 09 1000 m before the threshold; one 400 m to the left stands beside it. */
    @Test
    void anObstacleThroughTheSurfaceIsCrossedAndSaysSoAndOneBesideIsHollow() {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        List<SectionObstacles.Surveyed> surveyed = List.of(mast("through", -1000, 20, 40), mast("besides", -1000, -400, 40));
        SectionObstacles obstacles = SectionObstacles.of(surveyed, drawn.siting().surface().map(plan -> plan.geometry()));
        assertTrue(obstacles.worstFirst().get(0).isThrough());
        assertFalse(obstacles.worstFirst().get(1).isInside());
        SectionLive live = new SectionLive(drawn, obstacles, Optional.empty(), SectionWords.english());
        List<Mark> marks = live.marks(live.whole(WIDTH_MM, HEIGHT_MM));
        String excess = SectionWords.english().length(obstacles.worstExcessM().orElseThrow());
        assertTrue(texts(marks).contains("through, 40.0 m, 20.0 m right, through by " + excess), texts(marks).toString());
        assertTrue(texts(marks).contains("besides, 40.0 m, 400.0 m left, beside the surface"), texts(marks).toString());
        assertEquals(3, marks.stream().filter(mark -> mark.elementId().equals("through") && mark instanceof Mark.Path path && path.style()
                .line() == Ink.PENETRATION).count(), "a stem and a cross of two strokes");
        assertTrue(marks.stream().anyMatch(mark -> mark.elementId().equals("besides") && mark instanceof Mark.Path path && path.closed()
                && path.style().fill() == Ink.PAPER), "a hollow symbol");
    }

    private static SectionObstacles.Surveyed mast(String id, double alongM, double rightM, double heightM) {
        return new SectionObstacles.Surveyed(id, id, new SurveyedShape(SurveyedShape.Kind.POINT, List.of(new FramePoint(alongM, rightM,
                heightM)), 0, 0));
    }

    @Test
    void tenThousandObstaclesMakeNoMoreMarksThanAHundred() {
        DrawnAid drawn = DemoAids.drawn("PAPI 09");
        List<SectionObstacles.Surveyed> surveyed = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) {
            surveyed.add(mast("m" + i, -100 - i % 2500, i % 400 - 200, i % 37));
        }
        SectionObstacles obstacles = SectionObstacles.of(surveyed, drawn.siting().surface().map(plan -> plan.geometry()));
        assertEquals(10_000, obstacles.worstFirst().size());
        SectionLive live = new SectionLive(drawn, obstacles, Optional.empty(), SectionWords.english());
        List<Mark> marks = live.marks(live.whole(WIDTH_MM, HEIGHT_MM));
        assertTrue(marks.size() < 600, marks.size() + " marks");
        assertTrue(texts(marks).stream().anyMatch(text -> text.startsWith("10000 obstacles")), texts(marks).toString());
        assertTrue(marks.stream().filter(mark -> mark instanceof Mark.Path).mapToInt(mark -> ((Mark.Path) mark).points().size()).max()
                .orElseThrow() < 2000);
    }

    /** At every zoom and place the lines end near the window, so that a screen never gets coordinates that it can not take. */
    @Test
    void linesAreCutToTheWindow() {
        SectionLive live = live(DemoAids.drawn("PAPI 27"));
        SectionWindow window = new SectionWindow(-20, 10, -18, 10.5, 250, 120);
        for (Mark mark : live.marks(window)) {
            if (mark instanceof Mark.Path path && !path.closed()) {
                path.points().forEach(point -> assertTrue(Math.abs(window.xMm(point.x()) - 125) < 140 && Math.abs(window.yMm(point.y())
                        - 60) < 75, point.toString()));
            }
        }
    }
}
