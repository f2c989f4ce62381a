package slopewright.headless.internal;

import java.io.OutputStream;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.standards.Citation;

/** Writes the outcomes of a check. */
final class CheckOutput {
    private static final int SCHEMA = 2;

    private CheckOutput() {
    }

    /** Returns the one document of a check, of one file or of many. */
    static ObjectNode json(List<CheckCommand.CheckedFile> checked, String program) {
        ObjectNode node = Json.object();
        node.put("schema", SCHEMA);
        node.put("program", program);
        ArrayNode projects = node.putArray("projects");
        checked.forEach(one -> projects.add(json(one)));
        return node;
    }

    private static ObjectNode json(CheckCommand.CheckedFile checked) {
        ObjectNode node = Json.object();
        node.put("project", name(checked));
        node.put("file", checked.file().toString());
        node.put("ruleSet", checked.result().rules().key());
        node.put("edition", checked.result().rules().edition());
        ObjectNode counts = node.putObject("counts");
        checked.result().counts().forEach((verdict, count) -> counts.put(verdict.key(), count));
        ArrayNode outcomes = node.putArray("outcomes");
        checked.result().outcomes().forEach(outcome -> outcomes.add(json(outcome)));
        return node;
    }

    private static String name(CheckCommand.CheckedFile checked) {
        return checked.project().getName() == null ? checked.file().getFileName().toString() : checked.project().getName();
    }

    private static ObjectNode json(Outcome outcome) {
        ObjectNode node = Json.object();
        node.put("rule", outcome.rule());
        node.put("title", outcome.title().english());
        node.put("element", outcome.elementId());
        node.put("elementPath", outcome.elementPath());
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
        outcome.missing().forEach(one -> missing.add(one.english()));
        node.put("citation", outcome.citation().map(Citation::text).orElse(null));
        node.put("provenance", outcome.citation().map(citation -> citation.provenance().key()).orElse(null));
        node.put("toConfirm", outcome.toConfirm());
        node.set("message", MessageJson.of(outcome.message()));
        outcome.action().ifPresent(action -> node.set("action", MessageJson.of(action)));
        ArrayNode steps = node.putArray("steps");
        outcome.steps().forEach(step -> steps.add(MessageJson.of(step)));
        node.put("explanation", outcome.explanation().english());
        return node;
    }

    private static String number(OptionalDouble number) {
        return number.isPresent() ? String.format(Locale.ROOT, "%.4f", number.getAsDouble()) : "";
    }

    static void csv(List<CheckCommand.CheckedFile> checked, PrintStream out) {
        out.print("file,rule,element,verdict,outcome,severity,value,limit,margin,unit,missing,citation,provenance,toConfirm,explanation\n");
        for (CheckCommand.CheckedFile one : checked) {
            for (Outcome outcome : one.result().outcomes()) {
                List<String> cells = new ArrayList<>(List.of(one.file().toString(), outcome.rule(), String.valueOf(outcome.elementId()),
                        outcome.verdict().key(), outcome.result().name(), outcome.severity().key(), number(outcome.value()), number(outcome.limit()),
                        number(outcome.margin()), outcome.unit(), String.join("; ", outcome.missing().stream().map(Message::english).toList())));
                cells.add(outcome.citation().map(citation -> citation.text()).orElse(""));
                cells.add(outcome.citation().map(citation -> citation.provenance().key()).orElse(""));
                cells.add(String.valueOf(outcome.toConfirm()));
                cells.add(outcome.explanation().english());
                out.print(Csv.line(cells));
            }
        }
    }

    static void junit(List<CheckCommand.CheckedFile> checked, Severity threshold, PrintStream out) {
        try {
            XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter((OutputStream) out, "UTF-8");
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeStartElement("testsuites");
            for (CheckCommand.CheckedFile one : checked) {
                suite(xml, one, threshold);
            }
            xml.writeEndElement();
            xml.writeEndDocument();
            xml.flush();
            out.print('\n');
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void suite(XMLStreamWriter xml, CheckCommand.CheckedFile checked, Severity threshold) throws XMLStreamException {
        List<Outcome> outcomes = checked.result().outcomes();
        long failures = outcomes.stream().filter(outcome -> fails(outcome, threshold)).count();
        long skipped = outcomes.stream().filter(outcome -> outcome.verdict() == Verdict.NOT_APPLICABLE).count();
        xml.writeStartElement("testsuite");
        xml.writeAttribute("name", name(checked));
        xml.writeAttribute("tests", String.valueOf(outcomes.size()));
        xml.writeAttribute("failures", String.valueOf(failures));
        xml.writeAttribute("skipped", String.valueOf(skipped));
        for (Outcome outcome : outcomes) {
            xml.writeStartElement("testcase");
            xml.writeAttribute("classname", outcome.rule());
            xml.writeAttribute("name", outcome.title().english() + ": " + outcome.elementPath());
            if (fails(outcome, threshold)) {
                xml.writeStartElement("failure");
                xml.writeAttribute("message", outcome.verdict().key() + ": " + outcome.explanation().english());
                xml.writeEndElement();
            } else if (outcome.verdict() == Verdict.NOT_APPLICABLE) {
                xml.writeEmptyElement("skipped");
            }
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    /** A rule that is not met fails where it is grave enough; what is only to be cleared up is no failure of a test. */
    private static boolean fails(Outcome outcome, Severity threshold) {
        return outcome.verdict() == Verdict.NOT_MET
                && (outcome.severity() == Severity.FAIL || outcome.severity().compareTo(threshold) >= 0);
    }

    static void text(CheckCommand.CheckedFile checked, boolean all, PrintStream out) {
        out.printf("%s: %s under %s, edition %s%n", checked.file(), name(checked), checked.result().rules().descriptor().title(),
                checked.result().rules().edition());
        List<Outcome> shown = all ? checked.result().outcomes() : checked.result().findings();
        for (Outcome outcome : shown) {
            out.printf("  %-14s %-8s %-8s %s%n", word(outcome), outcome.weight().map(Severity::key).orElse(""), outcome.rule(),
                    outcome.elementPath());
            out.println("      " + outcome.explanation().english());
            if (outcome.value().isPresent()) {
                out.printf(Locale.ROOT, "      value %s %s, limit %s %s, margin %s %s%n", number(outcome.value()), outcome.unit(),
                        number(outcome.limit()), outcome.unit(), number(outcome.margin()), outcome.unit());
            }
            if (!outcome.missing().isEmpty()) {
                out.println("      missing: " + String.join(", ", outcome.missing().stream().map(Message::english).toList()));
            }
            outcome.citation().ifPresent(citation -> out.println("      " + citation.text() + " [" + citation.provenance().key()
                    + (outcome.toConfirm() ? ", to be confirmed" : "") + "]"));
        }
        Map<Verdict, Integer> counts = checked.result().counts();
        long toConfirm = checked.result().outcomes().stream().filter(one -> one.verdict() == Verdict.TO_CLEAR_UP && one.toConfirm())
                .count();
        out.printf("%d not met, %d to clear up (%d of them on values to be confirmed), %d met, %d not applicable%n",
                counts.get(Verdict.NOT_MET), counts.get(Verdict.TO_CLEAR_UP), toConfirm, counts.get(Verdict.MET),
                counts.get(Verdict.NOT_APPLICABLE));
    }

    private static String word(Outcome outcome) {
        return MessageRenderer.of(Locale.ENGLISH).write(outcome.verdict().term());
    }
}
