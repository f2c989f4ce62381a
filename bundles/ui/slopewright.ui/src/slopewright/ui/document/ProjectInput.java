package slopewright.ui.document;

import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

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

    /**
     * Names a project file.
     *
     * @param path the file; kept absolute and without detours
     */
    public ProjectInput(Path path) {
        this.path = path.toAbsolutePath().normalize();
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
