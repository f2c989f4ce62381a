package slopewright.model.io;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

import slopewright.messages.Message;
import slopewright.model.internal.Beside;
import slopewright.model.internal.FileOwnership;
import slopewright.model.internal.LockedFile;
import slopewright.model.internal.RefusedFileException;

/**
 * Writes files whole or not at all: the content is written beside the file, forced to the disk and read again before it takes the name
 * of the file in one step; then the folder is forced too. Whatever goes wrong, be it a kill, the file holds either what it held or the
 * new content. Nothing temporary is left; what a killed program left is removed by the next that writes the file. Where the file is a
 * symbolic link, the file it leads to is written. Permissions, and where the system lets it the owner, stay what they were; further
 * hard links keep the old content. Everything in the product that writes a file that a user named writes it here.
 */
public final class AtomicFile {

    /**
     * What is asked of a file that is replaced.
     *
     * @param expected SHA-256 of what it must still hold, 64 hexadecimal digits; empty where that does not matter. A file that is not
     *                 there any more is made
     * @param previous what is added to the name of the file for what it held before; empty where that is not kept
     * @param isOwn    whether it is a file of the product's own and not one that a user named: a link is replaced and not followed, and
     *                 nobody but the owner may read it
     */
    public record Terms(Optional<String> expected, Optional<String> previous, boolean isOwn) {

        /** Whatever it holds, nothing of which is kept. */
        public static final Terms PLAIN = new Terms(Optional.empty(), Optional.empty(), false);

        /** A file of the product's own. */
        public static final Terms OWN = new Terms(Optional.empty(), Optional.empty(), true);

        /** What it holds is kept under a name with this ending. */
        public static Terms keeping(String suffix) {
            return new Terms(Optional.empty(), Optional.of(suffix), false);
        }

        /** The same where it still holds what has this SHA-256; where there is none, whatever it holds. */
        public Terms whileStill(Optional<String> sha256) {
            return new Terms(sha256, previous, isOwn);
        }
    }

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
        try (Beside fresh = Beside.write(target, bytes, FileOwnership.ofNew())) {
            fresh.takeFreeName(target);
        }
        forceFolder(target);
    }

    /**
     * Writes a file, whether it is there or not.
     *
     * @param file  the file
     * @param bytes its new content
     * @throws IOException where it cannot be written
     */
    public static void replace(Path file, byte[] bytes) throws IOException {
        replace(file, bytes, Terms.PLAIN);
    }

    /**
     * Writes a file, whether it is there or not.
     *
     * @param file  the file
     * @param bytes its new content
     * @param terms what is asked of it
     * @throws FileChangedException where it does not hold what it must; it was not changed
     * @throws IOException          where it cannot be written; a device or a pipe cannot be replaced
     */
    public static void replace(Path file, byte[] bytes, Terms terms) throws IOException {
        Path target = target(file, terms);
        boolean isThere = Files.exists(target, LinkOption.NOFOLLOW_LINKS);
        if (isThere) {
            verifyReplaceable(target, terms);
        }
        try (Beside fresh = Beside.write(target, bytes, isThere ? FileOwnership.of(target, terms.isOwn())
                : terms.isOwn() ? FileOwnership.ofOwn() : FileOwnership.ofNew())) {
            exchange(fresh, target, terms);
        }
        forceFolder(target);
    }

    private static Path target(Path file, Terms terms) throws IOException {
        return Files.exists(file) && !terms.isOwn() ? file.toRealPath() : file.toAbsolutePath();
    }

    private static void verifyReplaceable(Path target, Terms terms) throws IOException {
        boolean isBrokenLink = Files.isSymbolicLink(target);
        if (!isBrokenLink && !Files.isRegularFile(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new RefusedFileException(target, Message.of(Files.isDirectory(target) ? "file.folder" : "file.not-ordinary"));
        }
        if (!isBrokenLink && !terms.isOwn() && !Files.isWritable(target)) {
            throw new AccessDeniedException(target.toString());
        }
    }

    /**
     * Puts the new content in the place of the old one. Two programs that expect the same content may come at once: each holds a lock on
     * what it found, so that the second finds it changed. Within one program one waits for the other.
     */
    private static synchronized void exchange(Beside fresh, Path target, Terms terms) throws IOException {
        if (terms.expected().isEmpty() || !Files.exists(target)) {
            put(fresh, target, terms);
            return;
        }
        try (LockedFile found = LockedFile.open(target)) {
            if (!terms.expected().get().equals(found.sha256()) || !found.isStillThere()) {
                throw new FileChangedException(target);
            }
            put(fresh, target, terms);
        }
    }

    private static void put(Beside fresh, Path target, Terms terms) throws IOException {
        if (terms.previous().isPresent() && Files.isRegularFile(target)) {
            try (Beside kept = Beside.second(target)) {
                kept.takeName(target.resolveSibling(target.getFileName() + terms.previous().get()));
            }
        }
        fresh.takeName(target);
    }

    /** Makes sure that the new name outlives a loss of power, on systems where a folder can be forced. */
    private static void forceFolder(Path target) {
        try (FileChannel folder = FileChannel.open(target.getParent(), StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException e) {
            return;
        }
    }

    /**
     * Puts a file of the product's own out of the way, under its name with an ending; where that is taken, with a number behind it.
     *
     * @param file   the file; a link itself is moved
     * @param suffix the ending
     * @return where it is now
     * @throws IOException where it cannot be moved
     */
    public static Path putAside(Path file, String suffix) throws IOException {
        for (int number = 1;; number++) {
            Path aside = file.resolveSibling(file.getFileName() + suffix + (number == 1 ? "" : "." + number));
            if (!Files.exists(aside, LinkOption.NOFOLLOW_LINKS)) {
                return Files.move(file, aside, StandardCopyOption.ATOMIC_MOVE);
            }
        }
    }
}
