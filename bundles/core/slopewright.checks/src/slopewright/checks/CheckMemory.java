package slopewright.checks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import slopewright.checks.field.ObstacleField;
import slopewright.checks.field.SurveyField;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;
import slopewright.siting.site.SurveyPoints;

/**
 * What one check of a project leaves for the next: obstacles and survey points in their frames, and what they were compared with. A
 * check with a memory says the same as one without. It belongs to one project, the same objects each time; what has changed since the
 * last check must be named. Not for several threads.
 */
public final class CheckMemory {

    private static final int MOST_FRAMES = 64;

    private record SurveyFile(Path folder, String path, String sha256, long bytes, long time) {
    }

    private record SurveyIn(SurveyFile file, SiteFrame frame, double horizontalM, double verticalM) {
    }

    private final Map<SiteFrame, ObstacleField> obstacles = new HashMap<>();
    private final Map<SurveyFile, SurveyPoints> points = new HashMap<>();
    private final Map<SurveyIn, SurveyField> surveys = new HashMap<>();

    /**
     * Forgets what rests on elements that have changed.
     *
     * @param project the project as it is now
     * @param changed ids of the elements that were changed, added or removed, those that hold added or removed ones among them
     */
    public void forget(Project project, Set<String> changed) {
        List<Obstacle> all = obstacles(project);
        boolean site = changed.contains(project.getId())
                || project.getAerodrome() == null || changed.contains(project.getAerodrome().getId());
        if (site || all.stream().anyMatch(obstacle -> isChanged(obstacle, changed))) {
            obstacles.replaceAll((frame, field) -> field.after(all, obstacle -> isChanged(obstacle, changed)));
        }
    }

    private static boolean isChanged(Obstacle obstacle, Set<String> changed) {
        return changed.contains(obstacle.getId()) || obstacle.getPlaces().stream().anyMatch(place -> changed.contains(place.getId()));
    }

    private static List<Obstacle> obstacles(Project project) {
        return project.getAerodrome() == null ? List.of() : project.getAerodrome().getObstacles();
    }

    /** Returns the obstacles of a project in a frame. */
    ObstacleField obstacles(Project project, SiteFrame frame) {
        if (obstacles.size() > MOST_FRAMES) {
            obstacles.clear();
        }
        return obstacles.computeIfAbsent(frame, where -> ObstacleField.of(obstacles(project), where));
    }

    /**
     * Returns the points of a survey block in a frame.
     *
     * @throws SitingException where they can not be read; the message names block and reason
     */
    SurveyField survey(Project project, SurveyBlock block, SiteFrame frame) {
        Path folder = ProjectFile.folder(project).orElseThrow(() -> new SitingException("the project has no file yet, so there is no"
                + " folder beside which " + Projects.label(block) + " could lie"));
        SurveyFile file = file(folder, block);
        if (!points.containsKey(file)) {
            points.keySet().removeIf(other -> file.path().equals(other.path()));
            surveys.keySet().removeIf(other -> file.path().equals(other.file().path()));
            points.put(file, SurveyPoints.read(block, folder));
        }
        SurveyIn wanted = new SurveyIn(file, frame, orZero(block.getHorizontalAccuracyM()), orZero(block.getVerticalAccuracyM()));
        if (surveys.size() > MOST_FRAMES) {
            surveys.clear();
        }
        return surveys.computeIfAbsent(wanted,
                in -> new SurveyField(points.get(file), in.frame(), in.horizontalM(), in.verticalM()));
    }

    /** Tells a file that was replaced from the one that was read: by its size and time, without reading it. */
    private static SurveyFile file(Path folder, SurveyBlock block) {
        String path = String.valueOf(block.getPath());
        try {
            Path file = folder.resolve(path);
            return new SurveyFile(folder, path, String.valueOf(block.getSha256()), Files.size(file),
                    Files.getLastModifiedTime(file).toMillis());
        } catch (IOException | RuntimeException e) {
            return new SurveyFile(folder, path, String.valueOf(block.getSha256()), -1, -1);
        }
    }

    private static double orZero(Double number) {
        return number == null ? 0 : number;
    }
}
