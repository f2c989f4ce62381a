package slopewright.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a file whole or not at all. */
public final class OutputFile {

    private OutputFile() {
    }

    /**
     * Writes bytes beside the file and then puts them in its place in one step.
     *
     * @param file  the file
     * @param bytes what it will hold
     * @throws ReportException where it can not be written; then nothing has changed
     */
    public static void write(Path file, byte[] bytes) throws ReportException {
        Path target = file.toAbsolutePath();
        Path fresh = null;
        try {
            fresh = target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + ".new");
            Files.write(fresh, bytes, StandardOpenOption.CREATE_NEW);
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            if (fresh != null) {
                fresh.toFile().delete();
            }
            throw new ReportException(file + ": can not be written: " + e.getMessage(), e);
        }
    }
}
