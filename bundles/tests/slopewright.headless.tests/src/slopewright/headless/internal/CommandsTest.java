package slopewright.headless.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import picocli.CommandLine;

/** Each word calls the command that bears its name, and no command of the sources is left out. */
class CommandsTest {

    private static final Path SOURCES = Path.of(System.getProperty("slopewright.root"))
            .resolve("bundles/app/slopewright.headless/src/slopewright/headless/internal");

    static Stream<String> names() {
        return Commands.NAMES.stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void aWordCallsTheCommandOfItsName(String name) {
        assertEquals(name, Commands.make(name).getClass().getAnnotation(CommandLine.Command.class).name());
    }

    @Test
    void everyCommandOfTheSourcesIsThere() throws IOException {
        Set<String> written = new TreeSet<>();
        try (Stream<Path> files = Files.list(SOURCES)) {
            for (Path file : files.toList()) {
                String text = Files.readString(file);
                if (text.contains("@CommandLine.Command(") && !text.contains("final class TopCommand")) {
                    written.add(file.getFileName().toString().replace(".java", ""));
                }
            }
        }
        assertEquals(written, names().map(name -> Commands.make(name).getClass().getSimpleName())
                .collect(Collectors.toCollection(TreeSet::new)));
        assertEquals(Commands.NAMES.size(), new HashSet<>(Commands.NAMES).size(), "a name stands twice");
    }

    @Test
    void anotherWordCallsNone() {
        assertThrows(IllegalArgumentException.class, () -> Commands.make("chekc"));
    }
}
