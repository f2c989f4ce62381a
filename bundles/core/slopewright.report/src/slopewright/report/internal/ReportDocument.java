package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import slopewright.checks.AidSubject;
import slopewright.checks.CheckContext;
import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.checks.ProjectRules;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.model.Aerodrome;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.report.ReportOptions;

/** Puts the report of a project together as XHTML. */
public final class ReportDocument {

    private final Project project;
    private final CheckResult result;
    private final ReportOptions options;
    private final Pictures pictures;
    private final CheckContext context;
    private final Shell shell;
    private final Html html = new Html();

    private ReportDocument(Project project, CheckResult result, Optional<String> ruleSet, ReportOptions options, Pictures pictures) {
        this.project = project;
        this.result = result;
        this.options = options;
        this.pictures = pictures;
        shell = new Shell(project, options);
        context = new CheckContext(project, result.rules(), aid -> ProjectRules.of(project, aid, ruleSet));
    }

    /** Writes the document. */
    public static String write(Project project, CheckResult result, Optional<String> ruleSet, ReportOptions options, Pictures pictures) {
        return new ReportDocument(project, result, ruleSet, options, pictures).writeAll();
    }

    private String writeAll() {
        OutcomeTables outcomes = new OutcomeTables(html);
        summary(outcomes);
        SiteChapter site = new SiteChapter(html, project);
        shell.chapter(html, "Basis");
        rules();
        site.write();
        if (!context.aids().isEmpty()) {
            shell.chapter(html, "Families compared");
            new ComparisonChapter(html, project, context).write();
        }
        for (AidSubject subject : context.aids()) {
            shell.chapter(html, Projects.path(subject.aid()));
            new AidChapter(html, project, subject, pictures).write();
        }
        html.open("div class=\"wide\"");
        shell.chapter(html, "Compliance matrix");
        outcomes.matrix(result.outcomes());
        html.close("div");
        shell.chapter(html, "Values and their sources");
        new SourceChapter(html, project, context, result).write();
        shell.chapter(html, "For publication and for the electrician");
        new HandoverChapter(html, project, context).write();
        shell.chapter(html, "Abbreviations and signatures");
        new ClosingChapter(html, project).write();
        String title = Shell.name(project) + ": visual approach slope indicators";
        return shell.document(title, "report", cover() + html);
    }

    private String cover() {
        Aerodrome aerodrome = project.getAerodrome();
        Html cover = new Html().element("h1", "Visual approach slope indicators").element("p class=\"lead\"", Shell.name(project));
        cover.facts(List.of(
                new String[] {"Aerodrome", aerodrome == null ? "not known"
                        : Numbers.orUnknown(aerodrome.getName()) + " (" + Numbers.orUnknown(aerodrome.getIdentifier()) + ")"},
                new String[] {"Revision", Numbers.orUnknown(project.getRevision())},
                new String[] {"Prepared by", Numbers.orUnknown(project.getAuthor())},
                new String[] {"Organisation", Numbers.orUnknown(project.getOrganisation())},
                new String[] {"Date of the project", Numbers.orUnknown(project.getDate())},
                new String[] {"Date of the report", options.date()},
                new String[] {"Checked against", OutcomeTables.ruleSet(result.rules())}));
        verdict(cover);
        Shell.cautions(cover);
        return cover.raw(shell.contents()).toString();
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
        shell.chapter(html, "Result");
        verdict(html);
        Map<Verdict, Integer> counts = result.counts();
        long toConfirm = result.outcomes().stream().filter(Outcome::toConfirm).count();
        html.table("counts", List.of(20, 20, 20, 20, 20), List.of("Passed", "Failed", "Not evaluated", "Not applicable",
                "To be confirmed"));
        html.row("td", List.of(String.valueOf(counts.get(Verdict.PASS)), String.valueOf(counts.get(Verdict.FAIL)),
                String.valueOf(counts.get(Verdict.NOT_EVALUATED)), String.valueOf(counts.get(Verdict.NOT_APPLICABLE)),
                String.valueOf(toConfirm)));
        html.endTable();
        html.element("p class=\"small\"", "An outcome to be confirmed is one that a value decides which nobody has confirmed against its "
                + "source; it is counted among passed or failed as well.");
        List<Outcome> findings = result.findings();
        html.element("h3", "Open findings");
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
        context.aids().stream().map(AidSubject::rules).map(OutcomeTables::ruleSet).distinct()
                .filter(other -> !other.equals(OutcomeTables.ruleSet(result.rules())))
                .forEach(other -> facts.add(new String[] {"Also used, for single indicators", other}));
        html.element("h3", "Rules").facts(facts);
        html.element("p class=\"small\"", "Provenance of a value: published - read in the primary text or quoted from it word for word; "
                + "derived - computed from others; secondary - read in a text that restates the primary one; common-practice - in use "
                + "without a source; from-memory - remembered, to be verified against the issued document; override - entered in the "
                + "project for a stated reason.");
    }
}
