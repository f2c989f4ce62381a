package slopewright.drawing.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

import slopewright.drawing.DemoAids;
import slopewright.drawing.View;
import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.pilot.PilotScene;
import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.geometry.FramePoint;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.site.SiteFrame;
import slopewright.testkit.DemoProjects;
import slopewright.testkit.SurveySamples;

/** A drawing that leaves an obstacle out says so: silence would be taken for "nothing stands there". */
class OmittedObstaclesTest {

    private static final String AID = "PAPI 09";

    @TempDir
    private Path folder;
    private Project project;

    @BeforeEach
    void open() {
        project = DemoProjects.load(DemoProjects.copy(DemoProjects.GOOD, folder));
    }

    private Scene draw(View view) {
        DrawnAid drawn = DemoAids.drawn(project, AID);
        return view.scene(drawn, PaperArea.usual(), PilotScene.eyeOnSlope(drawn, 1500), Daylight.DUSK);
    }

    private static Stream<ScenePoint> places(Mark mark) {
        return mark instanceof Mark.Path path ? path.points().stream()
                : Stream.of(mark instanceof Mark.Disc disc ? disc.centre() : ((Mark.Label) mark).at());
    }

    /**
     * Whatever stands there is found in every drawing: as a mark with a place in its frame, or by name under it, or counted among all. The
     * names are put in at places all over the site, and the frame is asked here anew, not the code that draws. A circuit is no
     * ground, nor is the equipment.
     */
    @ParameterizedTest
    @EnumSource(value = View.class, mode = Mode.EXCLUDE, names = {"DIRECTIONS", "CIRCUIT", "LIGHT", "MOUNTING"})
    void nothingIsLeftOutWithoutAWord(View view) {
        project.getAerodrome().getObstacles().clear();
        double[][] spots = {{-300, 10}, {-1500, 0}, {-3000, 900}, {-9000, 0}, {-20_000, 3000}, {400, 60}, {4000, 0}};
        for (double[] spot : spots) {
            DemoAids.mast(project, AID, "mast at " + spot[0] + " " + spot[1], spot[0], spot[1], 12.0);
            Scene scene = draw(view);
            Obstacle mast = project.getAerodrome().getObstacles().get(0);
            boolean seen = scene.marks().stream().filter(mark -> mark.elementId().equals(mast.getId())).flatMap(
                    OmittedObstaclesTest::places).anyMatch(at -> at.x() >= scene.minX() && at.x() <= scene.maxX() && at.y() >= scene.minY()
                            && at.y() <= scene.maxY());
            String said = String.join(" ", scene.captions());
            boolean all = said.contains("Obstacles are not drawn here, 1 is entered");
            boolean named = said.matches(".*Not drawn, [^.]*" + mast.getName().replace(".", "\\.") + ".*");
            assertEquals(1, Stream.of(seen, all, named).filter(Boolean::booleanValue).count(), view + " " + mast.getName() + ": " + said);
            project.getAerodrome().getObstacles().clear();
        }
    }

    @Test
    void whatStandsThroughTheSurfaceIsSaidSoWhereItIsNotDrawn() {
        DemoAids.mast(project, AID, "Far hill", -7000, 0, 400.0);
        for (Scene scene : List.of(draw(View.PLAN), draw(View.NEAR))) {
            assertTrue(scene.captions().stream().anyMatch(line -> line.startsWith("Not drawn, outside the part that is shown: Far hill "
                    + "(through the surface)")), scene.captions().toString());
        }
        assertFalse(String.join(" ", draw(View.SURFACE).captions()).contains("Far hill (through"), "it is drawn there");
    }

    @Test
    void anObstacleWithoutATopOrAPlaceIsNeverLost() {
        DemoAids.mast(project, AID, "Topless", -20_000, 0, null);
        Obstacle nowhere = SlopewrightFactory.eINSTANCE.createObstacle();
        nowhere.setName("Nowhere");
        nowhere.setTopElevationM(120.0);
        project.getAerodrome().getObstacles().add(nowhere);
        Ids.assign(project);
        for (View view : Set.of(View.PLAN, View.SURFACE, View.SECTION, View.NEAR)) {
            String said = String.join(" ", draw(view).captions());
            assertTrue(said.contains("Topless (top not known)"), view + ": " + said);
            assertTrue(said.contains("Not drawn, no place is known here: Nowhere."), view + ": " + said);
        }
    }

    /** More than 300 m beside the approach a section has nothing; an obstacle whose top is higher than the paper is drawn without it. */
    @Test
    void aSectionSaysWhatStandsBesideAndWhatIsCut() {
        DemoAids.mast(project, AID, "Side tower", -1000, 2500, 30.0);
        DemoAids.mast(project, AID, "Tall tower", -1000, -400, 5000.0);
        String said = String.join(" ", draw(View.SECTION).captions());
        assertTrue(said.contains("Not drawn, more than 300 m beside the obstacle surface or the approach: Sallow copse and Side tower."),
                said);
        assertTrue(said.contains("Higher than the part that is shown, the top is not drawn: Tall tower."), said);
        String german = String.join(" ", SectionScene.of(DemoAids.drawn(project, AID, Locale.GERMAN)).captions());
        assertTrue(german.contains("Nicht gezeichnet, mehr als 300 m neben der Hindernisfreifl\u00e4che oder dem Anflug: Sallow copse und "
                + "Side tower."), german);
    }

    /** Two of three points lie outside the layout; the one at 7 km stands through the surface. */
    @Test
    void surveyPointsOutsideAreCounted() {
        SurveySamples.add(project, Projects.host(DemoProjects.aid(project, AID)).orElseThrow(), "scan", new FramePoint(100, 5, 1),
                new FramePoint(-7000, 0, 400), new FramePoint(-3000, 100, 5));
        String said = String.join(" ", draw(View.PLAN).captions());
        assertTrue(said.contains("scan: 2 survey points lie outside the part that is shown, 1 of them above the obstacle surface."), said);
    }

    /** A power line whose ends both stand outside crosses the layout 100 m behind the threshold, from 2 km left to 2 km right. */
    @Test
    void aLineThatCrossesThePlanIsDrawn() {
        SiteFrame frame = SiteFrame.of(Projects.host(DemoProjects.aid(project, AID)).orElseThrow());
        Obstacle line = SlopewrightFactory.eINSTANCE.createObstacle();
        line.setName("Crossing line");
        line.setKind(ObstacleKind.LINE);
        for (double right : new double[] {-2000, 2000}) {
            Place place = SlopewrightFactory.eINSTANCE.createPlace();
            frame.fromFrame(new FramePoint(100, right, 0), place);
            place.setElevationM(frame.originElevationM() + 3);
            line.getPlaces().add(place);
        }
        project.getAerodrome().getObstacles().add(line);
        Ids.assign(project);
        DrawnAid drawn = DemoAids.drawn(project, AID);
        Set<String> ids = new TreeSet<>(PlanScene.layout(drawn).marks().stream().map(Mark::elementId).toList());
        assertTrue(ids.contains(line.getId()), PlanScene.layout(drawn).captions().toString());
    }
}
