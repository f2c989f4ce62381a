package slopewright.report.internal;

import java.util.List;

import slopewright.model.Project;
import slopewright.model.ReviewNote;

/** Notes of the review and abbreviations; and the block for signatures of single sheets. */
final class ClosingChapter {

    private static final List<String[]> ABBREVIATIONS = List.of(new String[] {"APAPI", "abbreviated precision approach path indicator"},
            new String[] {"AT-VASIS", "abbreviated T visual approach slope indicator system"},
            new String[] {"CHAPI", "pair of heliport approach path indicator units"},
            new String[] {"FATO", "final approach and take-off area"}, new String[] {"HAPI", "heliport approach path indicator"},
            new String[] {"MEHT", "minimum eye height over the threshold"}, new String[] {"PAPI", "precision approach path indicator"},
            new String[] {"TLOF", "touchdown and lift-off area"},
            new String[] {"T-VASIS", "T visual approach slope indicator system"},
            new String[] {"VASI, VASIS", "visual approach slope indicator (system)"});

    private final Html html;
    private final Project project;

    ClosingChapter(Html html, Project project) {
        this.html = html;
        this.project = project;
    }

    void write() {
        if (!project.getReviewNotes().isEmpty()) {
            html.section("Review notes").table("fine", List.of(14, 14, 40, 14, 10, 8), List.of("Element", "Rule", "Note", "Person",
                    "Date", "Resolved"));
            for (ReviewNote note : project.getReviewNotes()) {
                html.row("td", List.of(Numbers.orUnknown(note.getElementId()), Numbers.orUnknown(note.getRuleId()),
                        Numbers.orUnknown(note.getText()), Numbers.orUnknown(note.getPerson()), Numbers.orUnknown(note.getDate()),
                        Boolean.TRUE.equals(note.getResolved()) ? "yes" : "no"));
            }
            html.endTable();
        }
        html.section("Abbreviations").facts(ABBREVIATIONS);
    }

    /** Adds a block for signatures. */
    static void signatures(Html html, List<String> who) {
        html.open("div class=\"signatures\"").element("p class=\"head\"", "Signatures").table("sign", List.of(25, 30, 15, 30),
                List.of("Part", "Name", "Date",
                "Signature"));
        who.forEach(one -> html.row("td", List.of(one, "", "", "")));
        html.endTable().close("div");
    }
}
