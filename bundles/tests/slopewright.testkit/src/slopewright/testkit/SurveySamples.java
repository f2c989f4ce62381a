package slopewright.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import slopewright.geometry.FramePoint;
import slopewright.model.ApproachHost;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.siting.site.SiteFrame;
import slopewright.siting.site.SurveyPoints;

/** Blocks of survey points for tests. */
public final class SurveySamples {

    private SurveySamples() {
    }

    /**
     * Writes points into a file beside a project and adds the block that names it.
     *
     * @param project a project that was loaded from, or saved in, a folder
     * @param host    the runway end or approach direction in whose frame the points are given
     * @param name    name of the block and of its file
     * @param points  the points
     * @return the block
     */
    public static SurveyBlock add(Project project, ApproachHost host, String name, FramePoint... points) {
        SurveyBlock block = block(project, host, name, points);
        project.getSurveyBlocks().add(block);
        Ids.assign(project);
        return block;
    }

    /** Writes points as above and returns a block that names them and is not in the project yet. */
    public static SurveyBlock block(Project project, ApproachHost host, String name, FramePoint... points) {
        SiteFrame frame = SiteFrame.of(host);
        double[] north = new double[points.length];
        double[] east = new double[points.length];
        double[] elevationM = new double[points.length];
        for (int i = 0; i < points.length; i++) {
            Place place = SlopewrightFactory.eINSTANCE.createPlace();
            frame.fromFrame(points[i], place);
            north[i] = frame.isPlane() ? place.getNorthM() : place.getLatitudeDeg();
            east[i] = frame.isPlane() ? place.getEastM() : place.getLongitudeDeg();
            elevationM[i] = place.getElevationM();
        }
        byte[] bytes = new SurveyPoints(frame.isPlane(), north, east, elevationM, List.of()).bytes();
        Path folder = ProjectFile.folder(project).orElseThrow();
        String file = name + "." + SurveyPoints.EXTENSION;
        try {
            Files.write(folder.resolve(file), bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        SurveyBlock block = SlopewrightFactory.eINSTANCE.createSurveyBlock();
        block.setHorizontalAccuracyM(1e-9);
        block.setVerticalAccuracyM(1e-9);
        block.setName(name);
        block.setPath(file);
        block.setSha256(SurveyPoints.sha256(bytes));
        block.setPointCount(points.length);
        return block;
    }
}
