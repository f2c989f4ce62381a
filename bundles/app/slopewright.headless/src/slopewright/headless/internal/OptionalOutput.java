package slopewright.headless.internal;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.Optional;

import picocli.CommandLine.Option;

import slopewright.model.io.AtomicFile;

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
    void write(Path target, byte[] bytes, boolean mayReplace) {
        try {
            if (force || mayReplace) {
                AtomicFile.replace(target, bytes);
            } else {
                AtomicFile.create(target, bytes);
            }
        } catch (FileAlreadyExistsException e) {
            throw new UsageException(target + " is there already; nothing was written. Use --force to replace it");
        } catch (IOException e) {
            throw new UsageException(target + ": cannot be written: " + AtomicFile.reason(e));
        }
    }
}
