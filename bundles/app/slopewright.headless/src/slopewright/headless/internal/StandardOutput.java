package slopewright.headless.internal;

import java.nio.file.Path;

import picocli.CommandLine.Model.CommandSpec;

import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;

/** Standard output in the place of a file: it gets the bytes of the file and nothing else, and lines for people go to standard error. */
final class StandardOutput {

    private StandardOutput() {
    }

    /** Tells whether a file stands for it: a dash. */
    static boolean isMeant(Path file) {
        return file != null && file.toString().equals("-");
    }

    /** Keeps it clear of lines for people from now on. */
    static Streams take(CommandSpec command) {
        Streams streams = ((Command) command.userObject()).streams();
        streams.keepOutForBytes();
        return streams;
    }

    static void write(CommandSpec command, byte[] bytes) {
        take(command).out.write(bytes, 0, bytes.length);
    }

    static void write(CommandSpec command, Project project) {
        try {
            write(command, ProjectFile.provenBytes(project, "-"));
        } catch (ProjectFileException e) {
            throw new InputException(e.getMessage());
        }
    }
}
