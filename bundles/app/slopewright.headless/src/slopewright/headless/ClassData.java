package slopewright.headless;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Runs the commands that scripts call most over a project, so that a virtual machine which keeps an archive of its classes at its end
 * ({@code -XX:ArchiveClassesAtExit}) keeps theirs. Prints nothing; what the commands write is deleted.
 */
public final class ClassData {

    private ClassData() {
    }

    /**
     * Runs the commands.
     *
     * @param words the file of a project
     * @throws IOException where there is no room for what they write
     */
    public static void main(String[] words) throws IOException {
        String file = words[0];
        Path folder = Files.createTempDirectory("slopewright-");
        Path report = folder.resolve("report.html");
        try {
            List<List<String>> commands = List.of(List.of("--help"), List.of("families"), List.of("rules"), List.of("rule-sets"),
                    List.of("check", file), List.of("check", "--json", file),
                    List.of("site", "--family", "four-unit-row", "--slope-deg", "3", "--runway-width-m", "45", "--code", "4", "--approach",
                            "instrument", "--eye-to-wheel-m", "6", "--clearance", "desired"),
                    List.of("report", file, "-o", report.toString()));
            commands.forEach(ClassData::run);
        } finally {
            Files.deleteIfExists(report);
            Files.delete(folder);
        }
    }

    private static void run(List<String> words) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        InputStream nothing = new ByteArrayInputStream(new byte[0]);
        Main.run(words.toArray(String[]::new), nowhere, nowhere, nothing);
    }
}
