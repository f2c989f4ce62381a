package slopewright.model.internal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;

import slopewright.messages.Message;

/**
 * A file beside another one that takes its name when it is whole. It is locked while it has not, and carries the number of the process in
 * its name: so the next one that writes beside the same file tells what a killed process left from what another one is writing.
 */
public final class Beside implements AutoCloseable {

    private static final int MOST_OF_NAME = 40;
    private static final Pattern LEFT = Pattern.compile("\\.(.+)\\.(\\d+)\\.[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\\.(new|kept)");

    private final Path path;
    private final FileChannel channel;

    private Beside(Path target, FileOwnership ownership) throws IOException {
        path = path(target, "new");
        channel = FileChannel.open(path, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.READ, StandardOpenOption.WRITE),
                ownership.first(target.getParent()));
    }

    private Beside(Path path) {
        this.path = path;
        channel = null;
    }

    /**
     * Writes a content beside a file, forces it to the disk and reads it again.
     *
     * @param target    the file whose name it shall take
     * @param bytes     the content
     * @param ownership who may read and write it
     */
    public static Beside write(Path target, byte[] bytes, FileOwnership ownership) throws IOException {
        sweep(target);
        Beside fresh = new Beside(target, ownership);
        try {
            fresh.fill(bytes, ownership);
            return fresh;
        } catch (IOException | RuntimeException | Error e) {
            fresh.close();
            throw e;
        }
    }

    private void fill(byte[] bytes, FileOwnership ownership) throws IOException {
        LockedFile.lock(channel, path);
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
            channel.write(buffer);
        }
        ownership.apply(path);
        channel.force(true);
        verify(bytes);
    }

    /** Makes a second name for what a file holds, or a copy where the file system knows no second names. */
    public static Beside second(Path target) throws IOException {
        Path path = path(target, "kept");
        try {
            Files.createLink(path, target);
            return new Beside(path);
        } catch (UnsupportedOperationException | FileSystemException e) {
            return write(target, Files.readAllBytes(target), FileOwnership.of(target, false));
        }
    }

    private static Path path(Path target, String ending) {
        return target.resolveSibling("." + stem(target) + "." + ProcessHandle.current().pid() + "." + UUID.randomUUID() + "." + ending);
    }

    private static String stem(Path target) {
        String name = target.getFileName().toString();
        return name.substring(0, Math.min(name.length(), MOST_OF_NAME));
    }

    private void verify(byte[] bytes) throws IOException {
        ByteBuffer again = ByteBuffer.allocate(bytes.length);
        while (again.hasRemaining() && channel.read(again, again.position()) > 0) {
            continue;
        }
        if (channel.size() != bytes.length || !ByteBuffer.wrap(bytes).equals(again.flip())) {
            throw new RefusedFileException(path, Message.of("file.not-the-same"));
        }
    }

    /** Takes the name of a file, in one step; what had it is gone. */
    public void takeName(Path target) throws IOException {
        Files.move(path, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Takes a name that no file has, or fails. Where the file system knows no second names, the name is reserved first. */
    public void takeFreeName(Path target) throws IOException {
        try {
            Files.createLink(target, path);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (UnsupportedOperationException | FileSystemException e) {
            Files.createFile(target);
            takeReserved(target);
        }
    }

    private void takeReserved(Path target) throws IOException {
        try {
            takeName(target);
        } catch (IOException | RuntimeException e) {
            Files.deleteIfExists(target);
            throw e;
        }
    }

    @Override
    public void close() {
        try {
            Files.deleteIfExists(path);
            if (channel != null) {
                channel.close();
            }
        } catch (IOException e) {
            path.toFile().deleteOnExit();
        }
    }

    /** Removes what killed processes left beside a file: what is of no process that runs, nor locked from another machine. */
    private static void sweep(Path target) {
        String stem = stem(target);
        try (DirectoryStream<Path> found = Files.newDirectoryStream(target.getParent(), file -> {
            var parts = LEFT.matcher(file.getFileName().toString());
            return parts.matches() && parts.group(1).equals(stem) && isEnded(parts.group(2))
                    && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
        })) {
            for (Path left : found) {
                removeUnlocked(left);
            }
        } catch (IOException | RuntimeException e) {
            return;
        }
    }

    private static boolean isEnded(String process) {
        try {
            return ProcessHandle.of(Long.parseLong(process)).isEmpty();
        } catch (NumberFormatException e) {
            return false;
        }
    }

    private static void removeUnlocked(Path left) {
        try (FileChannel channel = FileChannel.open(left, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
                FileLock lock = channel.tryLock()) {
            if (lock != null) {
                Files.deleteIfExists(left);
            }
        } catch (IOException e) {
            return;
        }
    }
}
