package slopewright.model.util;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

/** Every range says why it is as wide as it is. */
class ValueRangeTest {

    @Test
    void everyRangeIsArgued() throws IOException {
        String text;
        try (InputStream in = ValueRange.class.getResourceAsStream("ranges.properties")) {
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        List<String> without = new ArrayList<>();
        int ranges = 0;
        for (String group : text.split("\n\n")) {
            List<String> lines = group.lines().toList();
            boolean argued = lines.get(0).startsWith("# ") && lines.get(0).length() > "# Own band.".length();
            for (String line : lines.stream().filter(line -> !line.startsWith("#")).toList()) {
                ranges++;
                String[] ends = line.substring(line.indexOf('=') + 1).strip().split(" ");
                assertTrue(Double.parseDouble(ends[0]) < Double.parseDouble(ends[1]), line);
                if (!argued) {
                    without.add(line);
                }
            }
        }
        assertEquals(List.of(), without);
        assertEquals(ValueRange.keys().size(), ranges);
    }
}
