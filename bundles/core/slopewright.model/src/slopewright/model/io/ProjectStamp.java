package slopewright.model.io;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.model.Project;
import slopewright.model.internal.FileDigest;

/**
 * By what a person tells which state of a project something was made from.
 *
 * @param sha256  SHA-256 of the saved file; of what would be saved where it is not saved as it stands; 64 hexadecimal digits
 * @param isSaved whether the file holds the project as it stands
 */
public record ProjectStamp(String sha256, boolean isSaved) {

    private static final int SHORT = 12;

    /**
     * Makes the stamp of a project.
     *
     * @param project the project, not changed but for ids that are missing
     * @return the stamp; empty where no file could hold the project as it stands
     */
    public static Optional<ProjectStamp> of(Project project) {
        byte[] bytes;
        try {
            bytes = ProjectFile.bytes(project);
        } catch (IllegalStateException e) {
            return Optional.empty();
        }
        return Optional.of(saved(project, bytes).map(file -> new ProjectStamp(FileDigest.sha256(file), true))
                .orElseGet(() -> new ProjectStamp(FileDigest.sha256(bytes), false)));
    }

    /** Returns the bytes of the file where it holds the project as it stands, be it in another arrangement. */
    private static Optional<byte[]> saved(Project project, byte[] bytes) {
        Optional<Path> file = Optional.ofNullable(project.eResource()).map(Resource::getURI).filter(URI::isFile)
                .map(uri -> Path.of(uri.toFileString())).filter(Files::isRegularFile);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        try {
            byte[] found = Files.readAllBytes(file.get());
            boolean same = Arrays.equals(found, bytes) || EcoreUtil.equals(project, ProjectFile.load(file.get()));
            return same ? Optional.of(found) : Optional.empty();
        } catch (IOException | ProjectFileException e) {
            return Optional.empty();
        }
    }

    /** Returns the first digits, enough to tell versions of a project apart. */
    public String brief() {
        return sha256.substring(0, SHORT);
    }
}
