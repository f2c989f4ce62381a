package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.checks.Outcome;
import slopewright.checks.compare.ProjectDifference;
import slopewright.checks.compare.ProjectDifference.Change;
import slopewright.checks.compare.ProjectDifference.OutcomeChange;
import slopewright.checks.compare.ProjectDifference.ResultChange;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.MessageRenderer;
import slopewright.model.Project;

/** Says what changed between two versions of a project, and what that did to each result. */
@CommandLine.Command(name = "compare-versions", sortOptions = false,
        description = "Say what changed between two versions of a project, and what that did to each result.")
final class CompareVersionsCommand extends Command {

    @Parameters(index = "0", paramLabel = "OLD", description = "project file, the older version")
    private Path older;

    @Parameters(index = "1", paramLabel = "NEW", description = "project file, the newer version")
    private Path newer;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Override
    public Integer call() {
        Project before = ProjectFiles.load(older);
        Project after = ProjectFiles.load(newer);
        try {
            ProjectEvaluation then = ProjectEvaluation.of(before, Optional.empty());
            ProjectEvaluation now = ProjectEvaluation.of(after, Optional.empty());
            ProjectDifference difference = new ProjectDifference(then, now);
            if (json) {
                ObjectNode document = Json.object();
                document.set("older", Json.object(Judged.of(then).made()));
                document.set("newer", Json.object(Judged.of(now).made()));
                Json.print(document.setAll(json(difference)), streams().out);
            } else {
                print(difference);
                streams().say("older: " + Judged.of(then).standing().words().english());
                streams().say("newer: " + Judged.of(now).standing().words().english());
            }
        } catch (IllegalArgumentException e) {
            throw new InputException(e.getMessage());
        }
        return ExitCodes.OK;
    }

    private static ObjectNode json(ProjectDifference difference) {
        ObjectNode node = Json.object();
        ArrayNode changes = node.putArray("changes");
        for (Change change : difference.changes()) {
            ObjectNode entry = changes.addObject();
            entry.put("kind", change.kind());
            entry.put("element", change.element());
            entry.put("path", change.path().english());
            if (!change.attribute().isEmpty()) {
                entry.put("attribute", change.attribute());
                entry.put("before", change.before());
                entry.put("after", change.after());
            }
        }
        ArrayNode results = node.putArray("results");
        for (ResultChange change : difference.resultChanges()) {
            ObjectNode entry = results.addObject();
            entry.put("aid", change.aid());
            entry.put("quantity", change.quantity());
            Json.put(entry, "before", change.before().orElse(Double.NaN));
            Json.put(entry, "after", change.after().orElse(Double.NaN));
        }
        ArrayNode outcomes = node.putArray("outcomes");
        for (OutcomeChange change : difference.outcomeChanges()) {
            ObjectNode entry = outcomes.addObject();
            entry.put("rule", change.rule());
            entry.put("element", change.element());
            entry.set("before", outcome(change.before()));
            entry.set("after", outcome(change.after()));
        }
        return node;
    }

    private static ObjectNode outcome(Optional<Outcome> outcome) {
        ObjectNode node = Json.object();
        outcome.ifPresent(found -> {
            node.put("verdict", found.verdict().key());
            node.put("outcome", found.result().name());
            Json.put(node, "value", found.value());
            Json.put(node, "limit", found.limit());
            Json.put(node, "margin", found.margin());
            node.put("toConfirm", found.toConfirm());
        });
        return node;
    }

    private void print(ProjectDifference difference) {
        List<Change> changes = difference.changes();
        streams().sayf("%d changes", changes.size());
        for (Change change : changes) {
            streams().say("  " + change.kind() + "  " + change.path() + (change.attribute().isEmpty() ? ""
                    : "  " + change.attribute() + ": " + shown(change.before()) + " -> " + shown(change.after())));
        }
        List<ResultChange> results = difference.resultChanges();
        streams().sayf("%d results moved", results.size());
        for (ResultChange change : results) {
            streams().sayf("  %s  %s: %s -> %s", change.path(), change.quantity(), number(change.before()),
                    number(change.after()));
        }
        List<OutcomeChange> outcomes = difference.outcomeChanges();
        streams().sayf("%d outcomes differ", outcomes.size());
        for (OutcomeChange change : outcomes) {
            streams().sayf("  %-8s %s: %s -> %s", change.rule(), change.path(), text(change.before()),
                    text(change.after()));
        }
    }

    private static String shown(String text) {
        return text.isEmpty() ? "nothing" : text;
    }

    private static String number(OptionalDouble value) {
        return value.isEmpty() ? "nothing" : String.format(Locale.ROOT, "%.4f", value.getAsDouble());
    }

    private static String text(Optional<Outcome> outcome) {
        return outcome.map(found -> MessageRenderer.of(Locale.ENGLISH).write(found.verdict().term()) + (found.margin().isPresent()
                ? String.format(Locale.ROOT, " (margin %.3f %s)", found.margin().getAsDouble(), found.unit()) : "")).orElse("nothing");
    }
}
