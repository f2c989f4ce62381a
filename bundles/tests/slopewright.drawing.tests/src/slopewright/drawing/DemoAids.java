package slopewright.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.drawing.scene.DrawnAid;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.geometry.FramePoint;
import slopewright.messages.MessageRenderer;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.site.SiteFrame;
import slopewright.testkit.DemoProjects;

/** The approach aids of the demo, ready to be drawn. */
public final class DemoAids {

    private DemoAids() {
    }

    /** Returns an aid of the demo. */
    public static DrawnAid drawn(String name) {
        return drawn(DemoProjects.load(DemoProjects.GOOD), name);
    }

    /** Returns an aid of a project. */
    public static DrawnAid drawn(Project project, String name) {
        return drawn(project, name, Locale.ENGLISH);
    }

    /** Returns an aid of a project, lettered in a language. */
    public static DrawnAid drawn(Project project, String name, Locale language) {
        return DrawnAid.of(ProjectEvaluation.of(project, Optional.empty()).aid(DemoProjects.aid(project, name)),
                MessageRenderer.of(language));
    }

    /** Returns one indicator of every family. */
    public static List<DrawnAid> everyFamily() {
        return ProjectEvaluation.of(DemoProjects.load(DemoProjects.EVERY_FAMILY), Optional.empty()).aids().stream()
                .map(evaluation -> DrawnAid.of(evaluation, MessageRenderer.of(Locale.ENGLISH))).toList();
    }

    /** Puts an obstacle of no inaccuracy into a project, at a place in the frame of an aid; one without a height has no top. */
    public static Obstacle mast(Project project, String aid, String name, double alongM, double rightM, Double heightM) {
        SiteFrame frame = SiteFrame.of(Projects.host(DemoProjects.aid(project, aid)).orElseThrow());
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        frame.fromFrame(new FramePoint(alongM, rightM, 0), place);
        place.setElevationM(null);
        Obstacle mast = SlopewrightFactory.eINSTANCE.createObstacle();
        mast.setName(name);
        mast.setKind(ObstacleKind.POINT);
        mast.setTopElevationM(heightM == null ? null : Double.valueOf(frame.originElevationM() + heightM));
        mast.getPlaces().add(place);
        mast.setHorizontalAccuracyM(1e-9);
        mast.setVerticalAccuracyM(1e-9);
        project.getAerodrome().getObstacles().add(mast);
        Ids.assign(project);
        return mast;
    }
}
