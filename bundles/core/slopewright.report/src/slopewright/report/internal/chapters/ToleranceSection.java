package slopewright.report.internal.chapters;

import java.util.List;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.tolerance.ToleranceStudy;
import slopewright.evaluation.tolerance.Tolerances;
import slopewright.evaluation.tolerance.WorstCase;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.SitingException;

/** What becomes of the heights when the units stand as wrong as a careful party may leave them. */
final class ToleranceSection {

    private final Html html;
    private final ReportWords words;
    private final AidEvaluation aid;

    ToleranceSection(Html html, AidEvaluation aid) {
        this.html = html;
        this.aid = aid;
        words = html.words();
    }

    void write() {
        ToleranceStudy study;
        try {
            study = ToleranceStudy.of(aid, Tolerances.usual(), 0, 1);
        } catch (SitingException e) {
            html.section("tolerances").alert("no-tolerances", e.reason());
            return;
        }
        if (study.worst().isEmpty()) {
            return;
        }
        html.open("div class=\"keep\"").section("tolerances").table("numbers", List.of(40, 20, 20, 20), "quantity", "as-planned-m",
                "least-m",
                "greatest-m");
        for (WorstCase worst : study.worst()) {
            html.row(List.of(words.render(worst.quantity().message()), words.two(worst.nominalM()), words.two(worst.lowM()),
                    words.two(worst.highM())));
        }
        html.endTable().remark("tolerance-basis", study.tolerances().message());
        study.notes().forEach(note -> html.element("p class=\"small\"", words.render(note)));
        html.close("div");
    }
}
