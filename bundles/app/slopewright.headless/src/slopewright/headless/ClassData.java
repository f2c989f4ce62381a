package slopewright.headless;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Runs the commands that scripts call most over a project, so that a virtual machine which lists the classes that it loads
 * ({@code -XX:DumpLoadedClassList}) lists theirs. Prints nothing; what the commands write is deleted.
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
            for (List<String> command : commands) {
                run(command);
            }
        } finally {
            Files.deleteIfExists(report);
            Files.delete(folder);
        }
    }

    private static void run(List<String> words) throws IOException {
        String[] call = words.toArray(String[]::new);
        try (OutputStream nowhere = OutputStream.nullOutputStream()) {
            Start.run(call, nowhere, nowhere);
        }
    }
}
