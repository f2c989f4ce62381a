package slopewright.report;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

import slopewright.report.internal.TemplateChecks;
import slopewright.report.internal.TemplateFolder;

/**
 * What a report looks like around its content: cover, order of the chapters, line on every page, block for signatures, logo and style.
 *
 * <p>A template is a folder. Every file in it is optional, and the built-in one stands in for it:
 * <ul>
 * <li>{@code cover.html}, {@code report.html} (what comes in which order), {@code running.html} (the line at the head of pages) and
 * {@code sign-off.html}: well-formed fragments of XHTML, with placeholders such as <code>{{project.name}}</code>;</li>
 * <li>{@code style.css}: rules that are added to the built-in ones;</li>
 * <li>{@code logo.png}, {@code logo.jpg} or {@code logo.svg}, and any other picture that a fragment names by its bare file name.</li>
 * </ul>
 * Placeholders for text: {@code project.name}, {@code .document-number}, {@code .revision}, {@code .date}, {@code .client},
 * {@code .organisation}, {@code .prepared-by}, {@code .checked-by}, {@code .approved-by}, {@code .remarks}; {@code aerodrome.name},
 * {@code .identifier}; {@code report.title}, {@code .date}, {@code .rule-set}. For parts: {@code logo}, {@code verdict},
 * {@code cautions}, {@code contents}, {@code cover}, {@code sign-off} and {@code chapter.result}, {@code .basis}, {@code .comparison},
 * {@code .indicators}, {@code .compliance}, {@code .sources}, {@code .handover}, {@code .closing}. The cautions and the chapters result,
 * compliance and sources have to be in a template.
 *
 * <p>A template is not trusted: it holds no scripts, no links but those inside the document, and nothing that reads another file or the
 * network; links to files are not followed; files are limited in size. Text of the project is always text and never markup.
 */
public final class ReportTemplate {

    private final Map<String, String> texts;
    private final Map<String, byte[]> pictures;

    private ReportTemplate(Map<String, String> texts, Map<String, byte[]> pictures) {
        this.texts = Map.copyOf(texts);
        this.pictures = Map.copyOf(pictures);
    }

    /** Returns the template that comes with the product. */
    public static ReportTemplate builtIn() {
        return new ReportTemplate(Map.of(), Map.of());
    }

    /**
     * Reads a template.
     *
     * @param folder the folder
     * @return the template, checked
     * @throws ReportException where a file can not be read or holds what a template may not hold; the message names file and line
     */
    public static ReportTemplate read(Path folder) throws ReportException {
        TemplateFolder files = TemplateFolder.read(folder);
        ReportTemplate template = new ReportTemplate(files.texts(), files.pictures());
        TemplateChecks.check(template);
        return template;
    }

    /** Returns the text of one of its files; empty where the built-in one counts. */
    public Optional<String> text(String file) {
        return Optional.ofNullable(texts.get(file));
    }

    /** Returns the bytes of one of its pictures; empty where there is none of the name. */
    public Optional<byte[]> picture(String file) {
        return Optional.ofNullable(pictures.get(file)).map(byte[]::clone);
    }
}
