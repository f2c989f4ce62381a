package slopewright.witness;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The numbers of the rule texts in the form edition, family, name, number, each with its clause. A name that an edition
 * does not restate is looked up in its parent edition, and after the family under {@code all}.
 */
public final class Transcription {
    /** Family key of numbers shared by all families of an edition. */
    public static final String ALL = "all";

    private static final Map<String, Entry> ENTRIES = read();

    private Transcription() {
    }

    /** All entries in the order they are written. */
    public static List<Entry> entries() {
        return List.copyOf(ENTRIES.values());
    }

    /** The entry itself, without looking into a parent edition or {@code all}; null where there is none. */
    public static Entry own(Edition edition, String family, String name) {
        return ENTRIES.get(key(edition, family, name));
    }

    /** The entry, after inheritance; null where no text gives a number. */
    public static Entry find(Edition edition, String family, String name) {
        for (Edition step = edition; step != null; step = step.parent()) {
            Entry entry = own(step, family, name);
            if (entry == null) {
                entry = own(step, ALL, name);
            }
            if (entry != null) {
                return entry;
            }
        }
        return null;
    }

    /** The number, after inheritance, in the unit its name ends with. Fails where no text gives one. */
    public static double number(Edition edition, String family, String name) {
        return maybe(edition, family, name).orElseThrow(
            () -> new IllegalArgumentException("not printed: " + edition.key() + " " + family + " " + name));
    }

    /** The number of a family, after inheritance. Fails where no text gives one. */
    public static double number(Edition edition, Family family, String name) {
        return number(edition, family.key(), name);
    }

    /** The number, after inheritance, or empty where no text gives one. */
    public static OptionalDouble maybe(Edition edition, String family, String name) {
        Entry entry = find(edition, family, name);
        return entry == null ? OptionalDouble.empty() : OptionalDouble.of(entry.value());
    }

    private static String key(Edition edition, String family, String name) {
        return edition.key() + "|" + family + "|" + name;
    }

    private static Map<String, Entry> read() {
        List<String> texts = List.of(TextIcaoRows.TEXT, TextIcaoOther.TEXT, TextIcaoNinth.TEXT, TextNational.TEXT, TextAmerican.TEXT);
        Map<String, Entry> map = new LinkedHashMap<>();
        for (String text : texts) {
            Edition edition = null;
            String family = null;
            for (String line : text.lines().toList()) {
                if (line.isBlank()) {
                    continue;
                }
                if (line.startsWith("@")) {
                    String[] head = line.substring(1).split(" ");
                    edition = Edition.of(head[0]);
                    family = head[1];
                    continue;
                }
                Entry entry = entry(edition, family, line);
                if (map.put(key(edition, family, entry.name()), entry) != null) {
                    throw new IllegalStateException("twice: " + line);
                }
            }
        }
        return Collections.unmodifiableMap(map);
    }

    private static Entry entry(Edition edition, String family, String line) {
        List<String> cells = new ArrayList<>(List.of(line.split("\\|")));
        String provenance = switch (cells.get(2)) {
            case "p" -> "published";
            case "s" -> "secondary";
            case "d" -> "derived";
            case "m" -> "from-memory";
            default -> throw new IllegalStateException(line);
        };
        return new Entry(edition, family, cells.get(0), Double.parseDouble(cells.get(1)), provenance, cells.get(3));
    }
}
