package slopewright.model.internal;

import java.nio.file.FileSystemException;
import java.nio.file.Path;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/** A file that cannot be written for a reason that was found here and not by the file system. */
public class RefusedFileException extends FileSystemException implements Reasoned {

    private static final long serialVersionUID = 1L;

    private final transient Message reason;

    /** Makes the fault for a file. */
    public RefusedFileException(Path file, Message reason) {
        super(file.toString());
        this.reason = reason;
    }

    @Override
    public final Message reason() {
        return reason;
    }

    @Override
    public final String getReason() {
        return reason.english();
    }

    @Override
    public final String getMessage() {
        return getFile() + ": " + getReason();
    }
}
