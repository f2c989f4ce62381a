package slopewright.model.io;

import java.nio.file.Path;

import slopewright.messages.Message;
import slopewright.model.internal.RefusedFileException;

/** Another program wrote a file since it was read; what it wrote was left as it is. */
public final class FileChangedException extends RefusedFileException {

    private static final long serialVersionUID = 1L;

    /** Makes the fault for a file. */
    public FileChangedException(Path file) {
        super(file, Message.of("file.changed"));
    }
}
