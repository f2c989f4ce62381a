package slopewright.evaluation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import slopewright.messages.Message;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;
import slopewright.siting.site.PlacedPoints;
import slopewright.siting.site.PointOrder;
import slopewright.siting.site.SiteFrame;
import slopewright.siting.site.SurveyPoints;

/** Points of survey blocks, read and brought into frames, for several caches of one project, each on its own thread. */
final class SurveyStore {
    private static final int MOST_FRAMES = 64;

    /** The file of a block: one that was replaced is another one, told by size and time without reading it. */
    record SurveyFile(Path folder, String path, String sha256, long bytes, long time) {
    }

    /** The points of a file in a frame. */
    record Key(SurveyFile file, SiteFrame frame) {
    }

    /** Points with their places in a frame; shared, never changed. */
    record Placed(SurveyPoints points, PlacedPoints places) {
    }

    private final Map<SurveyFile, PointOrder> points = new HashMap<>();
    private final Map<Key, Attempt<Placed>> attempts = new HashMap<>();

    /**
     * Names the points of a block, as its file is now, in a frame.
     *
     * @throws SitingException where the project has no folder yet
     */
    static Key key(Project project, SurveyBlock block, SiteFrame frame) {
        Path folder = ProjectFile.folder(project).orElseThrow(() -> new SitingException(
                Message.of("evaluation.block-without-folder", ElementNames.of(block))));
        return new Key(file(folder, block), frame);
    }

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

    /** Returns the points, or why they could not be read, as far as that was found out; empty where nobody has read them yet. */
    synchronized Optional<Attempt<Placed>> find(Key key) {
        return Optional.ofNullable(attempts.get(key));
    }

    /** Returns the points, read and brought into the frame where that was not done yet, or why they cannot be read. */
    Attempt<Placed> get(Key key, SurveyBlock block) {
        Optional<Attempt<Placed>> known = find(key).filter(attempt -> attempt.value().isPresent());
        if (known.isPresent()) {
            return known.get();
        }
        Attempt<Placed> fresh = Attempt.of(() -> {
            PointOrder read = read(key.file(), block);
            return new Placed(read.points(), PlacedPoints.of(read, key.frame()));
        });
        keep(key, fresh);
        return fresh;
    }

    private PointOrder read(SurveyFile file, SurveyBlock block) {
        synchronized (this) {
            if (points.containsKey(file)) {
                return points.get(file);
            }
        }
        PointOrder read = new PointOrder(SurveyPoints.read(block, file.folder()));
        synchronized (this) {
            points.keySet().removeIf(old -> old.path().equals(file.path()));
            attempts.keySet().removeIf(old -> old.file().path().equals(file.path()));
            points.put(file, read);
        }
        return read;
    }

    private synchronized void keep(Key key, Attempt<Placed> fresh) {
        if (attempts.size() > MOST_FRAMES) {
            attempts.clear();
        }
        attempts.put(key, fresh);
    }
}
