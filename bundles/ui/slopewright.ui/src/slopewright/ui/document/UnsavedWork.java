package slopewright.ui.document;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.ui.internal.KeptWork;
import slopewright.ui.internal.ProjectClaim;
import slopewright.ui.internal.RecoveryFile;

/**
 * Unsaved work that a run of the program left because it ended unexpectedly, before anybody has opened the project again. Work that is
 * kept comes back when its document is opened. To be asked for only while the project is open in no document of this program.
 */
public final class UnsavedWork {

    private final Path project;
    private final RecoveryFile file;
    private final RecoveryFile.Left left;
    private final Optional<Project> saved;

    private UnsavedWork(Path project, RecoveryFile file, RecoveryFile.Left left, Optional<Project> saved) {
        this.project = project;
        this.file = file;
        this.left = left;
        this.saved = saved;
    }

    /**
     * Looks for work beside a project file, be the file there or not. What another window of the program is just keeping is none.
     *
     * @param project the project file
     * @return the work of each window that was open; empty where there is none, and where the project file itself cannot be read
     */
    public static List<UnsavedWork> of(Path project) {
        List<UnsavedWork> found = new ArrayList<>();
        if (KeptWork.left(project).isEmpty()) {
            return found;
        }
        try {
            Optional<Project> saved = Files.exists(project) ? Optional.of(ProjectFile.load(project)) : Optional.empty();
            for (RecoveryFile file : KeptWork.left(project)) {
                file.look(saved).ifPresent(left -> found.add(new UnsavedWork(project, file, left, saved)));
            }
        } catch (ProjectFileException e) {
            // whoever opens the project is told why it cannot be read; the work stays beside it
            return List.of();
        }
        return found;
    }

    /** Returns who has a project open in another window, and since when; empty where nobody has. */
    public static Optional<String> holder(Path project) {
        return ProjectClaim.holder(project);
    }

    /** Returns the project file. */
    public Path project() {
        return project;
    }

    /** Returns when the work was kept last. */
    public Instant when() {
        return left.when().toInstant();
    }

    /** Returns whether it goes on from what the project file holds now; else another program has changed that file since. */
    public boolean belongs() {
        return left.belongs();
    }

    /** Returns the project as it was saved, empty where there is no file. */
    public Optional<Project> saved() {
        return saved;
    }

    /** Returns the project as the work has it. */
    public Project work() {
        return left.work();
    }

    /**
     * Lets the work come back when the project is opened, also where the file has changed since.
     *
     * @throws IOException where that cannot be noted beside the project
     */
    public void keep() throws IOException {
        if (!belongs() && saved.isPresent()) {
            file.adopt(saved.get());
        }
    }

    /** Removes the work. */
    public void drop() {
        file.discard();
    }
}
