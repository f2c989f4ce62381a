package slopewright.headless.internal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Option;
import slopewright.checks.Rule;
import slopewright.checks.RuleCatalogue;
import slopewright.checks.Stages;

/** Lists the rules. */
@CommandLine.Command(name = "rules", description = "List the rules that 'check' runs.")
final class RulesCommand extends Command {

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Override
    public Integer call() {
        if (json) {
            ArrayNode list = Json.array();
            for (Rule rule : RuleCatalogue.all()) {
                ObjectNode node = list.addObject();
                node.put("id", rule.id());
                node.put("title", rule.title().english());
                node.put("description", rule.description().english());
                node.put("severity", rule.severity().key());
                node.put("stage", Stages.key(rule.stage()));
            }
            Json.print(list, streams().out);
            return ExitCodes.OK;
        }
        for (Rule rule : RuleCatalogue.all()) {
            streams().sayf("%-10s %-8s %-9s %s", rule.id(), rule.severity().key(), Stages.key(rule.stage()), rule.title().english());
            streams().sayf("%-29s %s", "", rule.description().english());
        }
        return ExitCodes.OK;
    }
}
