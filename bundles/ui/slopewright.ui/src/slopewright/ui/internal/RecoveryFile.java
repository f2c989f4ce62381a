package slopewright.ui.internal;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.UserPrincipal;
import java.util.Arrays;
import java.util.Objects;
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
    private final int number;
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
        this(project, 1);
    }

    /**
     * Names the recovery file of one of several windows that have the same project open.
     *
     * @param project the project file
     * @param number  the number of the window, from 1, see {@link ProjectClaim}
     */
    public RecoveryFile(Path project, int number) {
        this.project = project;
        this.number = number;
        this.file = project.resolveSibling("." + project.getFileName() + SUFFIX + (number == 1 ? "" : "." + number));
    }

    /** Returns the number of the window that writes it. */
    public int number() {
        return number;
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

    /** What was found: the bytes of the work, when they were written, and what the work goes on from. */
    private record Found(byte[] bytes, FileTime when, Optional<String> base) {

        /** Returns whether it goes on from what a project file holds; where the work does not say so, whether it is not the older one. */
        boolean belongsTo(Path file, Project saved) throws IOException {
            return base.isPresent() ? ProjectFile.seen(saved).equals(base) : Files.getLastModifiedTime(file).compareTo(when) <= 0;
        }

        Project work(Path recovery, Path file) throws ProjectFileException {
            Project work = ProjectFile.load(new ByteArrayInputStream(bytes), recovery.toString());
            ProjectFile.settle(work, file);
            return work;
        }
    }

    /**
     * Work that an earlier run left.
     *
     * @param work    the project as it was
     * @param when    when it was kept
     * @param belongs whether it goes on from what the project file holds now
     */
    public record Left(Project work, FileTime when, boolean belongs) {
    }

    /**
     * Looks at unsaved work that an earlier run left, and changes nothing. A link, and a file of another user, is not read.
     *
     * @param saved the project as it was saved, empty where there is no project file
     * @return the work, empty where there is none, where it is the same as what was saved, or where it cannot be read
     */
    public synchronized Optional<Left> look(Optional<Project> saved) {
        try {
            Optional<Found> found = find();
            if (found.isEmpty()) {
                return Optional.empty();
            }
            Project work = found.get().work(file, project);
            if (saved.isPresent() && Arrays.equals(ProjectFile.bytes(work), ProjectFile.bytes(saved.get()))) {
                return Optional.empty();
            }
            return Optional.of(new Left(work, found.get().when(), saved.isEmpty() || found.get().belongsTo(project, saved.get())));
        } catch (IOException | ProjectFileException e) {
            ILog.get().warn("The unsaved work in " + file + " cannot be read", e);
            return Optional.empty();
        }
    }

    /**
     * Makes the work go on from what the project file holds now.
     *
     * @param saved the project as it was saved
     * @throws IOException where it cannot be written
     */
    public synchronized void adopt(Project saved) throws IOException {
        Optional<Found> found = find();
        if (found.isPresent()) {
            base = ProjectFile.seen(saved);
            String work = BASE.matcher(new String(found.get().bytes(), StandardCharsets.ISO_8859_1)).replaceFirst("");
            AtomicFile.replace(file, withBase(work.getBytes(StandardCharsets.ISO_8859_1)), AtomicFile.Terms.OWN);
        }
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
        try {
            Optional<Found> found = find();
            if (found.isEmpty()) {
                return Optional.empty();
            }
            if (Files.exists(project) && !found.get().belongsTo(project, saved)) {
                putAside();
                return Optional.empty();
            }
            Project work = found.get().work(file, project);
            return Arrays.equals(ProjectFile.bytes(work), ProjectFile.bytes(saved)) ? Optional.empty() : Optional.of(work);
        } catch (ProjectFileException e) {
            ILog.get().warn("The unsaved work in " + file + " cannot be read", e);
            putAside();
        } catch (IOException e) {
            ILog.get().warn("The unsaved work in " + file + " cannot be read", e);
        }
        return Optional.empty();
    }

    /**
     * Reads the file. No link leads elsewhere, neither a symbolic one nor a further name of another file: the file is opened as itself, and
     * what its attributes say holds before and after.
     */
    private Optional<Found> find() throws IOException {
        if (!isOwn()) {
            return Optional.empty();
        }
        FileTime when = Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS);
        Object key = key();
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            bytes = in.readAllBytes();
        }
        if (!isOwn() || !Objects.equals(key, key())) {
            return Optional.empty();
        }
        Matcher goesOnFrom = BASE.matcher(new String(bytes, StandardCharsets.ISO_8859_1));
        return Optional.of(new Found(bytes, when, goesOnFrom.find() ? Optional.of(goesOnFrom.group(1)) : Optional.empty()));
    }

    private Object key() throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS).fileKey();
    }

    private boolean isOwn() {
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && hasOneName() && isOfThisUser();
    }

    private boolean hasOneName() {
        try {
            boolean tells = Files.getFileStore(file).supportsFileAttributeView("unix");
            return !tells || Integer.valueOf(1).equals(Files.getAttribute(file, "unix:nlink", LinkOption.NOFOLLOW_LINKS));
        } catch (IOException | UnsupportedOperationException e) {
            return true;
        }
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
