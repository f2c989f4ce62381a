package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import slopewright.evaluation.ReadBacks;
import slopewright.evaluation.Reviews;
import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.ReviewNote;
import slopewright.model.util.Projects;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.ElementNames;

/** Notes of the review, what was read back, and abbreviations. */
final class ClosingChapter {

    private static final List<String> ABBREVIATIONS = List.of("apapi", "at-vasis", "chapi", "fato", "hapi", "meht", "papi", "tlof",
            "t-vasis", "vasi");

    private final Html html;
    private final ReportWords words;
    private final Project project;

    ClosingChapter(Html html, Project project) {
        this.html = html;
        this.project = project;
        words = html.words();
    }

    /** Adds the comments of the reviewers, what was said to each, and who signed the project off; nothing where there are none. */
    void review() {
        if (project.getReviewNotes().isEmpty()) {
            return;
        }
        html.section("review").table("fine", List.of(18, 10, 38, 12, 12, 10), "element", "rule", "note", "state", "person", "date");
        for (Reviews.Thread thread : Reviews.threads(project)) {
            ReviewNote comment = thread.comment();
            row(about(comment), comment.getRuleId() == null ? "" : comment.getRuleId(), comment, word(thread.state()));
            thread.replies().forEach(reply -> row("", "", reply, word(reply.getKind())));
        }
        Reviews.signedOff(project).ifPresent(note -> row(about(note), "", note, words.say(Reviews.isAsSigned(project, note)
                ? "review.signed-off" : "review.changed-since")));
        html.endTable();
    }

    private String about(ReviewNote note) {
        return note.getElementId() == null ? words.say("review.project")
                : Reviews.element(project, note).map(Projects::path).orElse(note.getElementId());
    }

    private String word(Enum<?> state) {
        return words.say("review." + state.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private void row(String element, String rule, ReviewNote note, String state) {
        html.row(List.of(element, rule, note.getText() == null ? "" : note.getText(), state, words.orUnknown(note.getPerson()),
                words.orUnknown(note.getDate())));
    }

    /** Adds what the abbreviations mean. */
    void abbreviations() {
        html.section("abbreviations").element("p", String.join("; ", ABBREVIATIONS.stream().map(key -> words.say("fact.abbreviation." + key)
                + ": " + words.say("abbreviation." + key)).toList()) + ".");
    }

    /** Every element that carries figures, and who held them against their source; nothing where nobody did yet. */
    void readBacks() {
        if (project.getReadBacks().isEmpty()) {
            return;
        }
        Map<String, ReadBack> known = ReadBacks.byElement(project);
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (Identified element : ReadBacks.elements(project)) {
            ReadBack readBack = known.get(element.getId());
            String state = words.say("read-back." + ReadBacks.state(project, element).name().toLowerCase(Locale.ROOT));
            alike.computeIfAbsent(readBack == null ? state : state + ", " + words.orUnknown(readBack.getPerson()) + ", "
                    + words.orUnknown(readBack.getDate()), key -> new ArrayList<>()).add(words.render(Message.of("report.read-back.name",
                            ElementNames.of(element))));
        }
        html.section("read-backs");
        alike.forEach((state, names) -> html.element("p", state + ": " + String.join("; ", names) + "."));
    }
}
