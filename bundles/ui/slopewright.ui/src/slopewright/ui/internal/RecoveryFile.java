package slopewright.ui.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Optional;

import org.eclipse.core.runtime.ILog;

import slopewright.model.Project;
import slopewright.model.io.AtomicFile;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;

/**
 * The file beside a project in which unsaved work is kept. It is there only while there is such work, so one that is found on opening
 * was left by a run that ended unexpectedly. Written in the background, discarded on the user interface thread.
 */
public final class RecoveryFile {

    /** How the name of a recovery file ends. */
    public static final String SUFFIX = ".unsaved";

    private final Path project;
    private final Path file;
    private long generation;

    /** A permission to write, void once the recovery file was discarded. */
    public final class Slot {

        private final long valid = generation();

        /** Writes a version of the project in one step; a file system that refuses is reported once in the log. */
        public void write(byte[] bytes) {
            RecoveryFile.this.write(valid, bytes);
        }
    }

    /** Names the recovery file of a project file. */
    public RecoveryFile(Path project) {
        this.project = project;
        this.file = project.resolveSibling("." + project.getFileName() + SUFFIX);
    }

    /** Returns where the work is kept. */
    public Path file() {
        return file;
    }

    /** Returns a permission to write that holds until the file is discarded. */
    public Slot slot() {
        return new Slot();
    }

    private synchronized long generation() {
        return generation;
    }

    private synchronized void write(long valid, byte[] bytes) {
        if (valid != generation) {
            return;
        }
        try {
            AtomicFile.replace(file, bytes);
        } catch (IOException e) {
            generation++;
            ILog.get().warn("Unsaved work cannot be kept in " + file, e);
        }
    }

    /** Removes the file; what is still being written for it is not written. */
    public synchronized void discard() {
        generation++;
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            ILog.get().warn("The unsaved work in " + file + " cannot be removed", e);
        }
    }

    /**
     * Reads unsaved work that an earlier run left.
     *
     * @param saved the project as it was saved
     * @return the work, empty where there is none, where it is the same as what was saved, or where the project file is newer; work that
     *         is older than the project file or cannot be read is put aside, not removed
     */
    public synchronized Optional<Project> read(Project saved) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            if (Files.exists(project) && Files.getLastModifiedTime(project).compareTo(Files.getLastModifiedTime(file)) > 0) {
                putAside();
                return Optional.empty();
            }
            Project found = ProjectFile.load(file);
            return Arrays.equals(ProjectFile.bytes(found), ProjectFile.bytes(saved)) ? Optional.empty() : Optional.of(found);
        } catch (ProjectFileException e) {
            ILog.get().warn("The unsaved work in " + file + " cannot be read", e);
            putAside();
        } catch (IOException e) {
            ILog.get().warn("The unsaved work in " + file + " cannot be read", e);
        }
        return Optional.empty();
    }

    private void putAside() {
        try {
            Files.move(file, file.resolveSibling(file.getFileName() + ".old"), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            ILog.get().warn("The unsaved work in " + file + " cannot be put aside", e);
        }
    }
}
