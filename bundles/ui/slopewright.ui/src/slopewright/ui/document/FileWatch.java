package slopewright.ui.document;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import java.util.Optional;

import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.ui.MessageTexts;

/**
 * Looks whether another program changed the file of a project since it was read or saved here. The content decides, not the time of the
 * file; it is read only where time or size are others than at the last look. Used on the user interface thread.
 */
public final class FileWatch {

    /** How a file stands. */
    public enum State {
        /** As it was read or saved here. */
        SAME,
        /** Changed by another program. */
        CHANGED,
        /** Removed by another program. */
        GONE,
        /** Changed by another program into something that is no project. */
        UNREADABLE
    }

    /**
     * How the file of a project stands.
     *
     * @param state   the state
     * @param version what it holds, where it was changed
     * @param problem why it cannot be read; empty otherwise
     */
    public record Found(State state, Optional<Project> version, String problem) {

        private static final Found SAME = new Found(State.SAME, Optional.empty(), "");

        private static Found gone() {
            return new Found(State.GONE, Optional.empty(), "");
        }
    }

    private final ProjectDocument document;
    private Object stamp = "";
    private Optional<String> against = Optional.empty();
    private Optional<String> accepted = Optional.empty();
    private Found found = Found.SAME;

    /** Makes it for a document. */
    public FileWatch(ProjectDocument document) {
        this.document = document;
    }

    /** Looks at the file. */
    public Found look() {
        Optional<Path> path = document.path();
        Optional<String> seen = ProjectFile.seen(document.project());
        if (path.isEmpty() || seen.isEmpty()) {
            return Found.SAME;
        }
        Object now = stamp(path.get());
        if (!now.equals(stamp) || !seen.equals(against)) {
            stamp = now;
            against = seen;
            found = read(path.get(), seen);
        }
        return found;
    }

    private Found read(Path path, Optional<String> seen) {
        if (!Files.exists(path)) {
            return accepted.equals(Optional.of("")) ? Found.SAME : Found.gone();
        }
        Optional<String> holds = ProjectFile.hash(path);
        if (holds.isPresent() && (holds.equals(seen) || holds.equals(accepted))) {
            return Found.SAME;
        }
        try {
            return new Found(State.CHANGED, Optional.of(ProjectFile.load(path)), "");
        } catch (ProjectFileException e) {
            return new Found(State.UNREADABLE, Optional.empty(), MessageTexts.of(e.fault()));
        }
    }

    private static Object stamp(Path path) {
        try {
            BasicFileAttributes now = Files.readAttributes(path, BasicFileAttributes.class);
            return Objects.hash(now.lastModifiedTime(), now.size(), now.fileKey());
        } catch (IOException e) {
            return "none";
        }
    }

    /** Says that the user has seen how the file stands and leaves the project as it is; the next change is told again. */
    public void accept() {
        accepted = Optional.of(found.version().flatMap(ProjectFile::seen).orElse(""));
        found = Found.SAME;
    }
}
