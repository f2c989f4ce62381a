package slopewright.report.internal.template;

import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

import slopewright.report.internal.html.Html;

/**
 * What placeholders of a template stand for.
 *
 * @param texts    text by name of the placeholder
 * @param parts    markup by name of the placeholder, made where it is asked for
 * @param template the template, for its pictures
 */
public record TemplateSlots(Map<String, String> texts, Map<String, Supplier<String>> parts, TemplateFolder template) {

    /** Returns the markup of a picture, empty where the template has none of the name. */
    public Optional<String> picture(String file, String style, String alternative) {
        return template.picture(file).map(bytes -> "<img class=\"" + Html.escaped(style) + "\" alt=\"" + Html.escaped(alternative)
                + "\" src=\"data:image/png;base64," + Base64.getEncoder().encodeToString(bytes) + "\" />");
    }
}
