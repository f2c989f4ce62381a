package slopewright.model.io;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

import slopewright.messages.Message;
import slopewright.model.BackgroundImage;
import slopewright.model.internal.FileDigest;
import slopewright.model.internal.RefusedFileException;

/**
 * The file of a picture that lies under a plan. A project may come from anybody: what it names is read only where it lies in the project's
 * folder or below, whatever the path or a link says, and only as long as it is the file that was laid under the plan and scaled.
 */
public final class ProjectPicture {

    private static final long MOST_COPIED_BYTES = 512L << 20;
    private static final int MOST_NAMES = 1000;

    private ProjectPicture() {
    }

    /**
     * Returns the file of a picture, so that it may be read.
     *
     * @param project the file of the project
     * @param named   the path that the project names, from the folder of the project on
     * @param sha256  SHA-256 of the picture as it was laid under the plan; where there is none the content is not compared
     * @return the file, no link
     * @throws IOException where it is not there, lies outside the project's folder, is no ordinary file, or is another than was laid under
     *                     the plan; nothing outside the folder was read
     */
    public static Path of(Path project, String named, Optional<String> sha256) throws IOException {
        Path folder = folder(project);
        Path file;
        try {
            file = folder.resolve(named).normalize();
        } catch (InvalidPathException e) {
            throw new NoSuchFileException(named);
        }
        if (!file.startsWith(folder)) {
            throw new RefusedFileException(file, Message.of("picture.outside"));
        }
        Path real = file.toRealPath();
        if (!real.startsWith(folder.toRealPath())) {
            throw new RefusedFileException(file, Message.of("picture.outside"));
        }
        if (!Files.isRegularFile(real, LinkOption.NOFOLLOW_LINKS)) {
            throw new RefusedFileException(file, Message.of("file.not-ordinary"));
        }
        if (sha256.isPresent() && !sha256.get().strip().equalsIgnoreCase(FileDigest.sha256(real))) {
            throw new RefusedFileException(file, Message.of("picture.changed"));
        }
        return real;
    }

    /**
     * Names the file of a picture in a project; a file from elsewhere is copied beside the project first, and no file that is there is
     * written over.
     *
     * @param image   the picture, gets path and SHA-256
     * @param project the file of the project, in a folder that exists
     * @param chosen  the file that a user chose
     * @throws IOException where a file cannot be read or written
     */
    public static void name(BackgroundImage image, Path project, Path chosen) throws IOException {
        Path folder = folder(project).toRealPath();
        Path real = chosen.toRealPath();
        Path kept = real.startsWith(folder) ? real : copied(folder, real);
        image.setPath(folder.relativize(kept).toString().replace('\\', '/'));
        image.setSha256(FileDigest.sha256(kept));
    }

    private static Path folder(Path project) {
        return project.toAbsolutePath().normalize().getParent();
    }

    private static Path copied(Path folder, Path from) throws IOException {
        if (Files.size(from) > MOST_COPIED_BYTES) {
            throw new RefusedFileException(from, Message.of("picture.outside"));
        }
        byte[] bytes = Files.readAllBytes(from);
        String name = String.valueOf(from.getFileName());
        int dot = name.lastIndexOf('.') < 0 ? name.length() : name.lastIndexOf('.');
        for (int number = 1; number <= MOST_NAMES; number++) {
            Path file = folder.resolve(number == 1 ? name : name.substring(0, dot) + "-" + number + name.substring(dot));
            if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Files.mismatch(file, from) < 0) {
                return file;
            }
            if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                AtomicFile.create(file, bytes);
                return file;
            }
        }
        throw new FileAlreadyExistsException(name);
    }
}
