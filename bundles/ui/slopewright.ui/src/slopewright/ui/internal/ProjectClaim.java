package slopewright.ui.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.eclipse.core.runtime.ILog;

/**
 * The claim of one window on a project: a locked file beside it, by which other windows know that it is open and which of the numbered
 * recovery files are in use. The system lets go of the lock when the program ends, however it ends. To be asked for a project only while
 * this program has it not open, for a look at the file lets go of the program's own lock.
 */
public final class ProjectClaim {

    /** How many windows may have one project open, each with a recovery file of its own. */
    public static final int MOST = 9;

    private static final String SUFFIX = ".open";
    private static final long LOCKED_BYTE = 1L << 40;
    private static final int TRIES = 5;
    private static final int MOST_LETTERS = 100;

    private final int number;
    private final Path file;
    private final Optional<FileChannel> held;

    private ProjectClaim(int number, Path file, Optional<FileChannel> held) {
        this.number = number;
        this.file = file;
        this.held = held;
    }

    /** Claims the first number that no other window has; where the folder lets nobody claim anything, the claim is on paper only. */
    @SuppressWarnings("resource") // the channel is the claim; release closes it
    public static ProjectClaim take(Path project) {
        for (int number = 1; number <= MOST; number++) {
            Path file = file(project, number);
            try {
                Optional<FileChannel> channel = lock(file);
                if (channel.isPresent()) {
                    sign(channel.get());
                    return new ProjectClaim(number, file, channel);
                }
            } catch (AccessDeniedException e) {
                if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                    return new ProjectClaim(number, file, Optional.empty());
                }
            } catch (IOException e) {
                ILog.get().info("The project cannot be claimed by " + file, e);
                return new ProjectClaim(number, file, Optional.empty());
            }
        }
        return new ProjectClaim(MOST, file(project, MOST), Optional.empty());
    }

    private static Path file(Path project, int number) {
        return project.resolveSibling("." + project.getFileName() + SUFFIX + (number == 1 ? "" : "." + number));
    }

    /** Returns who has the project open in another window, and since when; empty where nobody has. */
    public static Optional<String> holder(Path project) {
        for (int number = 1; number <= MOST; number++) {
            if (!isFree(project, number)) {
                return Optional.of(words(file(project, number)));
            }
        }
        return Optional.empty();
    }

    /** Returns whether no window has a number of a project. */
    public static boolean isFree(Path project, int number) {
        Path file = file(project, number);
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return true;
        }
        boolean shared = !Files.isWritable(file);
        try (FileChannel channel = FileChannel.open(file,
                Set.of(shared ? StandardOpenOption.READ : StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS))) {
            return isLocked(channel, shared);
        } catch (IOException e) {
            return true;
        }
    }

    @SuppressWarnings("resource") // the lock ends with its channel
    private static boolean isLocked(FileChannel channel, boolean shared) throws IOException {
        try {
            return channel.tryLock(LOCKED_BYTE, 1, shared) != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    /** A file that was removed between its opening and its locking belonged to somebody who was just letting go: the next try makes one. */
    @SuppressWarnings("resource") // the channel is the claim; release closes it
    private static Optional<FileChannel> lock(Path file) throws IOException {
        for (int left = TRIES; left > 0; left--) {
            make(file);
            Object key = key(file);
            FileChannel channel = FileChannel.open(file,
                    Set.of(StandardOpenOption.READ, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS));
            if (!isLocked(channel, false)) {
                channel.close();
                return Optional.empty();
            }
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && Objects.equals(key, key(file))) {
                return Optional.of(channel);
            }
            channel.close();
        }
        return Optional.empty();
    }

    private static void make(Path file) throws IOException {
        try {
            Files.createFile(file);
        } catch (FileAlreadyExistsException e) {
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                throw e;
            }
        }
    }

    private static Object key(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS).fileKey();
    }

    private static void sign(FileChannel channel) throws IOException {
        String words = System.getProperty("user.name", "") + ", " + LocalTime.now().format(DateTimeFormatter.ofPattern("HH:mm"));
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(words.getBytes(StandardCharsets.UTF_8)), 0);
    }

    private static String words(Path file) {
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            return new String(in.readNBytes(MOST_LETTERS), StandardCharsets.UTF_8).replaceAll("\\p{Cntrl}", " ").strip();
        } catch (IOException e) {
            return "?";
        }
    }

    /** Returns the number that was claimed, from 1. */
    public int number() {
        return number;
    }

    /** Lets go of the claim. */
    public void release() {
        try (FileChannel ended = held.orElse(null)) {
            if (ended != null && ended.isOpen()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            ILog.get().info("The claim of " + file + " cannot be removed", e);
        }
    }
}
