package slopewright.messages;

import java.io.IOException;
import java.io.UnsupportedEncodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

import slopewright.geometry.DecimalException;

/** What says why something was refused or failed as data: mostly an exception, whose own message is the same in English. */
public interface Reasoned {

    /** Returns why. */
    Message reason();

    /**
     * Returns why something failed, whatever threw it. What comes from the file system, or from a library, has no sentence of the
     * catalogues and is said as it is.
     *
     * @param failure what was thrown
     */
    static Message of(Throwable failure) {
        if (failure instanceof Reasoned reasoned) {
            return reasoned.reason();
        }
        if (failure instanceof DecimalException decimal) {
            return Message.said(decimal.isTooLarge() ? "number.large" : "number.none", decimal.text());
        }
        return failure instanceof IOException io ? ofFile(io) : plain(failure);
    }

    private static Message ofFile(IOException failure) {
        if (failure instanceof FileAlreadyExistsException) {
            return Message.of("file.there");
        }
        if (failure instanceof AccessDeniedException) {
            return Message.of("file.denied");
        }
        if (failure instanceof NoSuchFileException) {
            return Message.of("file.absent");
        }
        if (failure instanceof UnsupportedEncodingException) {
            return Message.said("file.encoding", String.valueOf(failure.getMessage()));
        }
        return failure instanceof FileSystemException system && system.getReason() != null
                ? Message.said("plain", system.getReason()) : plain(failure);
    }

    private static Message plain(Throwable failure) {
        return Message.said("plain", failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage());
    }
}
