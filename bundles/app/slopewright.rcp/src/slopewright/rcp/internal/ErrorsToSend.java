package slopewright.rcp.internal;

import java.io.IOException;
import java.util.Optional;

import org.eclipse.core.runtime.ILogListener;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;

import slopewright.model.io.ErrorLog;

/**
 * Keeps the errors of the window in the same log as those of the command line, which a user can send to somebody else: the platform's own
 * log says at the head of each session which files were opened, with their folders.
 */
public final class ErrorsToSend {

    private ErrorsToSend() {
    }

    /** From now on, errors that the platform logs are kept in {@link ErrorLog} too; returns who listens for them. */
    public static ILogListener keep() {
        ILogListener listener = (status, bundle) -> {
            if (status.matches(IStatus.ERROR)) {
                append(status);
            }
        };
        Platform.addLogListener(listener);
        return listener;
    }

    /** What cannot be kept is in the platform's log still. */
    private static void append(IStatus status) {
        try {
            ErrorLog.append(status.getPlugin() + ": " + status.getMessage(), Optional.ofNullable(status.getException()));
        } catch (IOException | RuntimeException e) {
            Platform.getLog(ErrorsToSend.class).info("the error could not be kept: " + e.getMessage());
        }
    }
}
