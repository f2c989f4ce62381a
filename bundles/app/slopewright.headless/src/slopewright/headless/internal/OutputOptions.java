package slopewright.headless.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import picocli.CommandLine.Option;

import slopewright.model.Project;

/** Where a command writes its file, and whether it may replace one. */
final class OutputOptions {

    @Option(names = {"-o", "--output"}, required = true, paramLabel = "FILE",
            description = "the file to write; its ending chooses the form")
    private Path file;

    @Option(names = "--force", description = "replace a file that is there already")
    private boolean force;

    /** Returns the file to write. */
    Path file() {
        return file;
    }

    /** Returns the ending, which must be one of those given. */
    String ending(List<String> known) {
        String name = file.getFileName().toString();
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        if (name.lastIndexOf('.') < 0 || !known.contains(ending)) {
            throw new UsageException("the file must end in ." + String.join(", .", known) + ", not '" + name + "'");
        }
        return ending;
    }

    /** Refuses to replace a file unless that was asked for; to be called before any work is done. */
    void check() {
        if (Files.exists(file) && !force) {
            throw FileOutput.thereAlready(file);
        }
        Path folder = file.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder)) {
            throw new UsageException("there is no folder " + folder + "; nothing was written");
        }
    }

    /** Writes the file whole or not at all; without leave to replace one it is made only where there still is none. */
    void write(byte[] bytes) {
        FileOutput.write(file, bytes, force);
    }

    /** Writes a project into the file, as {@link FileOutput#write(Path, Project, boolean)} does. */
    void write(Project project) {
        FileOutput.write(file, project, force);
    }
}
