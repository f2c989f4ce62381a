package slopewright.ui.document;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

import slopewright.model.Project;
import slopewright.ui.Images;

/**
 * A project file as the input of an editor. Two inputs are equal where they name the same file, so a project is open in
 * one editor only. An input whose file does not exist yet names a new project: its editor begins with an empty one and
 * writes the file at the first save.
 */
public final class ProjectInput implements IEditorInput {

    /** How the name of a project file ends. */
    public static final String FILE_SUFFIX = ".slopewright";

    private final Path path;
    private Optional<Project> read;

    /**
     * Names a project file.
     *
     * @param path the file; kept absolute and without detours
     */
    public ProjectInput(Path path) {
        this(path, Optional.empty());
    }

    /**
     * Names a project file that was just read.
     *
     * @param path the file; kept absolute and without detours
     * @param read what was read; the editor goes on with it and does not read the file again
     */
    public ProjectInput(Path path, Project read) {
        this(path, Optional.of(read));
    }

    private ProjectInput(Path path, Optional<Project> read) {
        this.path = path.toAbsolutePath().normalize();
        this.read = read;
    }

    /** Returns what was read of the file, to the first who asks; empty after that. */
    Optional<Project> take() {
        Optional<Project> taken = read;
        read = Optional.empty();
        return taken;
    }

    /**
     * The project file.
     *
     * @return an absolute path
     */
    public Path path() {
        return path;
    }

    @Override
    public boolean exists() {
        return Files.isRegularFile(path);
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return Images.PROJECT.descriptor();
    }

    @Override
    public String getName() {
        Path name = path.getFileName();
        return name == null ? path.toString() : name.toString();
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return path.toString();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter == Path.class ? adapter.cast(path) : null;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ProjectInput input && path.equals(input.path);
    }

    @Override
    public int hashCode() {
        return path.hashCode();
    }

    @Override
    public String toString() {
        return "ProjectInput[" + path + "]";
    }
}
