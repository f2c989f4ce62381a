package slopewright.headless.internal;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.Optional;

import slopewright.messages.Reasoned;
import slopewright.model.Project;
import slopewright.model.io.AtomicFile;
import slopewright.model.io.FileChangedException;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;

/** Writes the files that a command was asked for, each whole or not at all, and turns what goes wrong into one sentence. */
final class FileOutput {

    private FileOutput() {
    }

    /** Writes a file; without leave to replace one it is made only where there still is none. */
    static void write(Path file, byte[] bytes, boolean mayReplace) {
        try {
            if (mayReplace) {
                AtomicFile.replace(file, bytes);
            } else {
                AtomicFile.create(file, bytes);
            }
        } catch (IOException e) {
            throw failed(file, e);
        }
    }

    /** Writes a file anew that was read; what it held is kept, and nothing is replaced that another program wrote meanwhile. */
    static void renew(Path file, byte[] bytes, String sha256) {
        try {
            AtomicFile.replace(file, bytes, AtomicFile.Terms.keeping(ProjectFile.PREVIOUS_SUFFIX).whileStill(Optional.of(sha256)));
        } catch (IOException e) {
            throw failed(file, e);
        }
    }

    /**
     * Writes a project; without leave to replace a file it is made only where there still is none. What is replaced is kept, and nothing is
     * replaced that another program wrote since the project was read from it.
     */
    static void write(Path file, Project project, boolean mayReplace) {
        try {
            if (mayReplace) {
                ProjectFile.save(project, file);
            } else {
                ProjectFile.create(project, file);
            }
        } catch (ProjectFileException e) {
            if (e.getCause() instanceof IOException cause) {
                throw failed(file, cause);
            }
            throw new InputException(e.getMessage());
        }
    }

    /** Says that a file is there already. */
    static UsageException thereAlready(Path file) {
        return new UsageException(file + " is there already; nothing was written. Use --force to replace it");
    }

    /** Returns what a command ends with that could not write a file. */
    static RuntimeException failed(Path file, IOException e) {
        if (e instanceof FileAlreadyExistsException) {
            return thereAlready(file);
        }
        String reason = file + ": cannot be written: " + Reasoned.of(e).english();
        return e instanceof FileChangedException ? new UsageException(reason + "; run the command again") : new OutputException(reason);
    }
}
