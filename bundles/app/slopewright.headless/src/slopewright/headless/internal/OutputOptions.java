package slopewright.headless.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import slopewright.model.Project;

/** Where a command writes its file, and whether it may replace one. */
final class OutputOptions {

    @Option(names = {"-o", "--output"}, required = true, paramLabel = "FILE",
            description = "the file to write; its ending chooses the form; - for standard output")
    private Path file;

    @Option(names = "--force", description = "replace a file that is there already")
    private boolean force;

    @Option(names = "--form", paramLabel = "ENDING", description = "with -o -, the form by the ending that a file of it would have")
    private String form;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    /** Returns the file to write. */
    Path file() {
        return file;
    }

    /** Returns the ending, which must be one of those given. */
    String ending(List<String> known) {
        if (isStandardOutput()) {
            return form(known);
        }
        if (form != null) {
            throw new UsageException("--form goes with -o -; a file has its form by its ending");
        }
        String name = file.getFileName().toString();
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        if (name.lastIndexOf('.') < 0 || !known.contains(ending)) {
            throw new UsageException("the file must end in ." + String.join(", .", known) + ", not '" + name + "'");
        }
        return ending;
    }

    /** Tells whether the file is standard output. */
    boolean isStandardOutput() {
        return StandardOutput.isMeant(file);
    }

    private String form(List<String> known) {
        if (form == null && known.size() == 1) {
            return known.get(0);
        }
        if (form == null || !known.contains(form.toLowerCase(Locale.ROOT))) {
            throw new UsageException("-o - needs --form, one of " + String.join(", ", known) + (form == null ? ""
                    : ", not '" + form + "'"));
        }
        return form.toLowerCase(Locale.ROOT);
    }

    /** Refuses to replace a file unless that was asked for; to be called before any work is done. */
    void check() {
        if (isStandardOutput()) {
            StandardOutput.take(command);
            return;
        }
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
        if (isStandardOutput()) {
            StandardOutput.write(command, bytes);
        } else {
            FileOutput.write(file, bytes, force);
        }
    }

    /** Writes a project into the file, as {@link FileOutput#write(Path, Project, boolean)} does. */
    void write(Project project) {
        if (isStandardOutput()) {
            StandardOutput.write(command, project);
        } else {
            FileOutput.write(file, project, force);
        }
    }
}
