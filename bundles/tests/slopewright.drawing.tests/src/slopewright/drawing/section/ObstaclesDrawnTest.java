package slopewright.drawing.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.drawing.DemoAids;
import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.TextWidth;
import slopewright.geometry.FramePoint;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;
import slopewright.testkit.SurveySamples;

/**
 * Everything that stands there is seen in plan and section, on screen and paper, as it was compared. The obstacle surface of PAPI 09 rises
 * from 60 m before the threshold at 2°25' - 0.57° = 1.84667°, whose tangent is 0.0322416: the setting of unit A less the angle of the
 * surface below it.
 */
class ObstaclesDrawnTest {

    private static final double RISE = 0.0322416;
    private static final String AID = "PAPI 09";

    @TempDir
    private Path folder;
    private Project project;

    @BeforeEach
    void open() {
        project = DemoProjects.load(DemoProjects.copy(DemoProjects.GOOD, folder));
    }

    private static List<Mark> screen(DrawnAid drawn) {
        Section section = new Section(drawn, Optional.empty(), TextWidth::mm);
        return section.marks(section.whole(240, 110));
    }

    private static List<String> texts(List<Mark> marks) {
        return marks.stream().filter(Mark.Label.class::isInstance).map(mark -> ((Mark.Label) mark).text()).toList();
    }

    private static List<Mark.Path> paths(List<Mark> marks, String id, Ink ink) {
        return marks.stream().filter(mark -> mark.elementId().equals(id) && mark instanceof Mark.Path).map(Mark.Path.class::cast)
                .filter(path -> path.style().line() == ink).toList();
    }

    /** Returns whether two strokes of a cross meet in the middle of each at a place. */
    private static boolean isCrossedAt(List<Mark.Path> paths, double x, double y, double withinM) {
        return paths.stream().filter(path -> path.points().size() == 2).filter(path -> {
            ScenePoint from = path.points().get(0);
            ScenePoint to = path.points().get(1);
            return Math.abs((from.x() + to.x()) / 2 - x) < withinM && Math.abs((from.y() + to.y()) / 2 - y) < withinM;
        }).count() >= 2;
    }

    private SurveyBlock block(FramePoint... points) {
        return SurveySamples.add(project, Projects.host(DemoProjects.aid(project, AID)).orElseThrow(), "scan", points);
    }

    /** 1000 m before the threshold the surface is 940 · 0.0322416 = 30.31 m high, so a mast of 40 m stands 9.69 m through it. */
    @Test
    void anObstacleThroughTheSurfaceIsCrossedAndSaysByHowMuchAndOneBesideIsHollow() {
        Obstacle through = DemoAids.mast(project, AID, "Through", -1000, 20, 40.0);
        Obstacle beside = DemoAids.mast(project, AID, "Beside", -1000, -400, 40.0);
        DrawnAid drawn = DemoAids.drawn(project, AID);
        List<Mark> marks = screen(drawn);
        assertTrue(texts(marks).contains("Through, 40.0 m, 20.0 m right, through by 9.69 m"), texts(marks).toString());
        assertTrue(texts(marks).contains("Beside, 40.0 m, 400.0 m left, beside the surface"), texts(marks).toString());
        assertTrue(isCrossedAt(paths(marks, through.getId(), Ink.PENETRATION), -1000, 40, 0.01));
        assertTrue(marks.stream().anyMatch(mark -> mark.elementId().equals(beside.getId()) && mark instanceof Mark.Path path
                && path.closed() && path.style().fill() == Ink.PAPER), "a hollow symbol");
        Scene plan = PlanScene.surface(drawn);
        assertTrue(texts(plan.marks()).contains("Through, 40.0 m, through by 9.69 m"), texts(plan.marks()).toString());
        assertTrue(isCrossedAt(paths(plan.marks(), through.getId(), Ink.PENETRATION), -1000, -20, 0.01));
        assertTrue(plan.captions().contains("Governing: Through, its survey accuracy added, stands 9.69 m above the obstacle surface, "
                + "1000 m before the threshold."), plan.captions().toString());
    }

    /** 1200 m before the threshold the surface is 1140 · 0.0322416 = 36.755 m high; the point stands 22.5 m higher. */
    @Test
    void aSurveyPointThroughTheSurfaceIsSeenInPlanAndSection() {
        double height = 1140 * RISE + 22.5;
        SurveyBlock scan = block(new FramePoint(-1200, 30, height), new FramePoint(-1400, 0, 10), new FramePoint(-1500, 10, 12));
        DrawnAid drawn = DemoAids.drawn(project, AID);
        Scene section = SectionScene.of(drawn);
        Scene plan = PlanScene.surface(drawn);
        for (List<Mark> marks : List.of(screen(drawn), section.marks())) {
            assertTrue(texts(marks).stream().anyMatch(text -> text.startsWith("scan, point") && text.endsWith("through by 22.50 m")),
                    texts(marks).toString());
            assertTrue(isCrossedAt(paths(marks, scan.getId(), Ink.PENETRATION), -1200, height, 0.01));
        }
        assertTrue(texts(plan.marks()).stream().anyMatch(text -> text.startsWith("scan, point") && text.endsWith("through by 22.50 m")),
                texts(plan.marks()).toString());
        assertTrue(isCrossedAt(paths(plan.marks(), scan.getId(), Ink.PENETRATION), -1200, -30, 0.01));
        for (Scene scene : List.of(section, plan, PlanScene.layout(drawn), SectionScene.near(drawn))) {
            assertTrue(scene.captions().stream().anyMatch(line -> line.startsWith("Governing: scan, point") && line.contains(
                    "stands 22.50 m above the obstacle surface, 1200 m before the threshold")), scene.captions().toString());
            assertTrue(scene.captions().stream().anyMatch(line -> line.startsWith("scan: 3 survey points, 3 within the obstacle surface, "
                    + "1 above it")), scene.captions().toString());
        }
    }

    /** A point 7 km out lies beyond what is drawn of obstacles below the surface, 6 km, but it stands through it. */
    @Test
    void whatStandsThroughIsNeverBeyondTheEdge() {
        double height = (7000 - 60) * RISE + 5;
        Obstacle far = DemoAids.mast(project, AID, "Far hill", -7000, 0, height);
        List<Mark> marks = SectionScene.of(DemoAids.drawn(project, AID)).marks();
        assertTrue(isCrossedAt(paths(marks, far.getId(), Ink.PENETRATION), -7000, height, 0.01), texts(marks).toString());
    }

    /** One within the surface and one just beside it, of which nobody says how accurately they were surveyed, are not passed over. */
    @Test
    void whatMayStandThroughIsNamedInWords() {
        DemoAids.mast(project, AID, "Low mast", -1500, 40, 1.0).setVerticalAccuracyM(null);
        DemoAids.mast(project, AID, "Mast beside", -1500, 390, 200.0).setHorizontalAccuracyM(null);
        DrawnAid drawn = DemoAids.drawn(project, AID);
        for (Scene scene : List.of(PlanScene.surface(drawn), SectionScene.of(drawn))) {
            assertTrue(scene.captions().contains("Not compared: it is not said how accurately Low mast was surveyed and it is not said how "
                    + "accurately Mast beside was surveyed."), scene.captions().toString());
        }
    }

    @Test
    void anObstacleWithoutATopIsDrawnInPlanAndNamedInWords() {
        Obstacle topless = DemoAids.mast(project, AID, "Unknown mast", -1500, 40, null);
        DrawnAid drawn = DemoAids.drawn(project, AID);
        String words = "Not compared: the top elevation of obstacle Unknown mast is missing.";
        Scene plan = PlanScene.surface(drawn);
        assertTrue(plan.marks().stream().anyMatch(mark -> mark.elementId().equals(topless.getId()) && mark instanceof Mark.Path));
        assertTrue(plan.captions().contains(words), plan.captions().toString());
        assertTrue(SectionScene.of(drawn).captions().contains(words));
        assertTrue(SectionScene.of(drawn).marks().stream().anyMatch(mark -> mark.elementId().equals(topless.getId())));
        assertTrue(texts(screen(drawn)).contains(words), texts(screen(drawn)).toString());
    }

    @Test
    void withoutAnySurveyTheDrawingSaysThatNobodyKnows() {
        project.getAerodrome().getObstacles().clear();
        DrawnAid drawn = DemoAids.drawn(project, AID);
        for (Scene scene : List.of(SectionScene.of(drawn), PlanScene.surface(drawn), PlanScene.layout(drawn))) {
            assertTrue(scene.captions().contains("No obstacles and no survey points are entered: nobody knows what stands here."),
                    scene.captions().toString());
        }
    }

    @Test
    void tenThousandObstaclesMakeNoMoreMarksThanAHundred() {
        for (int i = 0; i < 10_000; i++) {
            DemoAids.mast(project, AID, "m" + i, -100 - i % 2500, i % 400 - 200, i % 37 * 0.5);
        }
        DrawnAid drawn = DemoAids.drawn(project, AID);
        List<Mark> marks = screen(drawn);
        assertTrue(marks.size() < 600, marks.size() + " marks");
        assertTrue(texts(marks).stream().anyMatch(text -> text.contains(" obstacles: 100 drawn singly")), texts(marks).toString());
        assertTrue(marks.stream().filter(mark -> mark instanceof Mark.Path).mapToInt(mark -> ((Mark.Path) mark).points().size()).max()
                .orElseThrow() < 2000);
        Scene plan = PlanScene.surface(drawn);
        assertTrue(plan.captions().stream().anyMatch(line -> line.contains("only the 40 that matter most are named")));
        assertTrue(plan.marks().size() < 3000, plan.marks().size() + " marks");
    }

    /** The higher of two points on each other is the one that is drawn; every place with a point through the surface is crossed. */
    @Test
    void ofManySurveyPointsTheHighestAreDrawnAndAllPlacesThroughTheSurface() {
        List<FramePoint> points = new ArrayList<>();
        for (int i = 0; i < 20_000; i++) {
            points.add(new FramePoint(-200 - i * 0.05, i % 90 - 45, i % 3));
        }
        double surface = 840 * RISE;
        for (int i = 0; i < 10; i++) {
            points.add(new FramePoint(-900 - i * 40, 0, surface + 15 + i));
        }
        SurveyBlock scan = block(points.toArray(FramePoint[]::new));
        DrawnAid drawn = DemoAids.drawn(project, AID);
        List<Mark> marks = screen(drawn);
        assertTrue(marks.size() < 600, marks.size() + " marks");
        for (int i = 0; i < 10; i++) {
            int at = i;
            assertTrue(isCrossedAt(paths(marks, scan.getId(), Ink.PENETRATION), -900 - at * 40, surface + 15 + at, 0.01), "point " + at);
        }
        List<ScenePoint> outline = paths(marks, scan.getId(), Ink.OBSTACLE).stream().flatMap(path -> path.points().stream())
                .filter(point -> point.x() < -250 && point.x() > -850).toList();
        assertFalse(outline.isEmpty());
        outline.forEach(point -> assertEquals(2, point.y(), 1e-3, "the highest of the points that lie on each other"));
    }

    @Test
    void everythingIsSaidInGermanToo() {
        DemoAids.mast(project, AID, "Mast", -1000, 20, 40.0);
        DemoAids.mast(project, AID, "Turm", -1500, 40, null);
        block(new FramePoint(-1400, 0, 10));
        DrawnAid drawn = DemoAids.drawn(project, AID, Locale.GERMAN);
        List<String> said = new ArrayList<>(texts(screen(drawn)));
        for (Scene scene : List.of(SectionScene.of(drawn), SectionScene.near(drawn), PlanScene.layout(drawn), PlanScene.detail(drawn),
                PlanScene.surface(drawn))) {
            said.add(scene.title());
            said.addAll(scene.captions());
            said.addAll(texts(scene.marks()));
            scene.legend().forEach(entry -> said.add(entry.text()));
        }
        String all = String.join("\n", said);
        assertFalse(all.contains("drawing."), all);
        assertFalse(all.matches("(?s).*\\b(the|surface|obstacle|obstacles|threshold|above|below|points|governing|wheels|level of)\\b.*"),
                all);
        assertTrue(all.contains("Mast, 40,0 m, 20,0 m rechts, durchstößt um 9,69 m"), all);
        assertTrue(all.contains("Maßgebend: Mast steht"), all);
        assertTrue(all.contains("Nicht verglichen: "), all);
    }
}
