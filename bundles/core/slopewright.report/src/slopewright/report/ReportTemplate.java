package slopewright.report;

import java.nio.file.Path;
import java.util.Objects;

import slopewright.report.internal.template.TemplateChecks;
import slopewright.report.internal.template.TemplateFolder;

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
 * {@code .identifier}; {@code report.title}, {@code .date}, {@code .rule-set}; and words in the language of the report, such as
 * {@code label.client}. For parts: {@code logo}, {@code verdict}, {@code cautions}, {@code contents}, {@code cover}, {@code sign-off} and
 * {@code chapter.result}, {@code .basis}, {@code .comparison}, {@code .indicators}, {@code .compliance}, {@code .sources},
 * {@code .handover}, {@code .closing}. The cautions and the chapters result, compliance and sources have to be in a template.
 *
 * <p>A template is not trusted: it holds no scripts, no links but those inside the document, and nothing that reads another file or the
 * network; links to files are not followed; files are limited in size. Its style says how things look and takes nothing out of its place
 * or out of sight; verdict, cautions and where values come from have a style of their own in which it has no say. Text of the project is
 * always text and never markup.
 */
public final class ReportTemplate {

    private final TemplateFolder files;

    private ReportTemplate(TemplateFolder files) {
        this.files = Objects.requireNonNull(files);
    }

    /** Returns the template that comes with the product. */
    public static ReportTemplate builtIn() {
        return new ReportTemplate(TemplateFolder.builtIn());
    }

    /**
     * Reads a template.
     *
     * @param folder the folder
     * @return the template, checked
     * @throws ReportException where a file cannot be read or holds what a template may not hold; the message names file and line
     */
    public static ReportTemplate read(Path folder) throws ReportException {
        TemplateFolder files = TemplateFolder.read(folder);
        TemplateChecks.check(files);
        return new ReportTemplate(files);
    }

    /** Returns its files, for the documents of this bundle. */
    public TemplateFolder files() {
        return files;
    }
}
