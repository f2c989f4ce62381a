package slopewright.evaluation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import slopewright.evaluation.obstacles.ObstacleField;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.SurveyField;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/**
 * What one evaluation of a project leaves for the next: obstacles and survey points in their frames, and what they were compared with, and
 * what was worked out from the site alone. An evaluation with a cache says the same as one without. It belongs to one project, the same
 * objects each time; what has changed since the last evaluation must be named. Not for several threads.
 */
public final class EvaluationCache {

    private static final int MOST_FRAMES = 64;

    private record SurveyIn(SurveyStore.Key key, double horizontalM, double verticalM) {
    }

    private final Map<SiteFrame, ObstacleField> obstacles = new HashMap<>();
    private final Map<SiteFrame, Surroundings> surroundings = new HashMap<>();
    private final Map<SurveyIn, SurveyField> surveys = new HashMap<>();
    private final Map<Object, Object> ofSite = new HashMap<>();
    private final SurveyStore store;
    private final boolean reads;
    private boolean isWaiting;

    /** Makes an empty cache that reads survey files when it needs them. */
    public EvaluationCache() {
        this(new SurveyStore(), true);
    }

    private EvaluationCache(SurveyStore store, boolean reads) {
        this.store = store;
        this.reads = reads;
    }

    /**
     * Returns a cache for the same project, or the one that this one's project is a copy of, on another thread that must not wait: survey
     * points are there once this cache has read them, and until then their blocks are among what was not compared.
     */
    public EvaluationCache withoutReading() {
        return new EvaluationCache(store, false);
    }

    /** Returns an empty cache for another copy of the project on another thread; what either reads of survey points serves both. */
    public EvaluationCache forCopy() {
        return new EvaluationCache(store, true);
    }

    /** Returns whether survey points were wanted that nobody had read yet; since this was asked last. */
    public boolean takeWaiting() {
        boolean was = isWaiting;
        isWaiting = false;
        return was;
    }

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
        if (!idsOfAids(project).containsAll(changed)) {
            ofSite.clear();
        }
    }

    private static Set<String> idsOfAids(Project project) {
        return Projects.aids(project).stream().flatMap(aid -> Ids.elements(aid).stream()).map(Identified::getId)
                .collect(Collectors.toSet());
    }

    /** Returns what was worked out from the site alone, from the last time where nothing but aids has changed since. */
    @SuppressWarnings("unchecked")
    <T> T keepOfSite(Object key, Supplier<T> work) {
        Object found = ofSite.get(key);
        if (found == null) {
            found = work.get();
            ofSite.put(key, found);
        }
        return (T) found;
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
        SurveyStore.Key key = SurveyStore.key(project, block, frame);
        SurveyIn wanted = new SurveyIn(key, orZero(block.getHorizontalAccuracyM()), orZero(block.getVerticalAccuracyM()));
        SurveyField known = surveys.get(wanted);
        if (known != null) {
            return known;
        }
        Optional<Attempt<SurveyStore.Placed>> found = reads ? Optional.of(store.get(key, block)) : store.find(key);
        isWaiting |= found.isEmpty();
        SurveyStore.Placed placed = found.orElseThrow(() -> new SitingException(
                Message.of("evaluation.block-being-read", ElementNames.of(block)))).orThrow();
        if (surveys.size() > MOST_FRAMES) {
            surveys.clear();
        }
        surveys.keySet().removeIf(old -> old.key().file().path().equals(key.file().path()) && !old.key().file().equals(key.file()));
        SurveyField fresh = new SurveyField(placed.points(), placed.places(), wanted.horizontalM(), wanted.verticalM());
        surveys.put(wanted, fresh);
        return fresh;
    }

    private static double orZero(Double number) {
        return number == null ? 0 : Math.abs(number);
    }
}
