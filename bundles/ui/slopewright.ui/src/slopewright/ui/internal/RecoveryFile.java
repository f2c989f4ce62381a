package slopewright.ui.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.UserPrincipal;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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

    private static final Pattern BASE = Pattern.compile("<!-- unsaved work over ([0-9a-f]{64}) -->\\s*$");

    private final Path project;
    private final Path file;
    private Optional<String> base = Optional.empty();
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

    /** Says what the project file holds that the work goes on from; empty where there is none yet. */
    public synchronized void goesOnFrom(Optional<String> sha256) {
        base = sha256;
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
            AtomicFile.replace(file, withBase(bytes), AtomicFile.Terms.OWN);
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

    private byte[] withBase(byte[] bytes) {
        byte[] last = base.map(sha256 -> "<!-- unsaved work over " + sha256 + " -->\n").orElse("").getBytes(StandardCharsets.US_ASCII);
        byte[] whole = Arrays.copyOf(bytes, bytes.length + last.length);
        System.arraycopy(last, 0, whole, bytes.length, last.length);
        return whole;
    }

    /**
     * Reads unsaved work that an earlier run left. It belongs to the project file where it went on from what that holds, whatever the clock
     * says; work that does not say so, where it is not older than the project file. A link, or a file of another user, is not read.
     *
     * @param saved the project as it was saved
     * @return the work, empty where there is none, or where it is the same as what was saved; work that does not belong to the project file
     *         any more or cannot be read is put aside, not removed
     */
    public synchronized Optional<Project> read(Project saved) {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || !isOfThisUser()) {
            return Optional.empty();
        }
        try {
            if (Files.exists(project) && !belongs(saved)) {
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

    private boolean belongs(Project saved) throws IOException {
        Matcher goesOnFrom = BASE.matcher(Files.readString(file, StandardCharsets.ISO_8859_1));
        return goesOnFrom.find() ? ProjectFile.seen(saved).equals(Optional.of(goesOnFrom.group(1)))
                : Files.getLastModifiedTime(project).compareTo(Files.getLastModifiedTime(file)) <= 0;
    }

    /** Where files have owners that can be told, work of somebody else is left alone. */
    @SuppressWarnings("resource") // the file system of the machine is never closed
    private boolean isOfThisUser() {
        try {
            if (Files.getFileAttributeView(file, PosixFileAttributeView.class) == null) {
                return true;
            }
            UserPrincipal user = FileSystems.getDefault().getUserPrincipalLookupService()
                    .lookupPrincipalByName(System.getProperty("user.name"));
            boolean isOwn = user.equals(Files.getOwner(file, LinkOption.NOFOLLOW_LINKS));
            if (!isOwn) {
                ILog.get().warn("The unsaved work in " + file + " is of another user and was not read");
            }
            return isOwn;
        } catch (IOException e) {
            return true;
        }
    }

    private void putAside() {
        try {
            AtomicFile.putAside(file, ".old");
        } catch (IOException e) {
            ILog.get().warn("The unsaved work in " + file + " cannot be put aside", e);
        }
    }
}
