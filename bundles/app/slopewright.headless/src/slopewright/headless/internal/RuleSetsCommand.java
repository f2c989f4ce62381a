package slopewright.headless.internal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Option;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Lists the rule sets. */
@CommandLine.Command(name = "rule-sets", description = "List the rule sets with their editions, sources and the families they cover.")
final class RuleSetsCommand extends Command {

    @Option(names = "--json", description = "print one JSON document, with every value and where it comes from")
    private boolean json;

    @Option(names = "--values", description = "list every value and where it comes from")
    private boolean values;

    @Override
    public Integer call() {
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
                    streams().sayf("      %-48s %10s %-6s %s [%s]", value.key(), value.value(), value.unit(),
                            value.citation().text(), value.citation().provenance().key());
                }
            }
        }
        return ExitCodes.OK;
    }

    private static ObjectNode json(RuleSet rules) {
        ObjectNode node = Json.object();
        node.put("key", rules.key());
        node.put("edition", rules.edition());
        node.put("name", rules.descriptor().name());
        node.put("title", rules.descriptor().title());
        node.put("note", rules.descriptor().note());
        ArrayNode families = node.putArray("families");
        rules.descriptor().families().forEach(families::add);
        ArrayNode list = node.putArray("values");
        for (CitedValue value : rules.values()) {
            ObjectNode one = list.addObject();
            Citation citation = value.citation();
            one.put("key", value.key());
            Json.put(one, "value", value.value());
            one.put("unit", value.unit());
            one.put("source", citation.source().title());
            one.put("clause", citation.clause());
            one.put("provenance", citation.provenance().key());
        }
        return node;
    }
}
