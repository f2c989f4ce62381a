package slopewright.model.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Who may read and write a file, where the file system has owners and permissions; elsewhere it asks for nothing.
 *
 * @param kept   what the file that is replaced has; empty where there is none
 * @param isOwn  whether only the owner may read and write it
 */
public record FileOwnership(Optional<PosixFileAttributes> kept, boolean isOwn) {

    private static final Set<PosixFilePermission> OWNER_ONLY = EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

    /** Returns what a new file gets from the system. */
    public static FileOwnership ofNew() {
        return new FileOwnership(Optional.empty(), false);
    }

    /** Returns what a file of the product's own gets. */
    public static FileOwnership ofOwn() {
        return new FileOwnership(Optional.empty(), true);
    }

    /** Returns what a file has that is to be replaced. */
    public static FileOwnership of(Path file, boolean isOwn) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        return isOwn || view == null || Files.isSymbolicLink(file) ? new FileOwnership(Optional.empty(), isOwn)
                : new FileOwnership(Optional.of(view.readAttributes()), false);
    }

    /** Returns with what the file beside is made: nobody else reads it before it has the permissions of the one it replaces. */
    FileAttribute<?>[] first(Path folder) throws IOException {
        boolean hides = (isOwn || kept.isPresent()) && Files.getFileStore(folder).supportsFileAttributeView(PosixFileAttributeView.class);
        return hides ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ONLY)} : new FileAttribute<?>[0];
    }

    /** Gives a file owner, group and permissions; an owner that the user cannot give it is left. */
    void apply(Path file) throws IOException {
        if (kept.isEmpty()) {
            return;
        }
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        PosixFileAttributes now = view.readAttributes();
        Set<PosixFilePermission> permissions = EnumSet.noneOf(PosixFilePermission.class);
        permissions.addAll(kept.get().permissions());
        try {
            if (!now.group().equals(kept.get().group())) {
                view.setGroup(kept.get().group());
            }
        } catch (IOException e) {
            permissions.removeAll(EnumSet.of(PosixFilePermission.GROUP_READ, PosixFilePermission.GROUP_WRITE,
                    PosixFilePermission.GROUP_EXECUTE));
        }
        view.setPermissions(permissions);
        if (!now.owner().equals(kept.get().owner())) {
            giveAway(view);
        }
    }

    private void giveAway(PosixFileAttributeView view) {
        try {
            view.setOwner(kept.get().owner());
        } catch (IOException e) {
            return;
        }
    }
}
