package slopewright.headless.internal;

import java.util.List;
import java.util.OptionalDouble;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import slopewright.checks.Outcome;
import slopewright.checks.Stages;
import slopewright.model.io.ProjectFile;

/** Writes the outcomes of a check as one JSON document, of one shape for one file and for many. */
final class CheckJson {

    /** The number of the shape; a program that reads it refuses another. */
    static final int SCHEMA = 2;

    private CheckJson() {
    }

    static ObjectNode of(List<CheckedFile> checked, String program) {
        ObjectNode node = Json.object();
        node.put("schema", SCHEMA);
        node.put("program", program);
        ArrayNode projects = node.putArray("projects");
        checked.forEach(file -> projects.add(of(file)));
        return node;
    }

    private static ObjectNode of(CheckedFile checked) {
        ObjectNode node = Json.object();
        node.put("project", checked.name());
        node.put("file", checked.file().toString());
        node.put("sha256", ProjectFile.seen(checked.project()).orElse(null));
        node.put("revision", checked.project().getRevision());
        node.put("ruleSet", checked.result().rules().key());
        node.put("edition", checked.result().rules().edition());
        node.put("stage", Stages.key(checked.result().stage()));
        ObjectNode counts = node.putObject("counts");
        checked.result().counts().forEach((verdict, count) -> counts.put(verdict.key(), count));
        node.put("notAtThisStage", checked.result().notAtThisStage());
        ArrayNode outcomes = node.putArray("outcomes");
        checked.result().outcomes().forEach(outcome -> outcomes.add(of(outcome)));
        return node;
    }

    private static ObjectNode of(Outcome outcome) {
        ObjectNode node = Json.object();
        node.put("rule", outcome.rule());
        node.put("title", outcome.title().english());
        node.put("element", outcome.elementId());
        node.put("elementPath", outcome.elementPath().english());
        node.put("verdict", outcome.verdict().key());
        node.put("outcome", outcome.result().name());
        node.put("severity", outcome.severity().key());
        Json.put(node, "value", outcome.value());
        Json.put(node, "limit", outcome.limit());
        Json.put(node, "margin", outcome.margin());
        node.put("unit", outcome.unit());
        Json.put(node, "resolution", outcome.measure().map(measure -> OptionalDouble.of(measure.resolution()))
                .orElseGet(OptionalDouble::empty));
        ArrayNode missing = node.putArray("missing");
        outcome.missing().forEach(what -> missing.add(what.english()));
        node.put("citation", outcome.citation().map(citation -> citation.text().english()).orElse(null));
        node.put("provenance", outcome.citation().map(citation -> citation.provenance().key()).orElse(null));
        node.put("toConfirm", outcome.toConfirm());
        node.set("message", MessageJson.of(outcome.message()));
        outcome.action().ifPresentOrElse(action -> node.set("action", MessageJson.of(action)), () -> node.putNull("action"));
        ArrayNode steps = node.putArray("steps");
        outcome.steps().forEach(step -> steps.add(MessageJson.of(step)));
        node.put("explanation", outcome.explanation().english());
        return node;
    }
}
