package slopewright.report.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.report.ReportTemplate;

/** Puts the report of a project together as XHTML. */
public final class ReportDocument {

    /** Stands in the place of the contents until all chapters are known; no text of a project can look like it. */
    private static final String CONTENTS = "<!--contents-->";

    private final Project project;
    private final CheckResult result;
    private final ReportOptions options;
    private final Pictures pictures;
    private final ProjectEvaluation context;
    private final Shell shell;
    private final Html html = new Html();

    private ReportDocument(Project project, CheckResult result, Optional<String> ruleSet, ReportOptions options, Pictures pictures) {
        this.project = project;
        this.result = result;
        this.options = options;
        this.pictures = pictures;
        shell = new Shell(project, options, OutcomeTables.ruleSet(result.rules()));
        context = ProjectEvaluation.of(project, ruleSet);
    }

    /** Writes the document. */
    public static String write(Project project, CheckResult result, Optional<String> ruleSet, ReportOptions options, Pictures pictures)
            throws ReportException {
        return new ReportDocument(project, result, ruleSet, options, pictures).writeAll();
    }

    private String writeAll() throws ReportException {
        String title = Shell.name(project) + ": visual approach slope indicators";
        Map<String, String> words = ProjectWords.of(project, title, OutcomeTables.ruleSet(result.rules()), options.date());
        ReportTemplate template = options.template();
        TemplateSlots small = new TemplateSlots(words, common(template), template);
        Map<String, Supplier<String>> parts = new LinkedHashMap<>(small.parts());
        String cover = TemplateFragment.expand("cover.html", TemplateFiles.text(template, "cover.html"), small);
        String signOff = TemplateFragment.expand("sign-off.html", TemplateFiles.text(template, "sign-off.html"), small);
        parts.put("cover", () -> cover);
        parts.put("sign-off", () -> signOff);
        chapters().forEach((name, chapter) -> parts.put(name, () -> {
            chapter.run();
            return html.take();
        }));
        String body = TemplateFragment.expand("report.html", TemplateFiles.text(template, "report.html"), new TemplateSlots(words, parts,
                template));
        return shell.document(title, "report", html.headings(), body.replace(CONTENTS, Shell.contents(html.headings())));
    }

    private Map<String, Supplier<String>> common(ReportTemplate template) {
        Map<String, Supplier<String>> parts = new LinkedHashMap<>();
        TemplateSlots pictures = new TemplateSlots(Map.of(), Map.of(), template);
        parts.put("logo", () -> Stream.of("logo.png", "logo.jpg", "logo.svg").flatMap(file -> pictures.picture(file, "logo", "Logo of "
                + Numbers.orUnknown(project.getOrganisation())).stream()).findFirst().orElse(""));
        parts.put("verdict", () -> made(this::verdict));
        parts.put("cautions", () -> made(Shell::cautions));
        parts.put("contents", () -> CONTENTS);
        return parts;
    }

    private static String made(Consumer<Html> part) {
        Html own = new Html();
        part.accept(own);
        return own.toString();
    }

    private Map<String, Runnable> chapters() {
        Map<String, Runnable> chapters = new LinkedHashMap<>();
        OutcomeTables outcomes = new OutcomeTables(html);
        chapters.put("chapter.result", () -> summary(outcomes));
        chapters.put("chapter.basis", () -> {
            html.chapter("Basis");
            rules();
            new SiteChapter(html, project).write();
        });
        chapters.put("chapter.comparison", () -> {
            if (!context.aids().isEmpty()) {
                html.chapter("Choice of the indicator");
                new ComparisonChapter(html, project, context).write();
            }
        });
        chapters.put("chapter.indicators", () -> context.aids().forEach(subject -> {
            html.chapter(Projects.path(subject.aid()).replace(" > ", ", "));
            new AidChapter(html, project, subject, pictures).write();
        }));
        chapters.put("chapter.compliance", () -> {
            html.open("div class=\"wide\"").chapter("Compliance matrix");
            outcomes.matrix(result.outcomes());
            html.close("div");
        });
        chapters.put("chapter.sources", () -> {
            html.chapter("Values and their sources");
            new SourceChapter(html, project, context, result).write();
        });
        chapters.put("chapter.handover", () -> {
            html.chapter("For publication and for the electrician");
            new HandoverChapter(html, project, context).write();
        });
        chapters.put("chapter.closing", () -> {
            html.chapter("Abbreviations and signatures");
            new ClosingChapter(html, project).write();
        });
        return chapters;
    }

    private void verdict(Html target) {
        boolean broken = result.worst().filter(worst -> worst == Severity.FAIL).isPresent();
        int unconfirmed = SourceChapter.open(SourceChapter.used(context).values(), result).size();
        boolean open = result.worst().isPresent() || unconfirmed > 0;
        String style = broken || !result.anythingEvaluated() ? "broken" : open ? "open" : "clear";
        String text = !result.anythingEvaluated() ? "Nothing could be evaluated; no conclusion may be drawn."
                : broken ? "The layout breaks at least one rule."
                        : result.worst().isPresent() ? "No rule is broken, but findings are open: inputs are missing, values are to be "
                                + "confirmed, or warnings stand."
                                : unconfirmed > 0 ? "No rule is broken and no finding is open. Values that the layouts rest on, but that "
                                        + "decide no outcome, are still to be confirmed: " + unconfirmed + "."
                                        : "No rule is broken and nothing is open.";
        target.element("p class=\"verdict " + style + "\"", text);
    }

    private void summary(OutcomeTables outcomes) {
        html.chapter("Result");
        verdict(html);
        Map<Verdict, Integer> counts = result.counts();
        long toConfirm = result.outcomes().stream().filter(Outcome::toConfirm).count();
        html.table("counts", List.of(20, 20, 20, 20, 20), List.of("Not met", "To clear up", "Met", "Not applicable",
                "Of which to confirm"));
        html.row("td", List.of(String.valueOf(counts.get(Verdict.NOT_MET)), String.valueOf(counts.get(Verdict.TO_CLEAR_UP)),
                String.valueOf(counts.get(Verdict.MET)), String.valueOf(counts.get(Verdict.NOT_APPLICABLE)),
                String.valueOf(toConfirm)));
        html.endTable();
        html.element("p class=\"small\"", "An outcome to be confirmed is one that a value decides which nobody has confirmed against its "
                + "source; it is counted among passed or failed as well.");
        List<Outcome> findings = result.findings();
        html.section("Open findings");
        if (findings.isEmpty()) {
            html.element("p", "There are none.");
        } else {
            outcomes.findings(findings);
        }
    }

    private void rules() {
        List<String[]> facts = new ArrayList<>();
        facts.add(new String[] {"Rule set", OutcomeTables.ruleSet(result.rules())});
        facts.add(new String[] {"About these rules", result.rules().descriptor().note()});
        context.aids().stream().map(AidEvaluation::rules).map(OutcomeTables::ruleSet).distinct()
                .filter(other -> !other.equals(OutcomeTables.ruleSet(result.rules())))
                .forEach(other -> facts.add(new String[] {"Also used, for single indicators", other}));
        html.section("Rules").facts(facts);
        html.element("p class=\"small\"", "Provenance of a value: published - read in the primary text or quoted from it word for word; "
                + "derived - computed from others; secondary - read in a text that restates the primary one; common-practice - in use "
                + "without a source; from-memory - remembered, to be verified against the issued document; override - entered in the "
                + "project for a stated reason.");
    }
}
