package slopewright.standards.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;

import slopewright.standards.Citation;
import slopewright.standards.CitedChoice;
import slopewright.standards.CitedText;
import slopewright.standards.CitedValue;
import slopewright.standards.Provenance;
import slopewright.standards.RuleChoice;
import slopewright.standards.RuleSet;
import slopewright.standards.Source;
import slopewright.standards.StandardsException;

/**
 * Reads the rule sets from the folders that {@code data/rule-sets.txt} lists, each when it is asked for and once. A folder is named
 * {@code KEY/EDITION} by what it holds. May be used by several threads.
 */
public final class RuleSetLoader {

    private static final List<String> SOURCE_COLUMNS = List.of("key", "title", "edition");
    static final List<String> VALUE_COLUMNS = List.of("key", "value", "unit", "source", "clause", "provenance", "note");
    private static final List<String> UNITS = List.of("m", "ft", "deg", "min", "%", "NM", "s", "Hz", "V", "cd", "lx", "ratio", "count",
            "year", "times", "code", "in", "mi");

    private static final Map<String, List<String>> OF_ENDING = Map.of("-m", List.of("m", "ft", "in", "NM", "mi"), "-ft", List.of("ft"),
            "-deg", List.of("deg"), "-min", List.of("min"), "-percent", List.of("%"), "-s", List.of("s"), "-hz", List.of("Hz"), "-v",
            List.of("V"), "-lx", List.of("lx"), "-times", List.of("times"));

    private final DataFolder data;
    private final Map<String, Source> sources;
    private final List<String> folders;
    private final Map<String, RuleSet> read = new LinkedHashMap<>();

    /** Opens a folder of data and reads its lists of sources and of rule sets. */
    public RuleSetLoader(DataFolder data) {
        this.data = data;
        this.sources = readSources();
        this.folders = text("rule-sets.txt").lines().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
    }

    /** Where files of data are found by their path. */
    @FunctionalInterface
    public interface DataFolder {

        /** Opens a file, null where there is none. */
        InputStream open(String path);
    }

    /** Opens the rule sets of this bundle. */
    public static RuleSetLoader bundled() {
        return new RuleSetLoader(path -> RuleSetLoader.class.getResourceAsStream("/data/" + path));
    }

    /**
     * Reads every rule set that is listed.
     *
     * @return the rule sets in the order of the list
     * @throws StandardsException where a file is missing or wrong; the message names file, line and reason
     */
    public List<RuleSet> loadAll() {
        return folders.stream().map(folder -> read(folder, List.of())).toList();
    }

    /** Returns key and edition of every rule set that is listed, joined by a colon. */
    public List<String> names() {
        return folders.stream().map(folder -> folder.replace('/', ':')).toList();
    }

    /**
     * Finds an edition of a rule set.
     *
     * @throws StandardsException where a file is missing or wrong; the message names file, line and reason
     */
    public Optional<RuleSet> find(String key, String edition) {
        String wanted = key + "/" + edition;
        return folders.stream().filter(wanted::equals).findFirst().map(folder -> read(folder, List.of()));
    }

    /**
     * Finds the default edition of a rule set: the first that is listed.
     *
     * @throws StandardsException where a file is missing or wrong; the message names file, line and reason
     */
    public Optional<RuleSet> findUsual(String key) {
        return folders.stream().filter(folder -> folder.startsWith(key + "/")).findFirst().map(folder -> read(folder, List.of()));
    }

    private Optional<String> find(String path) {
        try (InputStream in = data.open(path)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new StandardsException(path, 0, "cannot be read: " + e.getMessage());
        }
    }

    private String text(String path) {
        return find(path).orElseThrow(() -> new StandardsException(path, 0, "is missing"));
    }

    private Map<String, Source> readSources() {
        Map<String, Source> found = new LinkedHashMap<>();
        for (HeadedCsv.Row row : HeadedCsv.read("sources.csv", text("sources.csv"), SOURCE_COLUMNS).rows()) {
            Source source = new Source(row.text("key"), CitedText.of(row.text("title")), CitedText.of(row.text("edition")));
            if (found.put(source.key(), source) != null) {
                throw row.fault("source-twice", source.key());
            }
        }
        return found;
    }

    /** Reads a rule set after the one that it inherits from. */
    private synchronized RuleSet read(String folder, List<String> heirs) {
        if (heirs.contains(folder)) {
            throw new StandardsException(folder + "/rule-set.properties", 0, "inherits from itself by way of " + String.join(", ", heirs));
        }
        RuleSet known = read.get(folder);
        if (known == null) {
            known = load(folder, heirs);
            read.put(folder, known);
        }
        return known;
    }

    private RuleSet load(String folder, List<String> heirs) {
        String file = folder + "/rule-set.properties";
        Properties properties = new Properties();
        try (Reader reader = new StringReader(text(file))) {
            properties.load(reader);
        } catch (IOException e) {
            throw new StandardsException(file, 0, "cannot be read: " + e.getMessage());
        }
        RuleSet.Descriptor descriptor = new RuleSet.Descriptor(need(properties, "key", file), need(properties, "edition", file),
                CitedText.of(need(properties, "name", file)), CitedText.of(need(properties, "title", file)),
                CitedText.of(need(properties, "note", file)),
                List.of(need(properties, "families", file).split(",")), oneOf(properties, "surface", file, "table", "angular"),
                oneOf(properties, "numbering", file, "outer-first", "runway-first"));
        if (!folder.equals(descriptor.key() + "/" + descriptor.edition())) {
            throw new StandardsException(file, 0, "holds " + descriptor.key() + ", edition " + descriptor.edition()
                    + ", which is not what its folder is named by");
        }
        Optional<RuleSet> base = Optional.ofNullable(properties.getProperty("inherits")).map(from -> base(from, folder, file, heirs));
        Provenance atMost = atMost(properties.getProperty("inherits.as", Provenance.PUBLISHED.key()), file);
        Map<String, CitedValue> values = new TreeMap<>();
        base.ifPresent(rules -> rules.values().forEach(value -> values.put(value.key(), value.atMost(atMost))));
        Map<String, CitedChoice> choices = new TreeMap<>();
        base.ifPresent(rules -> rules.choices().forEach(choice -> choices.put(choice.key(), choice.atMost(atMost))));
        readValues(folder + "/values.csv", values, choices);
        TableReaders tables = new TableReaders(folder, this::find, this::citation, base.map(RuleSet::tables), atMost);
        return new RuleSet(descriptor, values, choices, tables.readAll());
    }

    private RuleSet base(String from, String folder, String file, List<String> heirs) {
        if (find(from + "/rule-set.properties").isEmpty()) {
            throw new StandardsException(file, 0, "inherits from " + from + ", which is not there");
        }
        List<String> more = new ArrayList<>(heirs);
        more.add(folder);
        return read(from, more);
    }

    private static String need(Properties properties, String key, String file) {
        String text = properties.getProperty(key);
        if (text == null || text.isBlank()) {
            throw new StandardsException(file, 0, "gives no " + key);
        }
        return text.strip();
    }

    private static String oneOf(Properties properties, String key, String file, String one, String other) {
        String text = need(properties, key, file);
        if (!text.equals(one) && !text.equals(other)) {
            throw new StandardsException(file, 0, key + " is " + one + " or " + other + ", not '" + text + "'");
        }
        return text;
    }

    private static Provenance atMost(String word, String file) {
        try {
            return Provenance.of(word);
        } catch (IllegalArgumentException e) {
            throw new StandardsException(file, 0, "inherits.as: " + e.getMessage());
        }
    }

    /** Reads the rows of a file over what was inherited; a row with a word is a choice. */
    private void readValues(String file, Map<String, CitedValue> values, Map<String, CitedChoice> choices) {
        Set<String> listed = new HashSet<>();
        for (HeadedCsv.Row row : HeadedCsv.read(file, text(file), VALUE_COLUMNS).rows()) {
            String key = row.text("key");
            Citation citation = citation(key, row.text("source"), row.text("clause"), row.text("provenance"), row.text("note"), row::fault);
            if (!listed.add(key)) {
                throw row.fault("twice", key);
            }
            if (isChoice(row)) {
                choices.put(key, new CitedChoice(word(row), citation));
            } else {
                values.put(key, CitedValue.printed(row.number("value"), unit(row), citation));
            }
        }
    }

    private static String unit(HeadedCsv.Row row) {
        if (!UNITS.contains(row.text("unit"))) {
            throw row.fault("no-unit", row.text("unit"));
        }
        if (!isOfKey(row.text("key"), row.text("unit"))) {
            throw row.fault("not-in", row.text("key"), row.text("unit"));
        }
        return row.text("unit");
    }

    /** Returns whether the ending of a key allows a unit; a key without an ending that names one allows all. */
    private static boolean isOfKey(String key, String unit) {
        return OF_ENDING.entrySet().stream().filter(entry -> key.endsWith(entry.getKey())).findFirst()
                .map(entry -> entry.getValue().contains(unit)).orElse(true);
    }

    /** Returns whether a row holds a word, and not a number. */
    static boolean isChoice(HeadedCsv.Row row) {
        return List.of("choice", "flag").contains(row.text("unit"));
    }

    /** Returns the word of a row that holds one: one of those that its key allows. */
    static RuleChoice word(HeadedCsv.Row row) {
        String key = row.text("key");
        RuleChoice.Kind kind = RuleChoice.Kind.of(key).filter(found -> found.unit().equals(row.text("unit")))
                .orElseThrow(() -> row.fault("no-choice", key, row.text("unit")));
        return kind.words().stream().filter(word -> word.key().equals(row.text("value"))).findFirst().orElseThrow(() -> row.fault("words",
                key, String.join(", ", kind.words().stream().map(RuleChoice::key).toList()), row.text("value")));
    }

    private Citation citation(String key, String source, String clause, String provenance, String note, FaultMaker faults) {
        Source found = sources.get(source);
        if (found == null) {
            throw faults.fault("no-source", source);
        }
        try {
            return new Citation(key, found, CitedText.of(clause), Provenance.of(provenance), CitedText.of(note), "");
        } catch (IllegalArgumentException e) {
            throw faults.fault("no-provenance", "provenance", provenance);
        }
    }

    /** Makes the exception for a place in a file. */
    @FunctionalInterface
    interface FaultMaker {

        StandardsException fault(String key, Object... values);
    }

    /** Makes a citation of its parts. */
    @FunctionalInterface
    interface CitationMaker {

        Citation make(String key, String source, String clause, String provenance, String note, FaultMaker faults);
    }
}
