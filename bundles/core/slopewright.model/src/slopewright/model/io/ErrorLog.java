package slopewright.model.io;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Keeps what went wrong inside out of sight and in a file that a user can send: in the folder of the user's settings
 * ({@code SLOPEWRIGHT_DATA}, else {@code .slopewright} in the home), never in that of the product. Folders are taken out of what it says.
 */
public final class ErrorLog {

    private static final String NAME = "error.log";
    private static final int MOST_BYTES = 1 << 20;
    /** An apostrophe or a colon ends a path only where a letter does not follow it: {@code /home/o'brien/a:b/}. */
    private static final Pattern FOLDERS = Pattern
            .compile("(?<![\\w.])(?:[A-Za-z]:)?(?:[/\\\\](?:[^/\\\\\\v:'\"]|[:'](?=\\w))+)+[/\\\\]");

    private ErrorLog() {
    }

    /**
     * Appends a trace. A log that has become long begins anew.
     *
     * @param message what went wrong, empty where the trace says it
     * @param thrown  the cause, where there is one
     * @throws IOException where it cannot be written
     */
    public static void append(String message, Optional<Throwable> thrown) throws IOException {
        Path log = file();
        StringWriter trace = new StringWriter();
        thrown.ifPresent(cause -> cause.printStackTrace(new PrintWriter(trace, true)));
        String text = LocalDateTime.now() + " " + Program.text() + " Java " + System.getProperty("java.version") + System.lineSeparator()
                + withoutFolders((message.isEmpty() ? "" : message + System.lineSeparator()) + trace);
        if (log.getParent() != null) {
            Files.createDirectories(log.getParent());
        }
        boolean isLong = Files.exists(log) && Files.size(log) > MOST_BYTES;
        Files.writeString(log, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE,
                isLong ? StandardOpenOption.TRUNCATE_EXISTING : StandardOpenOption.APPEND, StandardOpenOption.WRITE);
    }

    /** Returns where the log is. */
    public static Path file() {
        String configured = System.getProperty("slopewright.log");
        if (configured != null) {
            return Path.of(configured);
        }
        String data = System.getenv("SLOPEWRIGHT_DATA");
        return (data == null || data.isBlank() ? Path.of(System.getProperty("user.home"), ".slopewright") : Path.of(data)).resolve(NAME);
    }

    /** Takes the folders of paths out of a text, and leaves the names of files. */
    static String withoutFolders(String text) {
        String home = System.getProperty("user.home", "");
        return FOLDERS.matcher(home.length() > 1 ? text.replace(home, "/~") : text).replaceAll(".../");
    }
}
