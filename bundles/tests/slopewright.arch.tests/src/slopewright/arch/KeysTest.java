package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

/** No two commands of the window have the same keys: where the plan has the focus, its own would take those that lead to other views. */
class KeysTest {
    private static final Pattern KEY = Pattern.compile("<key\\s+commandId=\"([^\"]+)\"[^>]*?sequence=\"([^\"]+)\"", Pattern.DOTALL);

    @Test
    void noTwoCommandsHaveTheSameKeys() throws IOException {
        Map<String, List<String>> commands = new TreeMap<>();
        try (Stream<Path> files = Files.walk(Path.of(System.getProperty("slopewright.root"), "bundles"), 3)) {
            for (Path file : files.filter(path -> path.endsWith("plugin.xml")).toList()) {
                Matcher key = KEY.matcher(Files.readString(file));
                while (key.find()) {
                    commands.computeIfAbsent(same(key.group(2)), keys -> new ArrayList<>()).add(key.group(1));
                }
            }
        }
        assertTrue(commands.size() > 20, commands.toString());
        commands.values().removeIf(all -> all.stream().distinct().count() == 1);
        assertEquals(Map.of(), commands);
    }

    /** The keys by one name each, whatever they are called and in which order they stand. */
    private static String same(String sequence) {
        String named = sequence.replace("M1", "CTRL").replace("M2", "SHIFT").replace("M3", "ALT");
        return new TreeSet<>(List.of(named.split("\\+"))).toString();
    }
}
