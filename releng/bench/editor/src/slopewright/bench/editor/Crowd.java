package slopewright.bench.editor;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

import slopewright.geometry.FramePoint;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.site.SiteFrame;
import slopewright.siting.site.SurveyPoints;

/** Writes the demo with many obstacles around its first runway end, invented, the same each time. */
final class Crowd {

    private static final double REACH_M = 12_000;
    private static final double WIDTH_M = 6_000;
    private static final double MOST_HEIGHT_M = 10;

    private Crowd() {
    }

    /** Writes a project with obstacles entered by hand. */
    static Path entered(Path demo, Path folder, int count) throws Exception {
        Project project = ProjectFile.load(demo);
        SiteFrame frame = SiteFrame.of(Projects.hosts(project).get(0));
        Random random = new Random(7);
        for (int i = 0; i < count; i++) {
            Obstacle obstacle = SlopewrightFactory.eINSTANCE.createObstacle();
            obstacle.setName("Tree " + i);
            obstacle.setHorizontalAccuracyM(0.5);
            obstacle.setVerticalAccuracyM(0.3);
            Place place = SlopewrightFactory.eINSTANCE.createPlace();
            frame.fromFrame(place(random), place);
            obstacle.setTopElevationM(place.getElevationM());
            obstacle.getPlaces().add(place);
            project.getAerodrome().getObstacles().add(obstacle);
        }
        Ids.assign(project);
        Path file = folder.resolve("entered-" + count + ".slopewright");
        Files.deleteIfExists(file);
        ProjectFile.save(project, file);
        return file;
    }

    /** Writes a project with a survey block beside it. */
    static Path block(Path demo, Path folder, int count) throws Exception {
        Project project = ProjectFile.load(demo);
        SiteFrame frame = SiteFrame.of(Projects.hosts(project).get(0));
        Random random = new Random(7);
        double[] north = new double[count];
        double[] east = new double[count];
        double[] elevationM = new double[count];
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        for (int i = 0; i < count; i++) {
            frame.fromFrame(place(random), place);
            north[i] = place.getLatitudeDeg();
            east[i] = place.getLongitudeDeg();
            elevationM[i] = place.getElevationM();
        }
        byte[] bytes = new SurveyPoints(false, north, east, elevationM, List.of()).bytes();
        Files.write(folder.resolve("points-" + count + ".swpoints"), bytes);
        SurveyBlock block = SlopewrightFactory.eINSTANCE.createSurveyBlock();
        block.setName("Trees");
        block.setKind("obstacles");
        block.setPath("points-" + count + ".swpoints");
        block.setSha256(SurveyPoints.sha256(bytes));
        block.setPointCount(count);
        block.setHorizontalAccuracyM(0.5);
        block.setVerticalAccuracyM(0.3);
        project.getSurveyBlocks().add(block);
        Ids.assign(project);
        Path file = folder.resolve("block-" + count + ".slopewright");
        Files.deleteIfExists(file);
        ProjectFile.save(project, file);
        return file;
    }

    private static FramePoint place(Random random) {
        return new FramePoint(-random.nextDouble() * REACH_M, (random.nextDouble() - 0.5) * WIDTH_M, random.nextDouble() * MOST_HEIGHT_M);
    }
}
