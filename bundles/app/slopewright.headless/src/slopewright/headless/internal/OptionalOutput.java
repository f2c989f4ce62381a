package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.Optional;

import picocli.CommandLine.Option;

import slopewright.model.Project;

/** Where a command writes its file, where it writes one at all. */
final class OptionalOutput {
    @Option(names = {"-o", "--output"}, paramLabel = "FILE", description = "the file to write")
    private Path file;

    @Option(names = "--force", description = "replace a file that is there already")
    private boolean force;

    /** Returns the file that was named. */
    Optional<Path> file() {
        return Optional.ofNullable(file);
    }

    /** Writes a file whole or not at all; without leave to replace one it is made only where there still is none. */
    void write(Path target, byte[] bytes) {
        FileOutput.write(target, bytes, force);
    }

    /** Writes a project, as {@link FileOutput#write(Path, Project, boolean)} does. */
    void write(Path target, Project project) {
        FileOutput.write(target, project, force);
    }
}
