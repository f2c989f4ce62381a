package slopewright.report.internal.template;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

import slopewright.messages.Message;
import slopewright.model.SlopewrightFactory;
import slopewright.report.ReportException;
import slopewright.report.internal.html.ReportWords;

/** Reads every fragment of a template once without a project, so that a fault is found before anything is worked out. */
public final class TemplateChecks {

    /** Parts of a report in the order of the built-in one. */
    private static final List<String> CHAPTERS = List.of("chapter.result", "chapter.basis", "chapter.indicators", "chapter.comparison",
            "chapter.sources", "chapter.handover", "chapter.inspection", "chapter.revisions", "chapter.compliance",
            "chapter.closing");

    private static final Set<String> NEEDED = Set.of("cautions", "chapter.result", "chapter.compliance", "chapter.sources");

    private final Map<String, Integer> used = new HashMap<>();

    private TemplateChecks() {
    }

    /**
     * Checks a template.
     *
     * @param template the template
     * @throws ReportException where it holds what it may not hold, or lacks what it must hold; the message names file and line
     */
    public static void check(TemplateFolder template) throws ReportException {
        TemplateChecks checks = new TemplateChecks();
        Map<String, String> texts = ProjectWords.of(SlopewrightFactory.eINSTANCE.createProject(), new ReportWords(Locale.ENGLISH), "", "",
                "");
        for (String file : List.of("cover.html", "report.html", "running.html", "sign-off.html")) {
            TemplateFragment.expand(file, template.text(file), new TemplateSlots(texts, checks.parts(file), template));
        }
        StyleCheck.check(TemplateFiles.STYLE, template.own(TemplateFiles.STYLE).orElse(""));
        for (String part : NEEDED.stream().sorted().toList()) {
            if (!checks.used.containsKey(part)) {
                throw TemplateFault.in("report.html", Message.said("template.missing", "{{" + part + "}}"), null);
            }
        }
        for (Map.Entry<String, Integer> part : checks.used.entrySet()) {
            if (part.getValue() > 1 && !"logo".equals(part.getKey())) {
                throw TemplateFault.in("report.html", Message.said("template.twice", "{{" + part.getKey() + "}}"), null);
            }
        }
    }

    private Map<String, Supplier<String>> parts(String file) {
        List<String> names = switch (file) {
            case "cover.html" -> List.of("logo", "verdict", "summary", "cautions", "contents");
            case "report.html" -> Stream.concat(Stream.of("logo", "verdict", "summary", "cautions", "contents", "cover", "sign-off"),
                    CHAPTERS.stream()).toList();
            case "sign-off.html" -> List.of("logo");
            default -> List.of();
        };
        Map<String, Supplier<String>> parts = new LinkedHashMap<>();
        names.forEach(name -> parts.put(name, () -> {
            used.merge(name, 1, Integer::sum);
            return "";
        }));
        return parts;
    }
}
