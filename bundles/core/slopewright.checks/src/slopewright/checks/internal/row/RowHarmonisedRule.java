package slopewright.checks.internal.row;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.model.SettingsForm;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Beside a glide path the on-slope sector of a row of four is widened. */
public final class RowHarmonisedRule extends AidRule {

    /** Made by the service loader. */
    public RowHarmonisedRule() {
        super("ROW-09", Severity.WARNING, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        CitedValue offset = facts.value("glide-path-inner-offset-min");
        boolean beside = facts.host().getGlidePath() != null;
        boolean groupOnly = facts.hasLength("group-4-extra-distance");
        boolean wanted = beside && (!groupOnly || facts.aid().getHeightGroup() != null && facts.aid().getHeightGroup() == 4);
        boolean widened = facts.aid().getSettings() == SettingsForm.GLIDE_PATH;
        String compared = (beside ? "There is a glide path" : "There is no glide path") + "; the settings are "
                + (widened ? "widened." : "the standard ones.");
        decide(findings, facts.aid(), widened == wanted, offset.citation(), compared, wanted
                ? "Choose the widened settings, so that both aids agree for the range of eye-to-antenna heights."
                : "Choose the standard settings; the widened ones are for " + (groupOnly ? "height group 4 beside " : "")
                + "a glide path.");
    }
}
