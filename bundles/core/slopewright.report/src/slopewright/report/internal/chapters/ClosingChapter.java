package slopewright.report.internal.chapters;

import java.util.List;
import java.util.Locale;
import java.util.Map;

import slopewright.evaluation.ReadBacks;
import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.ReviewNote;
import slopewright.report.internal.html.Facts;
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
        readBacks();
        Facts facts = html.newFacts();
        ABBREVIATIONS.forEach(key -> facts.add("abbreviation." + key, words.say("abbreviation." + key)));
        html.section("abbreviations").facts(facts);
    }

    /** Every element that carries figures, and who held them against their source; nothing where nobody did yet. */
    private void readBacks() {
        if (project.getReadBacks().isEmpty()) {
            return;
        }
        Map<String, ReadBack> known = ReadBacks.byElement(project);
        html.section("read-backs").table("fine", List.of(24, 32, 20, 12, 12), "element", "name", "read-back", "person", "date");
        for (Identified element : ReadBacks.elements(project)) {
            ReadBack readBack = known.get(element.getId());
            ReadBacks.State state = ReadBacks.state(project, element);
            html.row(List.of(element.getId(), words.render(Message.of("report.read-back.name", ElementNames.of(element))),
                    words.say("read-back." + state.name().toLowerCase(Locale.ROOT)),
                    readBack == null ? "" : words.orUnknown(readBack.getPerson()), readBack == null ? ""
                            : words.orUnknown(readBack.getDate())));
        }
        html.endTable();
    }
}
