package slopewright.evaluation.portable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.IndicatorFamily;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSets;

/**
 * By how much a unit may be off while it still shows its signals: the accuracy of setting, and the tilt that does not yet switch it off.
 *
 * @param accuracy  how exactly the angle is set
 * @param takenOver whether the accuracy is that of another family, because none is given for this one
 * @param tilt      beyond which tilt the unit switches itself off; empty where the rule set gives none
 */
public record SettingAllowance(CitedValue accuracy, boolean takenOver, Optional<CitedValue> tilt) {
    private static final String TAKEN_OVER = "heliport-sector.setting-accuracy-min";

    /** Reads the allowance of the family of an aid. */
    static SettingAllowance of(AidEvaluation evaluation) {
        String family = evaluation.family().map(IndicatorFamily::ruleKey).orElse("");
        Optional<CitedValue> own = evaluation.rules().find(family + ".setting-accuracy-min");
        return new SettingAllowance(own.orElseGet(() -> RuleSets.find("icao").orElseThrow().value(TAKEN_OVER)), own.isEmpty(),
                evaluation.rules().find(family + ".tilt-switch-off-deg"));
    }

    /** Returns the whole allowance, minutes of arc. */
    public double minutes() {
        return accuracy.value() + tilt.map(limit -> Angles.degToMinutes(limit.value())).orElse(0.0);
    }

    /** Returns where it comes from. */
    public List<Citation> citations() {
        List<Citation> citations = new ArrayList<>(List.of(accuracy.citation()));
        tilt.map(CitedValue::citation).ifPresent(citations::add);
        return citations;
    }

    /** Returns where it comes from, in a sentence. */
    public Message message() {
        Message setting = Message.of(takenOver ? "portable.accuracy-taken-over" : "portable.accuracy", Words.min(accuracy.value()),
                Words.name(accuracy.citation().text()));
        return tilt.map(limit -> Message.of("portable.accuracy-and-tilt", setting, Words.degrees(limit.value()),
                Words.name(limit.citation().text()))).orElse(setting);
    }
}
