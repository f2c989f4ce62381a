package slopewright.model.io;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * Writes files whole or not at all: the content is written beside the file and forced to the disk before it takes the name of the file
 * in one step. Whatever goes wrong, the file holds either what it held or the new content, and nothing temporary is left. Where the file
 * is a link, the file it leads to is written. Everything in the product that writes a file that a user named writes it here.
 */
public final class AtomicFile {

    private AtomicFile() {
    }

    /**
     * Writes a file that is not there yet. Another program that makes it meanwhile wins.
     *
     * @param file  the file
     * @param bytes its content
     * @throws FileAlreadyExistsException where it is there; it was not changed
     * @throws IOException                where it cannot be written
     */
    public static void create(Path file, byte[] bytes) throws IOException {
        Path target = file.toAbsolutePath();
        Path fresh = beside(target, "new");
        try {
            write(fresh, bytes);
            link(fresh, target);
        } finally {
            remove(fresh);
        }
    }

    /**
     * Writes a file, whether it is there or not.
     *
     * @param file  the file
     * @param bytes its new content
     * @throws IOException where it cannot be written
     */
    public static void replace(Path file, byte[] bytes) throws IOException {
        Path target = target(file);
        Path fresh = beside(target, "new");
        try {
            write(fresh, bytes);
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            remove(fresh);
        }
    }

    /**
     * Writes a file, whether it is there or not, and keeps what it held under another name.
     *
     * @param file           the file
     * @param previousSuffix what is added to the name of the file for what it held before
     * @param bytes          the new content
     * @throws IOException where it cannot be written
     */
    public static void replace(Path file, String previousSuffix, byte[] bytes) throws IOException {
        Path target = target(file);
        Path fresh = beside(target, "new");
        Path kept = beside(target, "kept");
        try {
            write(fresh, bytes);
            if (Files.exists(target)) {
                Files.copy(target, kept);
                Files.move(kept, target.resolveSibling(target.getFileName() + previousSuffix), StandardCopyOption.ATOMIC_MOVE);
            }
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            remove(fresh);
            remove(kept);
        }
    }

    private static Path target(Path file) throws IOException {
        return Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    }

    private static Path beside(Path target, String ending) {
        return target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + "." + ending);
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

    /** A second name for the content is refused where there is a file of that name; not every file system has second names. */
    private static void link(Path fresh, Path target) throws IOException {
        try {
            Files.createLink(target, fresh);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (UnsupportedOperationException | FileSystemException e) {
            Files.move(fresh, target);
        }
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            file.toFile().deleteOnExit();
        }
    }

    /** Returns why a file cannot be read or written, for people; the messages of the file system often are a bare path. */
    public static String reason(IOException e) {
        if (e instanceof FileAlreadyExistsException) {
            return "it is there already";
        }
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
