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

/** Writes the outcomes of a check. */
final class CheckOutput {

    private CheckOutput() {
    }

    static ObjectNode json(CheckCommand.CheckedFile checked) {
        ObjectNode node = Json.object();
        node.put("project", name(checked));
        node.put("file", checked.file().toString());
        node.put("ruleSet", checked.result().rules().key());
        node.put("edition", checked.result().rules().edition());
        ObjectNode counts = node.putObject("counts");
        for (Map.Entry<Verdict, Integer> count : checked.result().counts().entrySet()) {
            counts.put(count.getKey().name(), count.getValue());
        }
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
        node.put("title", outcome.title());
        node.put("element", outcome.elementId());
        node.put("elementPath", outcome.elementPath());
        node.put("outcome", outcome.verdict().name());
        node.put("severity", outcome.severity().key());
        Json.put(node, "value", outcome.value());
        Json.put(node, "limit", outcome.limit());
        Json.put(node, "margin", outcome.margin());
        node.put("unit", outcome.unit());
        ArrayNode missing = node.putArray("missing");
        outcome.missing().forEach(missing::add);
        node.put("citation", outcome.citation().map(citation -> citation.text()).orElse(null));
        node.put("provenance", outcome.citation().map(citation -> citation.provenance().key()).orElse(null));
        node.put("toConfirm", outcome.toConfirm());
        node.put("explanation", outcome.explanation());
        return node;
    }

    private static String number(OptionalDouble number) {
        return number.isPresent() ? String.format(Locale.ROOT, "%.4f", number.getAsDouble()) : "";
    }

    static void csv(List<CheckCommand.CheckedFile> checked, PrintStream out) {
        out.print("file,rule,element,outcome,severity,value,limit,margin,unit,missing,citation,provenance,toConfirm,explanation\n");
        for (CheckCommand.CheckedFile one : checked) {
            for (Outcome outcome : one.result().outcomes()) {
                List<String> cells = new ArrayList<>(List.of(one.file().toString(), outcome.rule(), String.valueOf(outcome.elementId()),
                        outcome.verdict().name(), outcome.severity().key(), number(outcome.value()), number(outcome.limit()),
                        number(outcome.margin()), outcome.unit(), String.join("; ", outcome.missing())));
                cells.add(outcome.citation().map(citation -> citation.text()).orElse(""));
                cells.add(outcome.citation().map(citation -> citation.provenance().key()).orElse(""));
                cells.add(String.valueOf(outcome.toConfirm()));
                cells.add(outcome.explanation());
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
            xml.writeAttribute("name", outcome.title() + ": " + outcome.elementPath());
            if (fails(outcome, threshold)) {
                xml.writeStartElement("failure");
                xml.writeAttribute("message", outcome.verdict() + ": " + outcome.explanation());
                xml.writeEndElement();
            } else if (outcome.verdict() == Verdict.NOT_APPLICABLE) {
                xml.writeEmptyElement("skipped");
            }
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    private static boolean fails(Outcome outcome, Severity threshold) {
        return outcome.weight().filter(weight -> weight.compareTo(threshold) >= 0).isPresent();
    }

    static void text(CheckCommand.CheckedFile checked, boolean all, PrintStream out) {
        out.printf("%s: %s under %s, edition %s%n", checked.file(), name(checked), checked.result().rules().descriptor().title(),
                checked.result().rules().edition());
        List<Outcome> shown = all ? checked.result().outcomes() : checked.result().findings();
        for (Outcome outcome : shown) {
            out.printf("  %-14s %-8s %-8s %s%n", word(outcome), outcome.weight().map(Severity::key).orElse(""), outcome.rule(),
                    outcome.elementPath());
            out.println("      " + outcome.explanation());
            if (outcome.value().isPresent()) {
                out.printf(Locale.ROOT, "      value %s %s, limit %s %s, margin %s %s%n", number(outcome.value()), outcome.unit(),
                        number(outcome.limit()), outcome.unit(), number(outcome.margin()), outcome.unit());
            }
            if (!outcome.missing().isEmpty()) {
                out.println("      missing: " + String.join(", ", outcome.missing()));
            }
            outcome.citation().ifPresent(citation -> out.println("      " + citation.text() + " [" + citation.provenance().key()
                    + (outcome.toConfirm() ? ", to be confirmed" : "") + "]"));
        }
        Map<Verdict, Integer> counts = checked.result().counts();
        long toConfirm = checked.result().outcomes().stream().filter(Outcome::toConfirm).count();
        out.printf("%d passed, %d failed, %d not evaluated, %d not applicable; %d rest on values to be confirmed%n",
                counts.get(Verdict.PASS),
                counts.get(Verdict.FAIL), counts.get(Verdict.NOT_EVALUATED), counts.get(Verdict.NOT_APPLICABLE), toConfirm);
    }

    private static String word(Outcome outcome) {
        return switch (outcome.verdict()) {
            case PASS -> outcome.toConfirm() ? "to confirm" : "pass";
            case FAIL -> "FAIL";
            case NOT_APPLICABLE -> "not applicable";
            case NOT_EVALUATED -> "not evaluated";
        };
    }
}
