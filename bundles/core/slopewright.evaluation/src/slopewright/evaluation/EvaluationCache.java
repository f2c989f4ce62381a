package slopewright.evaluation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import slopewright.evaluation.obstacles.ObstacleField;
import slopewright.evaluation.obstacles.SurveyField;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;
import slopewright.siting.site.SurveyPoints;

/**
 * What one evaluation of a project leaves for the next: obstacles and survey points in their frames, and what they were compared with. An
 * evaluation with a cache says the same as one without. It belongs to one project, the same objects each time; what has changed since the
 * last evaluation must be named. Not for several threads.
 */
public final class EvaluationCache {

    private static final int MOST_FRAMES = 64;

    private record SurveyFile(Path folder, String path, String sha256, long bytes, long time) {
    }

    private record SurveyIn(SurveyFile file, SiteFrame frame, double horizontalM, double verticalM) {
    }

    private final Map<SiteFrame, ObstacleField> obstacles = new HashMap<>();
    private final Map<SiteFrame, Surroundings> surroundings = new HashMap<>();
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
            surroundings.clear();
        }
    }

    private static boolean isChanged(Obstacle obstacle, Set<String> changed) {
        return changed.contains(obstacle.getId()) || obstacle.getPlaces().stream().anyMatch(place -> changed.contains(place.getId()));
    }

    private static List<Obstacle> obstacles(Project project) {
        return project.getAerodrome() == null ? List.of() : project.getAerodrome().getObstacles();
    }

    /** Returns everything that stands around a place of a project, in its frame; the same object as long as nothing has changed. */
    Surroundings surroundings(Project project, SiteFrame frame) {
        if (obstacles.size() > MOST_FRAMES) {
            obstacles.clear();
            surroundings.clear();
        }
        ObstacleField field = obstacles.computeIfAbsent(frame, where -> ObstacleField.of(obstacles(project), where));
        List<Surroundings.Block> blocks = new ArrayList<>();
        List<Uncompared> unread = new ArrayList<>();
        for (SurveyBlock block : project.getSurveyBlocks()) {
            try {
                blocks.add(new Surroundings.Block(block, survey(project, block, frame)));
            } catch (SitingException e) {
                unread.add(new Uncompared(block, Projects.label(block), e.reason()));
            }
        }
        Surroundings known = surroundings.get(frame);
        if (known == null || known.obstacles() != field || !known.blocks().equals(blocks)
                || !known.uncompared().subList(field.unplaced().size(), known.uncompared().size()).equals(unread)) {
            known = new Surroundings(field, blocks, unread);
            surroundings.put(frame, known);
        }
        return known;
    }

    private SurveyField survey(Project project, SurveyBlock block, SiteFrame frame) {
        Path folder = ProjectFile.folder(project).orElseThrow(() -> new SitingException(
                Message.of("evaluation.block-without-folder", Words.name(Projects.label(block)))));
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
        return number == null ? 0 : Math.abs(number);
    }
}
