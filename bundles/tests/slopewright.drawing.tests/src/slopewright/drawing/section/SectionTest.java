package slopewright.drawing.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.drawing.DemoAids;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.TextWidth;
import slopewright.evaluation.AidRequests;
import slopewright.geometry.FramePoint;
import slopewright.model.AeroplaneGroup;
import slopewright.siting.SectorEdge;

/** The section for a window: what it shows of the demo and of every family, and that its size is bounded whatever there is to show. */
class SectionTest {

    private static final double WIDTH_MM = 240;
    private static final double HEIGHT_MM = 110;

    private static Stream<DrawnAid> aids() {
        return DemoAids.everyFamily().stream();
    }

    private static Section section(DrawnAid drawn) {
        return new Section(drawn, AidRequests.mostDemanding(drawn.host()), TextWidth::mm);
    }

    private static List<String> texts(List<Mark> marks) {
        return marks.stream().filter(Mark.Label.class::isInstance).map(mark -> ((Mark.Label) mark).text()).toList();
    }

    @ParameterizedTest
    @MethodSource("aids")
    void everyFamilyShowsItsEdgesUnitsAndSurface(DrawnAid drawn) {
        Section section = section(drawn);
        SectionWindow window = section.whole(WIDTH_MM, HEIGHT_MM);
        List<Mark> marks = section.marks(window);
        drawn.siting().units().forEach(unit -> assertTrue(window.holds(unit.place().alongM(), unit.place().heightM()), unit.id()));
        for (BeamEdge edge : section.edges()) {
            assertFalse(section.unitsOf(edge).isEmpty());
            assertTrue(marks.stream().anyMatch(mark -> endsAt(mark, edge.unit().place(), edge)), drawn.siting().family() + " " + edge);
        }
        Set<Double> shown = section.edges().stream().map(BeamEdge::angleDeg).collect(Collectors.toSet());
        drawn.siting().units().stream().flatMap(unit -> unit.edges().stream()).map(SectorEdge::angleDeg)
                .filter(angle -> angle < drawn.siting().slopeDeg() + 2.5)
                .forEach(angle -> assertTrue(shown.stream().anyMatch(ruleCase -> Math.abs(ruleCase - angle) < 1e-6), "edge at " + angle));
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
        Section section = section(drawn);
        for (SectionWindow window : List.of(section.whole(WIDTH_MM, HEIGHT_MM), section.near(WIDTH_MM, HEIGHT_MM),
                section.whole(190, 38))) {
            List<double[]> boxes = new ArrayList<>();
            for (Mark mark : section.marks(window)) {
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

    /** A line ends before a text and goes on behind it; an obstacle alone is drawn through whatever is written there. */
    @ParameterizedTest
    @MethodSource("aids")
    void noLineIsSeenBehindAText(DrawnAid drawn) {
        Section section = section(drawn);
        for (SectionWindow window : List.of(section.whole(WIDTH_MM, HEIGHT_MM), section.near(WIDTH_MM, HEIGHT_MM))) {
            List<Mark> marks = section.marks(window);
            for (int i = 0; i < marks.size(); i++) {
                if (marks.get(i) instanceof Mark.Label label) {
                    double[] box = box(window, label);
                    Rectangle2D letters = new Rectangle2D.Double(box[0] + 0.1, box[1] + 0.1, box[2] - box[0] - 0.2, box[3] - box[1] - 0.2);
                    boolean broken = false;
                    for (int k = i - 1; k >= 0 && !broken; k--) {
                        broken = marks.get(k) instanceof Mark.Path path && path.style().fill() == Ink.PAPER
                                && outline(window, path).contains(letters);
                        assertTrue(broken || !crosses(window, marks.get(k), letters), label.text());
                    }
                    marks.subList(i, marks.size()).forEach(later -> assertFalse(crosses(window, later, letters), label.text()));
                }
            }
        }
    }

    private static boolean crosses(SectionWindow window, Mark mark, Rectangle2D letters) {
        return mark instanceof Mark.Path path && !List.of(Ink.NONE, Ink.OBSTACLE, Ink.PENETRATION).contains(path.style().line())
                && path.points().size() <= 12 && IntStream.range(1, path.points().size()).anyMatch(i -> letters.intersectsLine(
                        window.xMm(path.points().get(i - 1).x()), window.yMm(path.points().get(i - 1).y()),
                        window.xMm(path.points().get(i).x()), window.yMm(path.points().get(i).y())));
    }

    private static Rectangle2D outline(SectionWindow window, Mark.Path path) {
        Rectangle2D outline = new Rectangle2D.Double(window.xMm(path.points().get(0).x()), window.yMm(path.points().get(0).y()), 0, 0);
        path.points().forEach(point -> outline.add(window.xMm(point.x()), window.yMm(point.y())));
        return outline;
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
        Section section = new Section(drawn, Optional.of(group), TextWidth::mm);
        assertEquals(drawn.siting().mehtM() - group.getEyeToWheelM(), section.wheelHeightM().orElseThrow(), 1e-9);
        assertEquals(drawn.siting().wheelClearanceM().orElseThrow(), section(drawn).wheelHeightM().orElseThrow(), 1e-9);
    }

    /** At every zoom and place the lines end near the window, so that a screen never gets coordinates that it cannot take. */
    @Test
    void linesAreCutToTheWindow() {
        Section section = section(DemoAids.drawn("PAPI 27"));
        SectionWindow window = new SectionWindow(-20, 10, -18, 10.5, 250, 120);
        for (Mark mark : section.marks(window)) {
            if (mark instanceof Mark.Path path && !path.closed()) {
                path.points().forEach(point -> assertTrue(Math.abs(window.xMm(point.x()) - 125) < 140 && Math.abs(window.yMm(point.y())
                        - 60) < 75, point.toString()));
            }
        }
    }
}
