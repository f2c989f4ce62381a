package slopewright.checks.internal.row;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.SettingsForm;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * Beside a glide path the on-slope sector of a row of four is widened. A warning: the sector that is not widened is true; aeroplanes on
 * the glide path see it at its edge.
 */
public final class RowHarmonisedRule extends AidRule {

    /** Made by the service loader. */
    public RowHarmonisedRule() {
        super("ROW-09", Severity.WARNING, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        CitedValue offset = facts.value("glide-path-inner-offset-min");
        double slope = facts.slopeDeg();
        facts.find("steep-from-deg").filter(steep -> slope > steep.value()).ifPresent(steep -> {
            throw Stop.notApplicable(Message.of("ROW-09.steep", Words.deg(slope), Words.degrees(steep.value())));
        });
        boolean beside = facts.host().getGlidePath() != null;
        boolean forTallest = facts.hasLength("group-4-extra-distance");
        boolean wanted = beside && (!forTallest || isTallest(facts));
        boolean widened = facts.aid().getSettings() == SettingsForm.GLIDE_PATH;
        outcomes.about(facts.aid()).met(widened == wanted).resting(offset)
                .saying(beside ? widened ? "beside-widened" : "beside-standard" : widened ? "none-widened" : "none-standard")
                .advising(wanted ? "widen" : forTallest ? "narrow-unless-tallest" : "narrow").add();
    }

    private static boolean isTallest(AidFacts facts) {
        return AidFacts.need(facts.aid().getHeightGroup(), Message.of("missing.height-group")) == 4;
    }
}
