package slopewright.report;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ProjectRules;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;
import slopewright.standards.RuleSet;

/** The demo projects and what is read from documents made of them. */
final class Demo {

    static final ReportOptions OPTIONS = new ReportOptions("2026-06-01");

    private Demo() {
    }

    static Project project(String name) {
        try {
            return ProjectFile.load(Path.of(System.getProperty("slopewright.root"), "demo-data", name, name + ".slopewright"));
        } catch (ProjectFileException e) {
            throw new AssertionError(e);
        }
    }

    static ApproachAid aid(Project project, String name) {
        return Projects.aids(project).stream().filter(aid -> name.equals(aid.getName())).findFirst().orElseThrow();
    }

    static ProjectEvaluation evaluation(Project project) {
        return ProjectEvaluation.of(project, Optional.empty());
    }

    static RuleSet rules(Project project, ApproachAid aid) {
        return ProjectRules.of(project, aid, Optional.empty());
    }

    static String html(Project project) throws ReportException {
        return new String(Reports.write(project, Optional.empty(), OPTIONS, Reports.Format.HTML), StandardCharsets.UTF_8);
    }

    /** Parses markup, which fails where it is not well formed, and returns the text of its body with single blanks. */
    static String text(String html) {
        Document document = parsed(html);
        boolean whole = document.getElementsByTagName("body").getLength() > 0;
        return (whole ? document.getElementsByTagName("body").item(0) : document.getDocumentElement()).getTextContent()
                .replaceAll("\\s+", " ").strip();
    }

    static Document parsed(String html) {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                    .parse(new ByteArrayInputStream(html.replace("<!DOCTYPE html>\n", "").getBytes(StandardCharsets.UTF_8)));
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new AssertionError(e);
        }
    }

    /** Returns the text of a document with single blanks. */
    static String pdfText(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
