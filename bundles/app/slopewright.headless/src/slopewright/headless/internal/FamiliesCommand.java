package slopewright.headless.internal;

import java.util.List;
import java.util.Locale;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Option;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Lists the families. */
@CommandLine.Command(name = "families", description = "List the families of indicators and the rule sets that cover them.")
final class FamiliesCommand extends Command {

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Override
    public Integer call() {
        if (json) {
            ArrayNode list = Json.array();
            Families.all().forEach(family -> list.add(json(family)));
            Json.print(list, streams().out);
            return ExitCodes.OK;
        }
        streams().sayf("%-22s %-24s %-12s %-18s %s", "Key", "Trade name", "Units", "Stands at", "Rule sets");
        for (IndicatorFamily family : Families.all()) {
            streams().sayf("%-22s %-24s %-12s %-18s %s", family.key(), family.name(),
                    String.join(" ", family.unitCounts().stream().map(String::valueOf).toList()), String.join(", ", places(family)),
                    String.join(", ", ruleSets(family)));
        }
        return ExitCodes.OK;
    }

    private static ObjectNode json(IndicatorFamily family) {
        ObjectNode node = Json.object();
        node.put("key", family.key());
        node.put("name", family.name());
        ArrayNode units = node.putArray("units");
        family.unitCounts().stream().sorted().forEach(units::add);
        ArrayNode ruleSets = node.putArray("ruleSets");
        ruleSets(family).forEach(ruleSets::add);
        node.put("displayForm", family.displayForm().name().toLowerCase(Locale.ROOT));
        ArrayNode places = node.putArray("places");
        places(family).forEach(places::add);
        return node;
    }

    private static List<String> places(IndicatorFamily family) {
        return family.atRunways() ? family.atHelipads() ? List.of("runway", "helipad") : List.of("runway") : List.of("helipad");
    }

    private static List<String> ruleSets(IndicatorFamily family) {
        return RuleSets.all().stream().filter(rules -> rules.covers(family.ruleKey())).map(RuleSet::key).distinct().toList();
    }
}
