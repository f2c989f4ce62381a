package slopewright.report.internal.template;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The files of the built-in template, which stand in for those that a template does not have. */
final class TemplateFiles {

    /** Name of the style sheet. */
    static final String STYLE = "style.css";

    /** Name of the style sheet that comes after that of a template and that no template has a say in. */
    private static final String LOCKED = "locked.css";

    private TemplateFiles() {
    }

    /** Returns the text of a built-in file. */
    static String builtIn(String file) {
        try (InputStream in = TemplateFiles.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("the built-in template cannot be read", e);
        }
    }

    /** Returns the built-in style, after it that of a template, and after that the one that keeps verdict and cautions in sight. */
    static String style(TemplateFolder template) {
        return builtIn(STYLE) + template.own(STYLE).map(more -> "\n" + more + "\n").orElse("") + builtIn(LOCKED);
    }
}
