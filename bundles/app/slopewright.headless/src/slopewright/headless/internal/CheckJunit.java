package slopewright.headless.internal;

import java.io.OutputStream;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

import slopewright.checks.Outcome;
import slopewright.checks.Result;
import slopewright.checks.Verdict;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;

/**
 * Writes the outcomes of a check as a JUnit report. Every outcome that is not met is a failure, of the type of its severity, so that the
 * failures are the count of <em>not met</em> everywhere else. What is to clear up is neither: it is skipped with its reason, because a
 * test that passed would be a yes that nobody gave. What does not apply is skipped with that word.
 */
final class CheckJunit {

    private final XMLStreamWriter xml;
    private final MessageRenderer words;

    private CheckJunit(XMLStreamWriter xml, MessageRenderer words) {
        this.xml = xml;
        this.words = words;
    }

    static void print(List<CheckedFile> checked, Locale language, PrintStream out) {
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter((OutputStream) out, "UTF-8");
            CheckJunit writer = new CheckJunit(xml, MessageRenderer.of(language));
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeStartElement("testsuites");
            for (CheckedFile file : checked) {
                writer.suite(file);
            }
            xml.writeEndElement();
            xml.writeEndDocument();
            xml.flush();
            out.print('\n');
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    private void suite(CheckedFile checked) throws XMLStreamException {
        List<Outcome> outcomes = checked.result().outcomes();
        long failures = outcomes.stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET).count();
        long met = outcomes.stream().filter(outcome -> outcome.verdict() == Verdict.MET).count();
        xml.writeStartElement("testsuite");
        attribute("name", checked.name());
        attribute("tests", String.valueOf(outcomes.size()));
        attribute("failures", String.valueOf(failures));
        attribute("errors", "0");
        attribute("skipped", String.valueOf(outcomes.size() - failures - met));
        xml.writeStartElement("properties");
        for (Map.Entry<String, String> fact : checked.madeFrom().facts().entrySet()) {
            xml.writeEmptyElement("property");
            attribute("name", fact.getKey());
            attribute("value", fact.getValue());
        }
        xml.writeEndElement();
        for (Outcome outcome : outcomes) {
            test(outcome);
        }
        xml.writeEndElement();
    }

    private void test(Outcome outcome) throws XMLStreamException {
        xml.writeStartElement("testcase");
        attribute("classname", outcome.rule());
        attribute("name", words.render(outcome.title()) + ": " + words.write(outcome.elementPath()));
        switch (outcome.verdict()) {
            case NOT_MET -> {
                xml.writeStartElement("failure");
                attribute("type", outcome.severity().key());
                attribute("message", verdict(outcome) + ": " + words.render(outcome.explanation()));
                xml.writeEndElement();
            }
            case TO_CLEAR_UP -> {
                xml.writeEmptyElement("skipped");
                attribute("message", words.render(reason(outcome)) + ": " + words.render(outcome.explanation()));
            }
            case NOT_APPLICABLE -> {
                xml.writeEmptyElement("skipped");
                attribute("message", verdict(outcome) + (outcome.result() == Result.NOT_AT_THIS_STAGE
                        ? ": " + words.render(outcome.message()) : ""));
            }
            case MET -> {
                // a test case without more is one that passed
            }
        }
        xml.writeEndElement();
    }

    private String verdict(Outcome outcome) {
        return words.write(outcome.verdict().term());
    }

    private static Message reason(Outcome outcome) {
        if (outcome.result() != Result.NOT_EVALUATED) {
            return Message.of("check.to-clear-up.to-confirm");
        }
        return outcome.missing().isEmpty() ? Message.of("check.to-clear-up.not-evaluated")
                : Message.of("check.to-clear-up.missing", Words.list(outcome.missing()));
    }

    /** Leaves out what XML cannot hold. */
    private void attribute(String name, String text) throws XMLStreamException {
        xml.writeAttribute(name, text.replaceAll("[^\\x{9}\\x{A}\\x{D}\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]", "?"));
    }
}
