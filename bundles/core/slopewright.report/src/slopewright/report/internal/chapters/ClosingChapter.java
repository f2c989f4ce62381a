package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import slopewright.evaluation.ReadBacks;
import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.ReviewNote;
import slopewright.model.util.Ids;
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

    /** Adds the notes of the reviewers and what became of them; nothing where there are none. */
    void review() {
        if (!project.getReviewNotes().isEmpty()) {
            html.section("review").table("fine", List.of(18, 12, 36, 14, 10, 10), "element", "rule", "note", "person", "date", "resolved");
            for (ReviewNote note : project.getReviewNotes()) {
                html.row(List.of(Ids.find(project, note.getElementId()).map(Projects::path).orElse(words.orUnknown(note.getElementId())),
                        words.orUnknown(note.getRuleId()), words.orUnknown(note.getText()),
                        words.orUnknown(note.getPerson()), words.orUnknown(note.getDate()),
                        words.yesNo(Boolean.TRUE.equals(note.getResolved()))));
            }
            html.endTable();
        }
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
