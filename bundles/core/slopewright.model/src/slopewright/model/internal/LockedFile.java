package slopewright.model.internal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Objects;

import slopewright.messages.Message;

/** A file that is held against other programs that hold it the same way, where the file system can do that. */
public final class LockedFile implements AutoCloseable {

    private static final int TRIES = 100;
    private static final int WAIT_MS = 50;

    private final Path path;
    private final Object key;
    private final FileChannel channel;

    private LockedFile(Path path) throws IOException {
        this.path = path;
        key = key(path);
        channel = FileChannel.open(path, StandardOpenOption.READ, StandardOpenOption.WRITE);
    }

    /**
     * Opens a file and waits until no other program holds it, five seconds at most.
     *
     * @throws IOException where it cannot be opened, or another program goes on holding it
     */
    public static LockedFile open(Path path) throws IOException {
        LockedFile file = new LockedFile(path);
        try {
            lock(file.channel, path);
            return file;
        } catch (IOException | RuntimeException | Error e) {
            file.close();
            throw e;
        }
    }

    private static Object key(Path path) throws IOException {
        return Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS).fileKey();
    }

    /** Locks an open file until it is closed. Where a lock would keep the file from being renamed, or there are none, nothing is locked. */
    static void lock(FileChannel channel, Path path) throws IOException {
        if (!Files.getFileStore(path).supportsFileAttributeView(PosixFileAttributeView.class)) {
            return;
        }
        for (int left = TRIES; left > 0; left--) {
            if (isLocked(channel)) {
                return;
            }
            pause(path);
        }
        throw new RefusedFileException(path, Message.of("file.held"));
    }

    /** Tries once; a thread of this program that has just written the file may hold it a moment longer. */
    @SuppressWarnings("resource") // the lock ends with its channel
    private static boolean isLocked(FileChannel channel) {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false;
        } catch (IOException e) {
            return true;
        }
    }

    private static void pause(Path path) throws IOException {
        try {
            Thread.sleep(WAIT_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new RefusedFileException(path, Message.of("file.wait-ended"));
        }
    }

    /** Returns the SHA-256 of what it holds. Read by the channel that holds it: to open it once more and close it would let go of it. */
    public String sha256() throws IOException {
        ByteBuffer content = ByteBuffer.allocate(Math.toIntExact(channel.size()));
        while (content.hasRemaining() && channel.read(content, content.position()) > 0) {
            continue;
        }
        return FileDigest.sha256(content.array());
    }

    /** Returns whether its name still leads to it, and not to another file that took the name while this one was waited for. */
    public boolean isStillThere() throws IOException {
        return Objects.equals(key, key(path));
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
