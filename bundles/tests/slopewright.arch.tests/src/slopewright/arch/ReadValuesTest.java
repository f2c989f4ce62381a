package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

/**
 * Every value of a rule set is read by some code: one that nobody reads gives confidence that nothing rests on. The name of a value is
 * that behind the family, with its unit or without; it stands in a string of the sources, whole or put together around a word that varies.
 */
class ReadValuesTest {
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    private static final List<String> UNITS = List.of("-m", "-ft", "-nm", "-deg", "-min", "-percent", "-s", "-hz", "-v", "-cd", "-lx",
            "-times");
    private static final List<String> VARYING = List.of("near", "middle", "far", "day", "twilight", "night", "reduced", "enlarged",
            "small-runway", "glide-path", "very", "tradition", "helipad");

    private static Set<String> literals() {
        Set<String> found = new HashSet<>();
        for (BundleFolder bundle : SourceTree.bundles()) {
            if (!bundle.group().equals("tests")) {
                for (Path file : SourceTree.files(bundle.folder().resolve("src"), ".java")) {
                    Matcher matcher = LITERAL.matcher(SourceTree.text(file));
                    while (matcher.find()) {
                        found.add(matcher.group(1));
                    }
                }
            }
        }
        return found;
    }

    private static Stream<String> keys() {
        Path data = SourceTree.root().resolve("bundles/core/slopewright.standards/data");
        return SourceTree.files(data, "values.csv").stream().flatMap(file -> SourceTree.text(file).lines().skip(1))
                .filter(line -> !line.startsWith("#")).map(line -> line.substring(0, line.indexOf(',')));
    }

    private static boolean isRead(Set<String> literals, String name) {
        boolean whole = Stream.concat(Stream.of(""), UNITS.stream()).filter(name::endsWith)
                .map(unit -> name.substring(0, name.length() - unit.length())).anyMatch(stem -> isWritten(literals, stem));
        return whole || VARYING.stream().anyMatch(word -> isReadAround(literals, name, word));
    }

    private static boolean isReadAround(Set<String> literals, String name, String word) {
        int middle = name.indexOf("-" + word + "-");
        return name.startsWith(word + "-") && isRead(literals, name.substring(word.length() + 1))
                || middle > 0 && isWritten(literals, name.substring(0, middle + 1));
    }

    private static boolean isWritten(Set<String> literals, String stem) {
        return literals.stream().anyMatch(literal -> literal.equals(stem) || literal.endsWith("." + stem) || literal.equals("-" + stem));
    }

    @Test
    void everyValueOfARuleSetIsRead() {
        Set<String> literals = literals();
        Set<String> unread = keys().filter(key -> !isRead(literals, key.substring(key.indexOf('.') + 1))).collect(Collectors.toSet());
        assertEquals(Set.of(), unread);
    }

    @Test
    void aValueThatNobodyReadsIsFound() {
        Set<String> literals = Set.of("unit-spacing", "range.eye-illuminance-", "-unit-spacing");
        assertTrue(isRead(literals, "unit-spacing-m"));
        assertTrue(isRead(literals, "enlarged-unit-spacing-m"));
        assertTrue(isRead(literals, "eye-illuminance-day-lx"));
        assertFalse(isRead(literals, "unit-spacing-least-m"));
        assertFalse(isRead(literals, "spacing-m"));
    }
}
