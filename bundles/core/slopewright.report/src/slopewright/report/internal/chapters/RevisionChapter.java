package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.checks.Outcome;
import slopewright.checks.compare.ProjectDifference;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.model.Project;
import slopewright.model.io.ProjectStamp;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;

/** This revision and the one handed over before, with what changed in the results between them. */
final class RevisionChapter {

    private static final int MOST_ROWS = 60;

    private final Html html;
    private final ReportWords words;
    private final ProjectEvaluation evaluation;
    private final Optional<Project> earlier;

    RevisionChapter(Html html, ProjectEvaluation evaluation, Optional<Project> earlier) {
        this.html = html;
        this.evaluation = evaluation;
        this.earlier = earlier;
        words = html.words();
    }

    void write() {
        html.section("history").table("fine", List.of(12, 14, 20, 20, 34), "revision", "date", "prepared-by", "checked-by", "project-file");
        row(evaluation.project());
        earlier.ifPresent(this::row);
        html.endTable();
        if (earlier.isEmpty()) {
            html.paragraph("no-earlier-revision");
            return;
        }
        ProjectDifference difference = new ProjectDifference(ProjectEvaluation.of(earlier.get(), Optional.empty()), evaluation);
        html.paragraph("changes-counted", Words.count(difference.changes().size()), Words.count(difference.resultChanges().size()),
                Words.count(difference.outcomeChanges().size()));
        results(difference.resultChanges());
        verdicts(difference.outcomeChanges().stream().filter(ProjectDifference.OutcomeChange::isAnotherVerdict).toList());
    }

    private void row(Project project) {
        html.row(List.of(words.orUnknown(project.getRevision()), words.orUnknown(project.getDate()), words.orUnknown(project.getAuthor()),
                words.orUnknown(project.getCheckedBy()), ProjectStamp.of(project).map(ProjectStamp::brief).orElse(words.say(
                        "stamp.none"))));
    }

    private void results(List<ProjectDifference.ResultChange> changes) {
        if (changes.isEmpty()) {
            return;
        }
        html.table("numbers", List.of(34, 30, 12, 12, 12), "element", "quantity", "before", "after", "change");
        for (ProjectDifference.ResultChange change : changes.subList(0, Math.min(MOST_ROWS, changes.size()))) {
            boolean both = change.before().isPresent() && change.after().isPresent();
            html.row(List.of(words.write(change.path()), words.say("changed-result." + change.quantity()), number(change.before()),
                    number(change
                    .after()), both ? words.signed(change.after().getAsDouble() - change.before().getAsDouble(), 3) : ""));
        }
        html.endTable();
        left(changes.size());
    }

    private void verdicts(List<ProjectDifference.OutcomeChange> changes) {
        if (changes.isEmpty()) {
            html.paragraph("no-verdict-changed");
            return;
        }
        html.table("fine", List.of(30, 40, 15, 15), "rule", "element", "before", "after");
        for (ProjectDifference.OutcomeChange change : changes.subList(0, Math.min(MOST_ROWS, changes.size()))) {
            Outcome one = change.after().or(change::before).orElseThrow();
            List<String> cells = new ArrayList<>(List.of(words.say("rule-and-title", Words.name(change.rule()), one.title()),
                    words.write(change.path())));
            cells.add(change.before().map(words::verdict).orElse(""));
            cells.add(change.after().map(words::verdict).orElse(""));
            html.row(cells);
        }
        html.endTable();
        left(changes.size());
    }

    private void left(int count) {
        if (count > MOST_ROWS) {
            html.paragraph("more-changes", Words.count(count - MOST_ROWS));
        }
    }

    private String number(OptionalDouble value) {
        return value.isPresent() ? words.fixed(value.getAsDouble(), 3) : words.term("not-known");
    }
}
