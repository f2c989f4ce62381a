package slopewright.headless.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Option;
import slopewright.model.io.AtomicFile;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.OwnRuleSets;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.standards.StandardsException;

/** Lists the rule sets. */
@CommandLine.Command(name = "rule-sets", description = "List the rule sets with their editions,"
        + " sources and the families they cover; check, start or compare an organisation's own.")
final class RuleSetsCommand extends Command {

    @Option(names = "--json", description = "print one JSON document, with every value and where it comes from")
    private boolean json;

    @Option(names = "--values", description = "list every value and where it comes from")
    private boolean values;

    @Option(names = "--check", paramLabel = "DIR", description = "read an organisation's own rule set strictly and say what is wrong")
    private Path check;

    @Option(names = "--new", paramLabel = "DIR", description = "write a commented starting point for an own rule set into a new folder")
    private Path fresh;

    @Option(names = "--over", paramLabel = "KEY:EDITION", description = "with --new: the rule set over which it is laid")
    private String over;

    @Option(names = "--compare", arity = "2", paramLabel = "RULES", description = "list the values in which two rule sets differ; each is"
            + " KEY:EDITION or the folder of an own one")
    private List<String> compare = List.of();

    @Option(names = "--to-confirm", arity = "1..*", paramLabel = "FILE", description = "list in Markdown every value that is not"
            + " read in its published text, those first on which most verdicts of the projects rest, checked under its rule set")
    private List<Path> toConfirm = List.of();

    @Override
    public Integer call() {
        if (!toConfirm.isEmpty()) {
            ValuesToConfirm.list(toConfirm.stream().map(ProjectFiles::load).toList()).forEach(streams()::say);
            return ExitCodes.OK;
        }
        if (check != null) {
            return check();
        }
        if (fresh != null) {
            return start();
        }
        if (!compare.isEmpty()) {
            return difference(find(compare.get(0)), find(compare.get(1)));
        }
        if (json) {
            ArrayNode list = Json.array();
            RuleSets.all().forEach(rules -> list.add(json(rules)));
            Json.print(list, streams().out);
            return ExitCodes.OK;
        }
        for (RuleSet rules : RuleSets.all()) {
            RuleSet.Descriptor descriptor = rules.descriptor();
            streams().sayf("%s:%s  %s", rules.key(), rules.edition(), descriptor.name());
            streams().sayf("    Rests on: %s", descriptor.title());
            streams().sayf("    Covers:   %s", String.join(", ", descriptor.families()));
            streams().sayf("    Note:     %s", descriptor.note());
            if (values) {
                for (CitedValue value : rules.values()) {
                    streams().sayf("      %-48s %10s %-6s %s [%s]", value.key(), value.printed(), value.printedUnit(),
                            value.citation().text(), value.citation().provenance().key());
                }
                rules.choices().forEach(choice -> streams().sayf("      %-48s %10s %-6s %s [%s]", choice.key(), choice.word().key(),
                        choice.word().kind().unit(), choice.citation().text(), choice.citation().provenance().key()));
            }
        }
        return ExitCodes.OK;
    }

    private Integer check() {
        RuleSet own = read(check);
        long differ = OwnRuleSets.compare(below(own), own).size();
        streams().sayf("%s: %s:%s, %s; sound, %d values of its own", check, own.key(), own.edition(), own.descriptor().title(),
                differ);
        return ExitCodes.OK;
    }

    private static RuleSet below(RuleSet own) {
        String title = own.descriptor().title().english();
        return RuleSets.all().stream().filter(shipped -> title.endsWith("laid over " + shipped.key() + ":" + shipped.edition()))
                .findFirst().orElseThrow();
    }

    private static RuleSet read(Path folder) {
        try {
            return OwnRuleSets.read(folder);
        } catch (StandardsException e) {
            throw new InputException(e.getMessage());
        }
    }

    private static RuleSet find(String name) {
        return RuleSets.find(name).orElseGet(() -> {
            if (!Files.isDirectory(Path.of(name))) {
                throw new UsageException("'" + name + "' is neither a rule set nor a folder of one");
            }
            return read(Path.of(name));
        });
    }

    private Integer start() {
        if (over == null) {
            throw new UsageException("--new needs --over, the rule set over which the own one is laid");
        }
        RuleSet base = RuleSets.find(over).orElseThrow(() -> new UsageException("there is no rule set '" + over + "'"));
        try {
            if (Files.exists(fresh)) {
                throw new UsageException(fresh + " exists; nothing was written");
            }
            Files.createDirectories(fresh);
            for (Map.Entry<String, String> file : OwnRuleSets.template(base).entrySet()) {
                AtomicFile.create(fresh.resolve(file.getKey()), file.getValue().getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw FileOutput.failed(fresh, e);
        }
        streams().say(fresh + ": a starting point over " + base.key() + ":" + base.edition() + "; fill it in and run --check");
        return ExitCodes.OK;
    }

    private Integer difference(RuleSet first, RuleSet other) {
        List<OwnRuleSets.Difference> differences = OwnRuleSets.compare(first, other);
        if (json) {
            ArrayNode list = Json.array();
            differences.forEach(difference -> {
                ObjectNode node = list.addObject();
                node.put("key", difference.key());
                difference.first().ifPresent(value -> node.set("first", value(value)));
                difference.other().ifPresent(value -> node.set("other", value(value)));
            });
            Json.print(list, streams().out);
            return ExitCodes.OK;
        }
        streams().sayf("%d values differ between %s:%s and %s:%s", differences.size(), first.key(), first.edition(), other.key(),
                other.edition());
        differences.forEach(difference -> streams().sayf("  %-48s %-40s %s", difference.key(), text(difference.first()),
                text(difference.other())));
        return ExitCodes.OK;
    }

    private static String text(Optional<CitedValue> value) {
        return value.map(found -> found.value() + " " + found.unit() + " [" + found.citation().provenance().key() + "]").orElse("none");
    }

    private static ObjectNode value(CitedValue value) {
        ObjectNode node = Json.object();
        Json.put(node, "value", value.value());
        node.put("unit", value.unit());
        node.put("source", value.citation().source().title().english());
        node.put("clause", value.citation().clause().english());
        node.put("provenance", value.citation().provenance().key());
        return node;
    }

    private static ObjectNode json(RuleSet rules) {
        ObjectNode node = Json.object();
        node.put("key", rules.key());
        node.put("edition", rules.edition());
        node.put("name", rules.descriptor().name().english());
        node.put("title", rules.descriptor().title().english());
        node.put("note", rules.descriptor().note().english());
        ArrayNode families = node.putArray("families");
        rules.descriptor().families().forEach(families::add);
        ArrayNode list = node.putArray("values");
        for (CitedValue value : rules.values()) {
            ObjectNode entry = list.addObject();
            Citation citation = value.citation();
            entry.put("key", value.key());
            Json.put(entry, "value", value.value());
            entry.put("unit", value.unit());
            Json.put(entry, "printed", value.printed());
            entry.put("printedUnit", value.printedUnit());
            entry.put("source", citation.source().title().english());
            entry.put("clause", citation.clause().english());
            entry.put("provenance", citation.provenance().key());
        }
        ArrayNode choices = node.putArray("choices");
        rules.choices().forEach(choice -> choices.addObject().put("key", choice.key()).put("word", choice.word().key())
                .put("source", choice.citation().source().title().english()).put("clause", choice.citation().clause().english())
                .put("provenance", choice.citation().provenance().key()));
        return node;
    }
}
