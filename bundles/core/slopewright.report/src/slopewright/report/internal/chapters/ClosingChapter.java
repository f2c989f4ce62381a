package slopewright.report.internal.chapters;

import java.util.List;

import slopewright.model.Project;
import slopewright.model.ReviewNote;
import slopewright.report.internal.html.Facts;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;

/** Notes of the review and abbreviations. */
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

    void write() {
        if (!project.getReviewNotes().isEmpty()) {
            html.section("review").table("fine", List.of(14, 14, 40, 14, 10, 8), "element", "rule", "note", "person", "date", "resolved");
            for (ReviewNote note : project.getReviewNotes()) {
                html.row(List.of(words.orUnknown(note.getElementId()), words.orUnknown(note.getRuleId()), words.orUnknown(note.getText()),
                        words.orUnknown(note.getPerson()), words.orUnknown(note.getDate()),
                        words.yesNo(Boolean.TRUE.equals(note.getResolved()))));
            }
            html.endTable();
        }
        Facts facts = html.newFacts();
        ABBREVIATIONS.forEach(key -> facts.add("abbreviation." + key, words.say("abbreviation." + key)));
        html.section("abbreviations").facts(facts);
    }
}
