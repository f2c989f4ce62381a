package slopewright.report.internal;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.siting.Siting;
import slopewright.standards.Citation;
import slopewright.standards.Source;

/** Where every number comes from, what is to be confirmed, and what the project overrides or confirms. */
final class SourceChapter {

    private final Html html;
    private final Project project;
    private final ProjectEvaluation context;
    private final CheckResult result;

    SourceChapter(Html html, Project project, ProjectEvaluation context, CheckResult result) {
        this.html = html;
        this.project = project;
        this.context = context;
        this.result = result;
    }

    void write() {
        Map<String, Siting.CitedUse> used = used(context);
        toConfirm(used);
        overrides();
        confirmations();
        html.section("Values that the layouts rest on").table("fine", List.of(30, 9, 6, 27, 13, 15), List.of("Value", "Number",
                "Unit",
                "Source", "Known as", "Remark"));
        used.values().forEach(use -> html.row("td", List.of(use.name(), Numbers.plain(use.value()), use.unit(), use.citation().text(),
                known(use.citation()), use.citation().note())));
        html.endTable();
        sources(used);
    }

    /** Returns every number that a layout rests on, once for each rule set. */
    static Map<String, Siting.CitedUse> used(ProjectEvaluation context) {
        Map<String, Siting.CitedUse> used = new LinkedHashMap<>();
        context.aids().forEach(subject -> List.of(subject.siting(), subject.solved()).forEach(attempt -> attempt.value().ifPresent(siting ->
                siting.citations().forEach(use -> used.putIfAbsent(siting.ruleSet() + siting.edition() + use.name(), use)))));
        return used;
    }

    private static String known(Citation citation) {
        return citation.provenance().key() + (citation.toConfirm() ? ", to be confirmed" : citation.confirmation().isEmpty() ? ""
                : ", confirmed");
    }

    /** Returns what a person still has to confirm, by name of the value or table. */
    static Map<String, Citation> open(Collection<Siting.CitedUse> used, CheckResult result) {
        Map<String, Citation> open = new LinkedHashMap<>();
        used.stream().map(Siting.CitedUse::citation).filter(Citation::toConfirm).forEach(one -> open.putIfAbsent(one.key(), one));
        result.outcomes().stream().flatMap(outcome -> outcome.citation().stream()).filter(Citation::toConfirm)
                .forEach(one -> open.putIfAbsent(one.key(), one));
        return open;
    }

    private void toConfirm(Map<String, Siting.CitedUse> used) {
        Map<String, Citation> open = open(used.values(), result);
        html.section("Values to be confirmed");
        if (open.isEmpty()) {
            html.element("p", "None: every value that was used is published, derived from published ones, overridden with a reason, or "
                    + "confirmed by a person.");
            return;
        }
        html.element("p", "Nobody has confirmed these against the issued document. An outcome that one of them decides is marked so in "
                + "the compliance matrix.");
        html.table("fine", List.of(34, 36, 14, 16), List.of("Value or table", "Said to be in", "Known as", "Remark"));
        open.values().forEach(one -> html.row("td", List.of(one.key(), one.text(), one.provenance().key(), one.note())));
        html.endTable();
    }

    private void overrides() {
        html.section("Values that the project overrides");
        if (project.getOverrides().isEmpty()) {
            html.element("p", "None.");
            return;
        }
        html.table("fine", List.of(28, 10, 34, 16, 12), List.of("Value", "Number", "Reason", "Person", "Date"));
        for (ValueOverride one : project.getOverrides()) {
            html.row("td", List.of(key(one.getValueKey(), one.getRuleSetKey()), Numbers.orUnknown(one.getValue()),
                    Numbers.orUnknown(one.getReason()), Numbers.orUnknown(one.getPerson()), Numbers.orUnknown(one.getDate())));
        }
        html.endTable();
    }

    private static String key(String value, String ruleSet) {
        return Numbers.orUnknown(value) + (ruleSet == null ? "" : " (" + ruleSet + ")");
    }

    private void confirmations() {
        html.section("Values that were confirmed");
        if (project.getConfirmations().isEmpty()) {
            html.element("p", "None.");
            return;
        }
        html.table("fine", List.of(36, 36, 16, 12), List.of("Value", "Against", "Person", "Date"));
        for (ValueConfirmation one : project.getConfirmations()) {
            html.row("td", List.of(key(one.getValueKey(), one.getRuleSetKey()), Numbers.orUnknown(one.getSource()),
                    Numbers.orUnknown(one.getPerson()), Numbers.orUnknown(one.getDate())));
        }
        html.endTable();
    }

    private void sources(Map<String, Siting.CitedUse> used) {
        Set<Source> sources = new LinkedHashSet<>();
        used.values().forEach(use -> sources.add(use.citation().source()));
        result.outcomes().stream().map(Outcome::citation).forEach(citation -> citation.ifPresent(one -> sources.add(one.source())));
        html.section("Documents").table("fine", List.of(20, 62, 18), List.of("Short name", "Title", "Edition"));
        sources.stream().sorted((a, b) -> a.key().compareTo(b.key())).forEach(source -> html.row("td", List.of(source.key(), source.title(),
                source.edition())));
        html.endTable();
    }
}
