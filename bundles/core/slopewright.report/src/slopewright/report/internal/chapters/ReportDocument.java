package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.checks.Stages;
import slopewright.checks.Verdict;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.io.Program;
import slopewright.model.io.ProjectStamp;
import slopewright.model.util.Projects;
import slopewright.model.util.Ids;
import slopewright.report.Cautions;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.report.internal.html.Facts;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.report.internal.pdf.Pictures;
import slopewright.report.internal.template.PageFrame;
import slopewright.report.internal.template.ProjectWords;
import slopewright.report.internal.template.TemplateFolder;
import slopewright.report.internal.template.TemplateFragment;
import slopewright.report.internal.template.TemplateSlots;

/** Puts the report of a project together as XHTML. */
public final class ReportDocument {

    /** Stands in the place of the contents until all chapters are known; no text of a project can look like it. */
    private static final String CONTENTS = "<!--contents-->";

    private final ReportSource source;
    private final ReportOptions options;
    private final Pictures pictures;
    private final PageFrame frame;
    private final ReportWords words;
    private final Html html;
    private final String ruleSet;
    private final Conclusion conclusion;

    /**
     * A document before it is laid out.
     *
     * @param xhtml     its markup
     * @param title     its title
     * @param essential what a person must be able to read in it, whatever the template
     */
    public record Written(String xhtml, String title, List<String> essential) {
    }

    private ReportDocument(ReportSource source, ReportOptions options, Pictures pictures) {
        this.source = source;
        this.options = options;
        this.pictures = pictures;
        words = new ReportWords(options.renderer());
        html = new Html(words);
        ruleSet = words.ruleSet(source.result().rules());
        frame = new PageFrame(source.project(), options, source.result().rules());
        conclusion = Conclusion.of(source);
    }

    /**
     * Writes the document.
     *
     * @param evaluation the project, evaluated
     * @param result     what the rules say about that evaluation
     * @param options    what else is printed
     * @param pictures   takes the drawings
     * @return the document
     * @throws ReportException where the template holds what it may not hold
     */
    public static Written write(ProjectEvaluation evaluation, CheckResult result, ReportOptions options, Pictures pictures)
            throws ReportException {
        return new ReportDocument(new ReportSource(evaluation, result), options, pictures).writeAll();
    }

    private Written writeAll() throws ReportException {
        Project project = source.project();
        String title = words.say("title", Words.name(ProjectWords.name(project, words)));
        Map<String, String> texts = ProjectWords.of(project, words, title, ruleSet, options.date());
        TemplateFolder files = options.template().files();
        TemplateSlots small = new TemplateSlots(texts, common(files), files);
        Map<String, Supplier<String>> parts = new LinkedHashMap<>(small.parts());
        String cover = TemplateFragment.expand("cover.html", files.text("cover.html"), small);
        String signOff = TemplateFragment.expand("sign-off.html", files.text("sign-off.html"), small);
        parts.put("cover", () -> cover);
        parts.put("sign-off", () -> signOff);
        chapters().forEach((name, chapter) -> parts.put(name, () -> {
            chapter.run();
            return html.take();
        }));
        String body = TemplateFragment.expand("report.html", files.text("report.html"), new TemplateSlots(texts, parts, files));
        String xhtml = frame.document(title, "report whole", html.headings(), body.replace(CONTENTS, frame.contents(html.headings())));
        List<String> essential = new ArrayList<>(List.of(words.render(conclusion.sentence()), words.say("provenance-classes"), ruleSet));
        essential.addAll(Cautions.in(options.language()));
        return new Written(xhtml, title, essential);
    }

    private Map<String, Supplier<String>> common(TemplateFolder files) {
        Map<String, Supplier<String>> parts = new LinkedHashMap<>();
        TemplateSlots slots = new TemplateSlots(Map.of(), Map.of(), files);
        String alternative = words.say("logo-of", Words.name(words.orUnknown(source.project().getOrganisation())));
        parts.put("logo", () -> Stream.of("logo.png", "logo.jpg", "logo.svg").flatMap(file -> slots.picture(file, "logo", alternative)
                .stream()).findFirst().orElse(""));
        parts.put("verdict", () -> made(conclusion::write));
        parts.put("summary", () -> made(part -> new SummaryTable(part, source).write()));
        parts.put("cautions", () -> made(PageFrame::cautions));
        parts.put("contents", () -> CONTENTS);
        return parts;
    }

    private String made(Consumer<Html> part) {
        Html own = new Html(words);
        part.accept(own);
        return own.toString();
    }

    private Map<String, Runnable> chapters() {
        Map<String, Runnable> chapters = new LinkedHashMap<>();
        OutcomeTables outcomes = new OutcomeTables(html, source.project());
        SourceChapter sources = new SourceChapter(html, source);
        ClosingChapter closing = new ClosingChapter(html, source.project());
        chapters.put("chapter.result", () -> locked(() -> new ResultChapter(html, source, conclusion).write()));
        chapters.put("chapter.basis", () -> {
            html.chapter("basis");
            locked(this::rules);
            new SiteChapter(html, source.project(), options.date()).write();
        });
        chapters.put("chapter.comparison", () -> {
            if (!Projects.hosts(source.project()).isEmpty()) {
                html.chapter("comparison");
                new ComparisonChapter(html, source.evaluation(), options.weights()).write();
            }
        });
        chapters.put("chapter.indicators", () -> source.evaluation().aids().forEach(aid -> {
            html.chapterOf(words.path(aid.aid()).replace(" > ", ", "));
            new AidChapter(html, source, aid, pictures).write();
        }));
        chapters.put("chapter.sources", () -> locked(() -> {
            html.chapter("sources");
            sources.write();
        }));
        chapters.put("chapter.handover", () -> {
            html.chapter("handover");
            new HandoverChapter(html, source.evaluation()).write();
        });
        chapters.put("chapter.inspection", () -> {
            if (!source.evaluation().aids().isEmpty()) {
                html.chapter("inspection");
                new InspectionChapter(html, source.evaluation()).write();
            }
        });
        chapters.put("chapter.revisions", () -> {
            html.chapter("revisions");
            new RevisionChapter(html, source.evaluation(), options.earlier()).write();
            closing.review();
        });
        chapters.put("chapter.compliance", () -> {
            if (options.annexes()) {
                locked(() -> {
                    html.chapter("compliance");
                    Documents documents = new Documents(source);
                    outcomes.matrix(source.result().outcomes(), documents, this::brief);
                    html.chapter("annex");
                    sources.annex(documents);
                });
            } else {
                locked(() -> html.chapter("compliance").paragraph("annexes-left-out", Words.count(source.result().counts()
                        .get(Verdict.MET)), Words.count(source.project().getConfirmations().size())));
            }
        });
        chapters.put("chapter.closing", () -> {
            html.chapter("closing");
            if (options.annexes()) {
                closing.readBacks();
            }
            closing.abbreviations();
        });
        return chapters;
    }

    /** Returns the aid that an outcome is about, itself or a part of it; of all else its own name. */
    private String brief(Outcome outcome) {
        Optional<Identified> judged = Ids.find(source.project(), outcome.elementId());
        for (EObject about = judged.orElse(null); about != null; about = about.eContainer()) {
            if (about instanceof ApproachAid aid) {
                return words.name(aid);
            }
        }
        return judged.map(words::name).orElse(words.write(outcome.elementPath()));
    }

    /** Writes a part in whose style no template has a say. */
    private void locked(Runnable part) {
        html.open("div class=\"locked\"");
        part.run();
        html.close("div");
    }

    private void rules() {
        Facts facts = html.newFacts().add("rule-set", ruleSet)
                .add("stage", words.render(Message.of("plain", Stages.term(source.result().stage()))))
                .add("about-rules", words.write(source.result().rules().descriptor().note()));
        facts.add("program", Program.text()).add("project-file", ProjectStamp.of(source.project())
                .map(stamp -> words.say(stamp.isSaved() ? "stamp.saved" : "stamp.not-saved", Words.name(stamp.sha256())))
                .orElseGet(() -> words.say("stamp.none")));
        source.evaluation().aids().stream().map(AidEvaluation::rules).map(words::ruleSet).distinct()
                .filter(other -> !other.equals(ruleSet)).forEach(other -> facts.add("other-rule-set", other));
        html.section("rules").facts(facts).remark("provenance-classes");
    }
}
