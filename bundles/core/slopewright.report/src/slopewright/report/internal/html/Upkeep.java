package slopewright.report.internal.html;

import java.util.List;

import slopewright.evaluation.AidEvaluation;
import slopewright.siting.Trait;

/**
 * What is looked after once indicators are in use. Of lights, MIL-HDBK-1023/4 (1998, withdrawn in 2006), 5.8.1; of a sector unit without
 * heating, France, arrêté of 29 September 2009, Annex IV 3.5.4.
 */
public final class Upkeep {

    private final Html html;
    private final ReportWords words;

    /** Writes into a document. */
    public Upkeep(Html html) {
        this.html = html;
        words = html.words();
    }

    /** Returns whether an aid has anything to look after: panels have no lights. */
    public static boolean concerns(AidEvaluation aid) {
        return aid.family().filter(family -> !family.traits().contains(Trait.PANELS)).isPresent();
    }

    /** Adds the table for aids; nothing where none of them has lights. */
    public void write(List<AidEvaluation> aids) {
        if (aids.stream().noneMatch(Upkeep::concerns)) {
            return;
        }
        html.table("fine", List.of(16, 50, 34), "when", "what", "source");
        for (String when : List.of("daily", "monthly", "frost", "tilt")) {
            row(when, "military-handbook");
        }
        if (aids.stream().anyMatch(aid -> "heliport-sector".equals(aid.aid().getFamilyKey()))) {
            row("warm-up", "french-order");
        }
        html.endTable();
    }

    private void row(String when, String source) {
        html.row(List.of(words.say("upkeep." + when + ".when"), words.say("upkeep." + when), words.say("upkeep-source." + source)));
    }
}
