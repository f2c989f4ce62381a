package slopewright.headless.internal;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;

/** Keeps the trace of an internal error out of sight and in a file. */
final class ErrorLog {

    private ErrorLog() {
    }

    /** Appends a trace and returns where it was written, or why it could not be. */
    static String append(Throwable thrown) {
        String configured = System.getProperty("slopewright.log");
        Path log = configured != null ? Path.of(configured) : Path.of(System.getProperty("user.home"), ".slopewright", "error.log");
        StringWriter trace = new StringWriter();
        thrown.printStackTrace(new PrintWriter(trace, true));
        try {
            if (log.getParent() != null) {
                Files.createDirectories(log.getParent());
            }
            Files.writeString(log, LocalDateTime.now() + System.lineSeparator() + trace, StandardCharsets.UTF_8, StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
            return "the trace is in " + log;
        } catch (IOException e) {
            return "no trace could be written to " + log;
        }
    }
}
