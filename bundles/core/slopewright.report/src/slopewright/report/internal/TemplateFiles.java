package slopewright.report.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

import slopewright.report.ReportTemplate;

/** The files of the built-in template, which stand in for those that a template does not have. */
final class TemplateFiles {

    /** Name of the style sheet. */
    static final String STYLE = "style.css";

    private TemplateFiles() {
    }

    /** Returns the text of a fragment of a template. */
    static String text(ReportTemplate template, String file) {
        return template.text(file).orElseGet(() -> builtIn(file));
    }

    /** Returns the built-in style, and after it that of the template. */
    static String style(ReportTemplate template) {
        return builtIn(STYLE) + template.text(STYLE).map(more -> "\n" + more + "\n").orElse("");
    }

    private static String builtIn(String file) {
        try (InputStream in = TemplateFiles.class.getResourceAsStream("template/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("the built-in template can not be read", e);
        }
    }
}
