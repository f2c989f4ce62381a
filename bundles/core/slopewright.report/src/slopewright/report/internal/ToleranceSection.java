package slopewright.report.internal;

import java.util.List;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.tolerance.ToleranceStudy;
import slopewright.evaluation.tolerance.Tolerances;
import slopewright.evaluation.tolerance.WorstCase;
import slopewright.siting.SitingException;

/** What becomes of the heights when the units stand as wrong as a careful party may leave them. */
final class ToleranceSection {

    private final Html html;
    private final AidEvaluation subject;

    ToleranceSection(Html html, AidEvaluation subject) {
        this.html = html;
        this.subject = subject;
    }

    void write() {
        ToleranceStudy study;
        try {
            study = ToleranceStudy.of(subject, Tolerances.usual(), 0, 1);
        } catch (SitingException e) {
            html.section("Tolerances").element("p class=\"alert\"", "No study of tolerances: " + e.getMessage() + ".");
            return;
        }
        if (study.worst().isEmpty()) {
            return;
        }
        html.open("div class=\"keep\"").section("Tolerances").table("numbers", List.of(40, 20, 20, 20), List.of("Quantity",
                "As it stands m", "Least m", "Greatest m"));
        for (WorstCase found : study.worst()) {
            html.row("td", List.of(found.quantity().message().english(), Numbers.two(found.nominalM()), Numbers.two(found.lowM()),
                    Numbers.two(found.highM())));
        }
        html.endTable().element("p class=\"small\"", "Worst cases. " + study.tolerances().message().english());
        study.notes().forEach(note -> html.element("p class=\"small\"", note.english()));
        html.close("div");
    }
}
