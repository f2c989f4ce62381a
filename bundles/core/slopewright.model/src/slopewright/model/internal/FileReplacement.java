package slopewright.model.internal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Puts new content in the place of a file in one step and keeps what was there. */
public final class FileReplacement {

    private FileReplacement() {
    }

    /**
     * Replaces a file. Whatever goes wrong, the file holds either the old or the new content whole, and nothing temporary is left.
     *
     * @param file           the file; where it is a link, the file it leads to is replaced
     * @param previousSuffix what is added to the name of the file for what it held before
     * @param bytes          the new content
     * @throws IOException where it can not be written
     */
    public static void replace(Path file, String previousSuffix, byte[] bytes) throws IOException {
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        String mark = "." + target.getFileName() + "." + UUID.randomUUID();
        Path fresh = target.resolveSibling(mark + ".new");
        Path kept = target.resolveSibling(mark + ".kept");
        try {
            write(fresh, bytes);
            if (Files.exists(target)) {
                Files.copy(target, kept);
                Files.move(kept, target.resolveSibling(target.getFileName() + previousSuffix), StandardCopyOption.ATOMIC_MOVE);
            }
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            remove(fresh);
            remove(kept);
        }
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            file.toFile().deleteOnExit();
        }
    }

    /** Returns why a file can not be read or written, for people; the messages of the file system often are a bare path. */
    public static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "access is denied";
        }
        if (e instanceof NoSuchFileException) {
            return "there is no such file or folder";
        }
        if (e instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }
}
