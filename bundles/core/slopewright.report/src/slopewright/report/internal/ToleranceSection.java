package slopewright.report.internal;

import java.util.List;
import java.util.Locale;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.tolerance.ToleranceStudy;
import slopewright.evaluation.tolerance.Tolerances;
import slopewright.evaluation.tolerance.WorstCase;
import slopewright.siting.SitingException;

/** What becomes of the heights when the units stand as wrong as a careful party may leave them. */
final class ToleranceSection {

    private static final Tolerances ASSUMED = Tolerances.usual();

    private final Html html;
    private final AidEvaluation subject;

    ToleranceSection(Html html, AidEvaluation subject) {
        this.html = html;
        this.subject = subject;
    }

    void write() {
        ToleranceStudy study;
        try {
            study = ToleranceStudy.of(subject, ASSUMED, 0, 1);
        } catch (SitingException e) {
            html.section("Tolerances").element("p class=\"alert\"", "No study of tolerances: " + e.getMessage() + ".");
            return;
        }
        if (study.worst().isEmpty()) {
            return;
        }
        html.open("div class=\"keep\"").section("Tolerances").table("numbers", List.of(40, 20, 20, 20), List.of("Quantity",
                "As planned m", "Least m",
                "Greatest m"));
        for (WorstCase one : study.worst()) {
            html.row("td", List.of(one.quantity().label(), Numbers.two(one.nominalM()), Numbers.two(one.lowM()), Numbers.two(one.highM())));
        }
        html.endTable().element("p class=\"small\"", String.format(Locale.ROOT,
                "Worst cases for units that are wrong by up to %.0f minutes "
                + "of arc, %.2f m in level and %.1f m along the runway, all against the result: what a careful setting out leaves, "
                + "assumed here and published nowhere.", ASSUMED.angleMinutes(), ASSUMED.levelM(), ASSUMED.placeM())).close("div");
    }
}
