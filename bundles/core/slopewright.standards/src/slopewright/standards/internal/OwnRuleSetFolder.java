package slopewright.standards.internal;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.standards.Citation;
import slopewright.standards.CitedChoice;
import slopewright.standards.CitedText;
import slopewright.standards.CitedValue;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.standards.Source;
import slopewright.standards.StandardsException;

/** Reads the folder of an organisation's own rule set, strictly: each complaint names file, line and reason. */
public final class OwnRuleSetFolder {
    private static final String PROPERTIES = "rule-set.properties";
    private static final String VALUES = "values.csv";
    private static final Set<String> KEYS = Set.of("key", "edition", "name", "title", "note", "over", "document", "person", "date");
    private static final Set<String> FILES = Set.of(PROPERTIES, VALUES, "tab-5-1.csv", "tab-5-2.csv", "tab-5-3.csv", "tab-m-1.csv",
            "tab-m-2.csv", "tab-ii-5-1.csv", "tab-3-3.csv", "remedies.csv", "fig-a2-22.csv", "fig-a2-23.csv", "fig-ii-5-11.csv",
                    "fig-3-1.csv");

    private final Path folder;

    private OwnRuleSetFolder(Path folder) {
        this.folder = folder;
    }

    /** Reads a folder. */
    public static RuleSet read(Path folder) {
        return new OwnRuleSetFolder(folder).load();
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private StandardsException refused(String name, int line, String key, Object... values) {
        return new StandardsException(file(name), line, HeadedCsv.said(key, values));
    }

    private Optional<String> find(String name) {
        Path file = folder.resolve(name);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw refused(name, 0, "no-text", e);
        }
    }

    private void refuseStrangers() {
        try (Stream<Path> files = Files.list(folder)) {
            List<String> strange = files.map(path -> path.getFileName().toString())
                    .filter(name -> !FILES.contains(name) && !name.startsWith(".") && !name.endsWith(".md")).sorted().toList();
            if (!strange.isEmpty()) {
                throw refused(strange.get(0), 0, "stranger", FILES.stream().sorted().collect(Collectors.joining(", ")));
            }
        } catch (IOException e) {
            throw refused("", 0, "no-folder");
        }
    }

    private RuleSet load() {
        refuseStrangers();
        Properties properties = properties();
        String over = need(properties, "over");
        RuleSet base = RuleSets.find(over).filter(found -> over.equals(found.key() + ":" + found.edition()))
                .orElseThrow(() -> refused(PROPERTIES, line("over"), "over", over));
        String key = need(properties, "key");
        if (RuleSets.all().stream().anyMatch(shipped -> shipped.key().equals(key))) {
            throw refused(PROPERTIES, line("key"), "shipped-key", key);
        }
        if (!key.matches("[a-z][a-z0-9-]*") || !need(properties, "edition").matches("[A-Za-z0-9.-]+")) {
            throw refused(PROPERTIES, line("key"), "key-form");
        }
        Source source = new Source(key, CitedText.of(need(properties, "document") + ", " + need(properties, "person") + ", "
                + need(properties, "date")), CitedText.of(need(properties, "edition")));
        RuleSet.Descriptor shipped = base.descriptor();
        RuleSet.Descriptor descriptor = new RuleSet.Descriptor(key, need(properties, "edition"), CitedText.of(need(properties, "name")),
                Message.of("cited.laid-over", CitedText.of(need(properties, "title")), Words.name(over)),
                CitedText.of(need(properties, "note")), shipped.families(), shipped.surface(), shipped.numbering());
        Map<String, CitedValue> values = new TreeMap<>();
        base.values().forEach(value -> values.put(value.key(), value));
        Map<String, CitedChoice> choices = new TreeMap<>();
        base.choices().forEach(choice -> choices.put(choice.key(), choice));
        readOwn(base, source, values, choices);
        TableReaders tables = new TableReaders(folder.toString(), name -> find(Path.of(name).getFileName().toString()),
                (tableKey, from, clause, provenance, note, faults) -> new Citation(tableKey, source, CitedText.of(clause),
                        Provenance.ORGANISATION,
                        CitedText.of(note), ""),
                Optional.of(base.tables()), Provenance.PUBLISHED);
        return new RuleSet(descriptor, values, choices, tables.readAll());
    }

    private Properties properties() {
        Properties properties = new Properties();
        String text = find(PROPERTIES).orElseThrow(() -> refused(PROPERTIES, 0, "absent"));
        try {
            properties.load(new StringReader(text));
        } catch (IOException | IllegalArgumentException e) {
            throw refused(PROPERTIES, 0, "unread", e);
        }
        for (String name : properties.stringPropertyNames()) {
            if (!KEYS.contains(name)) {
                throw refused(PROPERTIES, line(name), "unknown", name);
            }
        }
        return properties;
    }

    private String need(Properties properties, String key) {
        String text = properties.getProperty(key);
        if (text == null || text.isBlank()) {
            throw refused(PROPERTIES, 0, "lacks", key);
        }
        return text.strip();
    }

    private int line(String key) {
        List<String> lines = find(PROPERTIES).orElse("").lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).strip().startsWith(key)) {
                return i + 1;
            }
        }
        return 0;
    }

    /** Reads what differs: each must be a value or choice of the rule set below, in its unit, and give its clause. */
    private void readOwn(RuleSet base, Source source, Map<String, CitedValue> values, Map<String, CitedChoice> choices) {
        String text = find(VALUES).orElseThrow(() -> refused(VALUES, 0, "absent"));
        Set<String> listed = new HashSet<>();
        for (HeadedCsv.Row row : HeadedCsv.read(file(VALUES), text, RuleSetLoader.VALUE_COLUMNS).rows()) {
            String key = row.text("key");
            String unit = base.unit(key).orElseThrow(() -> row.fault("not-below", key));
            if (!unit.equals(row.text("unit"))) {
                throw row.fault("other-unit", key, unit, row.text("unit"));
            }
            if (row.text("clause").isBlank() || row.isBlank("clause")) {
                throw row.fault("no-clause", key);
            }
            if (!listed.add(key)) {
                throw row.fault("twice", key);
            }
            Argument instead = base.find(key).map(CitedText::instead).or(() -> base.choice(key).map(CitedText::instead)).orElseThrow();
            Argument note = row.text("note").isBlank() ? instead
                    : Message.of("cited.and", CitedText.of(row.text("note")), instead);
            Citation citation = new Citation(key, source, CitedText.of(row.text("clause")), Provenance.ORGANISATION, note, "");
            if (RuleSetLoader.isChoice(row)) {
                choices.put(key, new CitedChoice(RuleSetLoader.word(row), citation));
            } else {
                values.put(key, CitedValue.printed(row.number("value"), unit, citation));
            }
        }
    }

    /** Returns the files of a commented starting point over a rule set. */
    public static Map<String, String> template(RuleSet over) {
        List<String> lines = new ArrayList<>(List.of("## Only what differs from " + over.key() + ":" + over.edition()
                + " stands here: take the '## ' away before a line and put your own number, clause and note.",
                "## The columns source and provenance are not read: every value counts as the organisation's own.",
                String.join(",", RuleSetLoader.VALUE_COLUMNS)));
        over.values().forEach(value -> lines.add((lines.size() == 3 ? "" : "## ")
                + exampleRow(value.key(), plain(value.printed()), value.printedUnit())));
        over.choices().forEach(choice -> lines.add("## " + exampleRow(choice.key(), choice.word().key(), choice.word().kind().unit())));
        Map<String, String> files = new LinkedHashMap<>();
        files.put(PROPERTIES, String.join("\n", "# An organisation's own rule set, laid over a shipped one.",
                "# The key must be none of a shipped rule set.", "key=our-own", "edition=1", "name=Our own", "title=Our own rules",
                "note=What a reader must know.", "# The shipped rule set below, with its edition.", "over=" + over.key() + ":"
                        + over.edition(),
                "# The document that the values stand in, who answers for them, and since when.", "document=Our manual, issue 1",
                "person=Name", "date=2026-01-01", ""));
        files.put(VALUES, String.join("\n", lines) + "\n");
        return files;
    }

    private static String exampleRow(String key, String value, String unit) {
        return String.join(",", key, value, unit, "-", "clause of the document", "organisation", "");
    }

    private static String plain(double value) {
        return new java.math.BigDecimal(String.valueOf(value)).stripTrailingZeros().toPlainString();
    }
}
