package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.Optional;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import slopewright.model.Project;

/** Where a command writes its file, where it writes one at all. */
final class OptionalOutput {
    @Option(names = {"-o", "--output"}, paramLabel = "FILE", description = "the file to write; - for standard output")
    private Path file;

    @Option(names = "--force", description = "replace a file that is there already")
    private boolean force;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    /** Returns the file that was named; where that is standard output, lines for people go elsewhere from now on. */
    Optional<Path> file() {
        if (StandardOutput.isMeant(file)) {
            StandardOutput.take(command);
        }
        return Optional.ofNullable(file);
    }

    /** Writes a file whole or not at all; without leave to replace one it is made only where there still is none. */
    void write(Path target, byte[] bytes) {
        if (StandardOutput.isMeant(target)) {
            StandardOutput.write(command, bytes);
        } else {
            FileOutput.write(target, bytes, force);
        }
    }

    /** Writes a project, as {@link FileOutput#write(Path, Project, boolean)} does. */
    void write(Path target, Project project) {
        if (StandardOutput.isMeant(target)) {
            StandardOutput.write(command, project);
        } else {
            FileOutput.write(target, project, force);
        }
    }
}
