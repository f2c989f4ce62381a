package slopewright.model.io;

import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** Another program wrote a file since it was read; what it wrote was left as it is. */
public final class FileChangedException extends FileSystemException {

    private static final long serialVersionUID = 1L;

    /** Makes the fault for a file. */
    public FileChangedException(Path file) {
        super(file.toString(), null, "another program changed it since it was read; it was left as it is");
    }
}
